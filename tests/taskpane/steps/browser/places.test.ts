import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { listRow, verdictColumn } from '../quoteBook.js';
import { type Look, Places, type Shown } from './places.js';

let places: Places;
let shown: Shown | undefined;
beforeAll(async () => {
  places = await Places.start();
}, 300_000);
afterAll(() => places.close());
afterEach(async () => {
  await shown?.close();
  shown = undefined;
});

const looks: Look[] = [
  { name: 'light-320', width: 320 },
  { name: 'light-640', width: 640 },
  { name: 'dark-450', width: 450, dark: true },
  { name: 'forced-450', width: 450, forced: true },
];
const row: [string, number, number] = ['Quote', listRow + 2, verdictColumn];
const call: [string, number, number] = ['Quote', 12, 4];

describe.each(looks)('Steps and Hand-off for everybody to use, $name', (look) => {
  it('show a row and its drawings without a fault', async () => {
    shown = await places.open('Steps', row, look);
    await shown.says('A1 on the press');
    await shown.page.getByText('Show all distances').click();
    await shown.page.getByText('The same as a table').first().click();
    expect(await shown.faults()).toEqual([]);
    await shown.shot('steps-row');
  });

  it('show a call without a fault', async () => {
    shown = await places.open('Steps', call, look);
    await shown.says('TONROW.PUNCHFORCE');
    await shown.says('Holes Bay A punches in A36');
    expect(await shown.faults()).toEqual([]);
    await shown.shot('steps-call');
  });

  it('show the copies and the report without a fault', async () => {
    shown = await places.open('Hand-off', row, look);
    await shown.click('Preview the copy', 0);
    await shown.says('These formulas become values');
    await shown.click('Make report');
    await shown.page.frameLocator('iframe').getByText('Press check of the parts').waitFor();
    expect(await shown.faults()).toEqual([]);
    await shown.shot('hand-off');
  });
});

describe('by keyboard alone', () => {
  it('goes from point to point of a drawing, and on to what follows', async () => {
    shown = await places.open('Steps', row, { name: 'keys', width: 320 });
    const { page } = shown;
    await shown.says('A1 on the press');
    const drawing = page.getByRole('application', { name: 'A1 on the press' });
    await drawing.focus();
    await page.keyboard.press('ArrowRight');
    await shown.says('Hole, 1 of 6, Ø13/16: 1 in from the stop, 1-3/4 in from the heel at the fence.');
    await page.keyboard.press('ArrowRight');
    await shown.says('Hole, 2 of 6');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('The same as a table');
  });
});

describe('a copy for the shop', () => {
  it('is made after a yes, and its formulas come back after another', async () => {
    shown = await places.open('Hand-off', row, { name: 'copy', width: 450 });
    await shown.click('Preview the copy');
    await shown.click('Make values copy');
    await shown.says('This will be written');
    await shown.click('Write');
    await shown.says('Done: 18 formulas are values now, and every cell shows what it showed.');
    await shown.click('Bring formulas back');
    await shown.says('18 formulas come back into their cells.');
    await shown.click('Write');
    await shown.says('All 18 formulas are back, each identical to the list.');
    expect(shown.errors).toEqual([]);
  });
});

describe('a report in its frame', () => {
  it('has its style though the policy lets none in as text', async () => {
    shown = await places.open('Hand-off', row, { name: 'frame', width: 450 });
    await shown.click('Make report');
    const heading = shown.page.frameLocator('iframe').locator('h1');
    await heading.waitFor();
    expect(await heading.evaluate((element) => getComputedStyle(element).marginTop)).toBe('0px');
    expect(shown.errors).toEqual([]);
  });
});

describe('print', () => {
  it('is black: no drawing has a line of another colour', async () => {
    shown = await places.open('Steps', row, { name: 'print', width: 450, dark: true });
    await shown.says('A1 on the press');
    await shown.page.emulateMedia({ media: 'print' });
    const strokes = await shown.page.evaluate(() =>
      [...document.querySelectorAll('figure svg path, figure svg text')].flatMap((shape) => {
        const { stroke, fill } = getComputedStyle(shape);
        return shape.closest('defs') ? [] : [stroke, fill.startsWith('url') ? 'none' : fill];
      }),
    );
    expect([...new Set(strokes)].sort()).toEqual(['none', 'rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
  });
});
