import { describe, expect, it } from 'vitest';
import { everyLook, type Look, type OpenPane, paneTests } from './pane/paneBrowser.js';

const openPane = paneTests();
const looks: readonly Look[] = [...everyLook, { name: 'light-1280', width: 1280 }];

/** What a person does by hand, counted: a field is filled once, a click is a click. */
class Counted {
  clicks = 0;
  fields = 0;

  constructor(private readonly open: OpenPane) {}

  async fill(label: string | RegExp, text: string): Promise<void> {
    this.fields += 1;
    const { page } = this.open;
    const field =
      typeof label === 'string' ? page.getByLabel(label, { exact: true }) : page.getByLabel(label);
    await field.first().fill(text);
  }

  async click(name: string): Promise<void> {
    this.clicks += 1;
    await this.open.click(name);
  }
}

describe('an own answer', () => {
  it('takes at most 3 clicks and 8 fields from the first screen to an OK of an own part on an own press', async () => {
    const open = await openPane('empty', { name: 'own', width: 450 });
    await open.says('Will it run on your presses?');
    const hand = new Counted(open);
    await hand.fill('1. Name*', 'Old Blue');
    await hand.fill('Punch force', '60');
    await hand.fill(/^3\. Throat/, '10');
    await hand.fill('Hole, in', '1-1/4');
    await hand.fill('Through, in', '9/16');
    await hand.fill('Section', 'FB 1/2x4');
    await hand.fill('Hole', '15/16');
    await open.says('Still needed for an OK:');
    await hand.fill('Punch stroke, in', '1-1/2');
    await hand.click('Longest bar: no limit');
    await hand.click('Heaviest bar: no limit');
    await open.page.getByLabel('Old Blue: OK', { exact: true }).waitFor();
    await open.shot('own-ok');
    expect(hand.clicks).toBeLessThanOrEqual(3);
    expect(hand.fields).toBeLessThanOrEqual(8);
  });

  it('is an OK only while the part is within the press: a hole of 1-1/2 in is not', async () => {
    const open = await openPane('empty', { name: 'own-over', width: 450 });
    const hand = new Counted(open);
    await hand.fill('1. Name*', 'Old Blue');
    await hand.fill('Punch force', '60');
    await hand.fill('Hole, in', '1-1/4');
    await hand.fill('Through, in', '9/16');
    await hand.fill('Hole', '1-1/2');
    await open.page.getByLabel('Old Blue: Too big', { exact: true }).waitFor();
  });
});

describe.each(looks)('for everybody to use, $name', (look) => {
  it('the own press, its form and its capacity sheet', async () => {
    const open = await openPane('empty', look);
    const faults: string[] = [];
    const seen = async (name: string) => {
      faults.push(...(await open.faults()).map((fault) => `${name}: ${fault}`));
      await open.shot(name);
    };
    await open.page.getByLabel('1. Name*', { exact: true }).fill('Old Blue');
    await open.page.getByLabel('Punch force', { exact: true }).fill('60');
    await open.says('Still needed for an OK:');
    await seen('own-first');
    await open.click('Keep this press on a shop sheet');
    await open.click('Write to sheet');
    await open.says('in · 1 press');
    await open.click('Edit Old Blue');
    await open.click(/^Punch:/);
    await open.page.getByLabel('Throat, in', { exact: true }).focus();
    await open.page.getByLabel('Throat, in', { exact: true }).fill('10');
    await seen('own-form');
    const save = await open.button('Save 1 value').boundingBox();
    expect((save?.y ?? 9999) + (save?.height ?? 0)).toBeLessThanOrEqual(800);
    await open.click('Leave as on the sheet');
    await open.click('All presses');
    await open.click('Capacity sheet of Old Blue');
    await open.page
      .frameLocator('iframe[title="Capacity sheet"]')
      .getByText('Old Blue: what it can do')
      .waitFor();
    await seen('own-capacity');
    expect([...faults, ...open.errors]).toEqual([]);
  });
});

describe('the form of a press', () => {
  it('has a drawing of each station that says which number is which, and none has a label over another', async () => {
    const open = await openPane('shop', { name: 'stations', width: 320 });
    await open.tab('Shop');
    await open.click('Edit Bay B');
    for (const station of ['Punch', 'Flat shear', 'Angle shear', 'Bar shear', 'Notcher', 'Bend']) {
      await open.click(new RegExp(`^${station}:`));
      const choice = open.page.getByLabel('On this press').last();
      await choice.selectOption('yes');
    }
    await open.shot('stations');
    const overlaps = await open.page.evaluate(() => {
      const found: string[] = [];
      for (const svg of document.querySelectorAll('figure svg')) {
        const frame = svg.getBoundingClientRect();
        const labels = [...svg.querySelectorAll('text')].map((text) => ({
          text: text.textContent ?? '',
          box: text.getBoundingClientRect(),
        }));
        labels.forEach(({ text, box }, at) => {
          if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.bottom > frame.bottom + 1)
            found.push(`${text} leaves its frame`);
          for (const other of labels.slice(at + 1)) {
            const apart =
              box.right <= other.box.left ||
              other.box.right <= box.left ||
              box.bottom <= other.box.top ||
              other.box.bottom <= box.top;
            if (!apart) found.push(`${text} over ${other.text}`);
          }
        });
      }
      return { found, drawings: document.querySelectorAll('figure svg').length };
    });
    expect(overlaps).toEqual({ found: [], drawings: 6 });
  });
});
