// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { ShownPane } from '../support/shownPane.js';
import { fillWorkbook } from '../support/workbooks.js';

let pane: ShownPane;
afterEach(() => pane.close());

async function open(kind: string): Promise<MemoryWorkbook> {
  const workbook = new MemoryWorkbook('Sheet1');
  await fillWorkbook(workbook, kind);
  pane = new ShownPane(workbook);
  return workbook;
}

async function fillFour(): Promise<void> {
  await pane.fill(/^1\. Name/, 'Old Blue');
  await pane.fill('Punch force', '60');
  await pane.fill(/^3\. Throat/, '10');
  await pane.fill('Hole, in', '1-1/4');
  await pane.fill('Through, in', '9/16');
}

describe('an own press on the first screen', () => {
  it('is answered while it is typed; what is still needed for an OK is named, and turns it into one', async () => {
    await open('empty');
    await fillFour();
    await pane.says('Still needed for an OK:Punch strokeLongest barHeaviest bar');
    await pane.fill('Punch stroke, in', '1-1/4');
    await pane.click('Longest bar: no limit');
    await pane.saysNoMore('OK:Punch stroke');
    await pane.click('Heaviest bar: no limit');
    await pane.until('an OK on Old Blue', () => document.querySelector('[aria-label="Old Blue: OK"]'));
    expect(pane.text).not.toContain('Still needed');
  });

  it('leads from what is needed to its field', async () => {
    await open('empty');
    await fillFour();
    await pane.click('Punch stroke');
    expect((document.activeElement as HTMLElement).dataset['field']).toBe('punchStroke');
    await pane.fill('Length', '');
    await pane.click('Length');
    expect((document.activeElement as HTMLElement).dataset['field']).toBe('Length');
  });

  it('is kept on a shop sheet without the invented presses', async () => {
    const workbook = await open('empty');
    await fillFour();
    await pane.fill('Punch stroke, in', '1-1/4');
    await pane.click('Keep this press on a shop sheet');
    await pane.click('Write to sheet');
    await pane.says('in · 1 press');
    const rows = workbook.shown('Presses');
    expect(rows[0]).toEqual(['Item', 'Unit', 'Old Blue']);
    const cells = Object.fromEntries(rows.map((row) => [row[0], row[2]]));
    expect(cells).toMatchObject({ 'Punch force': '60', 'Punch stroke': '1-1/4', 'Flat shear': null });
    expect(pane.text).not.toContain('invented press');
  });

  it('is not kept without a name, and says so', async () => {
    await open('empty');
    await pane.click('Keep this press on a shop sheet');
    await pane.says('Give the press a name');
    expect(pane.text).not.toContain('This will be written');
  });
});

describe('invented presses', () => {
  it('are named above every place until each is confirmed or removed', async () => {
    const workbook = await open('shop');
    await pane.says('Bay A and Bay B are invented presses: do not quote from them.');
    await pane.click('Go to Shop');
    await pane.click('Edit Bay A');
    await pane.click('These are its own numbers');
    await pane.click('Write to sheet');
    await pane.says('Bay B is an invented press: do not quote from it.');
    const invented = workbook.shown('Presses').find(([item]) => item === 'Invented');
    expect(invented?.slice(2)).toEqual(['no', 'yes']);
    await pane.click('All presses');
    await pane.click('Edit Bay B');
    await pane.click('Remove');
    await pane.click('Write to sheet');
    await pane.saysNoMore('invented press:');
  });

  it('stay marked when one of their values was changed', async () => {
    const workbook = await open('shop');
    await pane.says('Bay A and Bay B are invented presses');
    workbook.type('Shop', 6, 2, [['66']]);
    await pane.says('Bay A and Bay B are invented presses');
    await pane.click('Shop');
    await pane.says('66 US ton');
    expect(pane.text.match(/Invented press: do not quote from it\./g)).toHaveLength(2);
  });
});

describe('a value that a part needs of a press on the sheet', () => {
  it('is a link to its field in the form of the press', async () => {
    const workbook = await open('shop');
    const row = 5 + workbook.shown('Presses').findIndex(([item]) => item === 'Punch stroke');
    workbook.type('Shop', row, 2, [[null]]);
    await pane.fill('Section', 'PL3/8x6');
    await pane.fill('Grade', 'A36');
    await pane.fill('Length', '12');
    await pane.fill('Hole', '13/16');
    await pane.click('Punch stroke');
    await pane.until('the field', () => document.activeElement?.closest('form[aria-label="Press Bay A"]'));
    expect((document.activeElement as HTMLElement).dataset['field']).toBe('punchStroke');
  });
});

describe('the form of a press', () => {
  it('asks nothing more of a station that the press has not got', async () => {
    await open('shop');
    await pane.click('Shop');
    await pane.click('Edit Bay A');
    await pane.click(/^Angle shear: none/);
    await pane.field('On this press');
    expect(document.querySelector('[data-field="angleShearLegSquare"]')).toBeNull();
    await pane.fill('On this press', 'yes');
    await pane.field('Leg square, in');
  });

  it('has pairs on a line, and one word for both', async () => {
    await open('shop');
    await pane.click('Shop');
    await pane.click('Edit Bay A');
    await pane.click(/^Flat shear:/);
    const widest = await pane.field('Widest bar, in');
    const group = widest.closest('[role=group]');
    expect(group?.querySelectorAll('input')).toHaveLength(2);
    await pane.fill('Widest bar × widest bar thickness: value, no limit or not known', 'none');
    await pane.until('none in both', () =>
      [...(group?.querySelectorAll('input') ?? [])].every(({ value }) => value === 'none'),
    );
    await pane.button('Save 2 values');
  });

  it('shows which dimension the focused number is', async () => {
    await open('shop');
    await pane.click('Shop');
    await pane.click('Edit Bay A');
    await pane.click(/^Punch:/);
    (await pane.field('Throat, in')).focus();
    await pane.until('throat', () =>
      document.querySelector('[data-dimension="throat"][data-focused="true"]'),
    );
    expect(document.querySelectorAll('[data-focused="true"]')).toHaveLength(1);
  });
});
