import { describe, expect, it } from 'vitest';
import { listRow, verdictColumn } from '../taskpane/steps/quoteBook.js';
import { everyLook, type Look, type OpenPane, paneTests } from './pane/paneBrowser.js';

const openPane = paneTests();

type Cell = [sheet: string, row: number, column: number];
const row: Cell = ['Quote', listRow + 2, verdictColumn];
const call: Cell = ['Quote', 12, 4];

/** Opens a place of the pane over a quote, with a cell selected. */
async function opened(place: string, cell: Cell, look: Look): Promise<OpenPane> {
  const open = await openPane('quote', look);
  await open.tab(place);
  await open.select(...cell);
  return open;
}

describe.each(everyLook)('Steps and Hand-off for everybody to use, $name', (look) => {
  it('show a row and its drawings without a fault', async () => {
    const open = await opened('Steps', row, look);
    await open.says('A1 on the press');
    await open.page.getByText('The same as a table').first().click();
    expect([...(await open.faults()), ...open.errors]).toEqual([]);
    await open.shot('steps-row');
  });

  it('show how a row is set up without a fault', async () => {
    const open = await opened('Steps', ['Quote', listRow + 4, verdictColumn], look);
    await open.says('Settings from the punch center, in');
    await open.page.getByText('Every step, in order').click();
    await open.says('Lock out before hands go near the tools.');
    expect([...(await open.faults()), ...open.errors]).toEqual([]);
    await open.shot('steps-setup');
  });

  it('show a call without a fault', async () => {
    const open = await opened('Steps', call, look);
    await open.says('TONROW.PUNCHFORCE');
    await open.says('Holes Bay A punches in A36');
    expect([...(await open.faults()), ...open.errors]).toEqual([]);
    await open.shot('steps-call');
  });

  it('show the copies and the report without a fault', async () => {
    const open = await opened('Hand-off', row, look);
    await open.click('Preview the copy');
    await open.says('These formulas become values');
    await open.click('Make report');
    await open.page.frameLocator('iframe').getByText('Press check of the parts').waitFor();
    expect([...(await open.faults()), ...open.errors]).toEqual([]);
    await open.shot('hand-off');
  });

  it('show the cards without a fault', async () => {
    const open = await opened('Hand-off', row, look);
    await open.click('Make cards');
    await open.page.frameLocator('iframe[title="Cards"]').locator('.card svg').first().waitFor();
    expect([...(await open.faults()), ...open.errors]).toEqual([]);
    await open.shot('hand-off-cards');
  });
});

describe('by keyboard alone', () => {
  it('goes from point to point of a drawing, and on to what follows', async () => {
    const open = await opened('Steps', row, { name: 'keys', width: 320 });
    const { page } = open;
    await open.says('A1 on the press');
    const drawing = page.getByRole('application', { name: 'A1 on the press' });
    await drawing.focus();
    await page.keyboard.press('ArrowRight');
    await open.says('Hole, 1 of 6, Ø13/16: 7/8 in from the stop, 1-3/4 in from the heel at the fence.');
    await page.keyboard.press('ArrowRight');
    await open.says('Hole, 2 of 6');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Print this drawing');
  });
});

describe('a copy for the shop', () => {
  it('is made after a yes, and its formulas come back after another', async () => {
    const open = await opened('Hand-off', row, { name: 'copy', width: 450 });
    await open.click('Preview the copy');
    await open.click('Make values copy');
    await open.says('This will be written');
    await open.click('Write to sheet');
    await open.says('Done: 18 formulas are values now, and every cell shows what it showed.');
    await open.click('Bring formulas back');
    await open.says('18 formulas come back into their cells.');
    await open.click('Write to sheet');
    await open.says('All 18 formulas are back, each identical to the list.');
    expect(open.errors).toEqual([]);
  });
});

describe('a report in its frame', () => {
  it('has its style though the policy lets none in as text', async () => {
    const open = await opened('Hand-off', row, { name: 'frame', width: 450 });
    await open.click('Make report');
    const heading = open.page.frameLocator('iframe').locator('h1');
    await heading.waitFor();
    expect(await heading.evaluate((element) => getComputedStyle(element).marginTop)).toBe('0px');
    expect(open.errors).toEqual([]);
  });
});

describe('print', () => {
  it('is black: no drawing has a line of another color', async () => {
    const open = await opened('Steps', row, { name: 'print', width: 450, dark: true });
    await open.says('A1 on the press');
    await open.page.emulateMedia({ media: 'print' });
    const strokes = await open.page.evaluate(() =>
      [...document.querySelectorAll('figure svg path, figure svg text')].flatMap((shape) => {
        const { stroke, fill } = getComputedStyle(shape);
        return shape.closest('defs') ? [] : [stroke, fill.startsWith('url') ? 'none' : fill];
      }),
    );
    expect([...new Set(strokes)].sort()).toEqual(['none', 'rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
  });
});
