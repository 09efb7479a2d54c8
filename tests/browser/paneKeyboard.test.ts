// Everything the pane offers, done by keyboard alone.
import { describe, expect, it } from 'vitest';
import { listRow, verdictColumn } from '../taskpane/steps/quoteBook.js';
import { type OpenPane, paneTests } from './pane/paneBrowser.js';

const openPane = paneTests();

const open = (workbook: string) => openPane(workbook, { name: 'keyboard', width: 350 });

/** Says yes to what a dialog shows. */
async function write(shown: OpenPane, title: string | RegExp): Promise<void> {
  await shown.says('This will be written');
  await shown.keys('Write to sheet', 'Enter');
  await shown.says(title);
}

describe('the shop by keyboard alone', () => {
  it('a tool is added, changed and removed', async () => {
    const shown = await open('shop');
    await shown.keys('Parts', 'ArrowLeft', 'Enter');
    await shown.keys('Presses', 'ArrowRight', 'Enter');
    await shown.keys('New tool', 'Enter');
    await shown.chooseIn('Kind', 'p');
    await shown.typeInto(/^Size/, '13/16');
    await shown.page.keyboard.press('Enter');
    await write(shown, 'any · punch · 13/16');
    await shown.keys('Edit any · punch · 13/16', 'Enter');
    await shown.typeInto(/^Size/, '15/16');
    await shown.keys('Save', 'Enter');
    await write(shown, 'any · punch · 15/16');
    await shown.keys('Remove any · punch · 15/16', 'Enter');
    await write(shown, /Done: Remove tool/);
    expect(shown.errors).toEqual([]);
  });

  it('a grade is added and removed', async () => {
    const shown = await open('shop');
    await shown.keys('Parts', 'ArrowLeft', 'Enter');
    await shown.keys('Presses', 'ArrowRight', 'ArrowRight', 'Enter');
    await shown.keys('New grade', 'Enter');
    await shown.typeInto('Grade', 'Heat 7714');
    await shown.typeInto(/^Tensile upper/, '78 ksi');
    await shown.keys('Save', 'Enter');
    await write(shown, 'Heat 7714 · up to 78 ksi');
    await shown.keys('Remove Heat 7714 · up to 78 ksi', 'Enter');
    await write(shown, /Done: Remove grade/);
    expect(shown.errors).toEqual([]);
  });

  it('settings are changed, by typing and from their choices', async () => {
    const shown = await open('shop');
    await shown.keys('Parts', 'ArrowLeft', 'Enter');
    await shown.keys('Presses', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'Enter');
    await shown.chooseIn('Edge code', 'E');
    await shown.typeInto('Shear ratio', '0.8');
    await shown.keys('Save settings', 'Enter');
    await write(shown, 'Done: Change settings.');
    const settings = await shown.page.evaluate(() => window.tonrow.shown('Settings'));
    const values = Object.fromEntries(settings.map(([name, value]) => [String(name), value]));
    expect(values).toMatchObject({ 'Edge code': 'EN', 'Shear ratio': '0.8' });
    expect(shown.errors).toEqual([]);
  });

  it('a press is renamed, copied and removed', async () => {
    const shown = await open('shop');
    await shown.keys('Parts', 'ArrowLeft', 'Enter');
    await shown.keys('Edit Bay A', 'Enter');
    await shown.keys('Rename', 'Enter');
    await shown.typeInto('New name', 'Bay North');
    await shown.keys('Rename', 'Enter');
    await write(shown, 'Done: Rename Bay A to Bay North.');
    await shown.keys('Copy', 'Enter');
    await shown.typeInto(/^Name/, 'Bay East');
    await shown.page.keyboard.press('Enter');
    await write(shown, 'in · 3 presses');
    await shown.keys('Remove', 'Enter');
    await write(shown, 'Done: Remove press Bay East.');
    await shown.says('in · 2 presses');
    expect(await shown.page.evaluate(() => window.tonrow.shown('Presses')[0])).toEqual([
      'Item',
      'Unit',
      'Bay North',
      'Bay B',
    ]);
    expect(shown.errors).toEqual([]);
  });
});

describe('the parts by keyboard alone', () => {
  it('one part is typed and checked against the presses', async () => {
    const shown = await open('shop');
    await shown.typeInto('Section', 'PL1/2X4');
    await shown.typeInto('Grade', 'A36');
    await shown.typeInto('Hole', '1-3/16');
    await shown.says('102% of rating');
    await shown.keys(/^Pitch, gage/, 'Enter');
    await shown.typeInto('Pitch', '2');
    expect(shown.errors).toEqual([]);
  });

  it('columns are matched and the row of the headings is picked', async () => {
    const shown = await open('shop+list8');
    await shown.keys('Try one part', 'ArrowRight', 'Enter');
    await shown.says('2 guessed');
    await shown.chooseIn(/Remarks.* is read as$/, 'Fin');
    await shown.says('to be renamed Finish');
    await shown.keys('Row with the headings', 'Home');
    await shown.says('there is no Section column');
    expect(shown.errors).toEqual([]);
  });

  it('a group of rows is given a press', async () => {
    const shown = await open('shop+clips');
    await shown.keys('Try one part', 'ArrowRight', 'Enter');
    await shown.keys('Check this list', 'Enter');
    await shown.keys('Add check columns', 'Enter');
    await write(shown, 'Done: Add check columns.');
    await shown.says('2 of 3 rows fail');
    await shown.keys(/2 rows · No station/, 'Enter');
    await shown.keys(/Bay B/, 'Enter');
    await write(shown, /Done: Set press Bay B for 2 rows/);
    await shown.says('All 3 rows pass');
    await shown.keys('Undo', 'Enter');
    await shown.says('2 of 3 rows fail');
    expect(shown.errors).toEqual([]);
  });
});

describe('steps and hand-off by keyboard alone', () => {
  it('the steps of a row are walked: row, press, drawings, all steps', async () => {
    const shown = await open('quote');
    await shown.select('Quote', listRow + 2, verdictColumn);
    await shown.keys('Parts', 'ArrowRight', 'ArrowRight', 'Enter');
    await shown.says('A1 on the press');
    await shown.keys('Go to row', 'Enter');
    await shown.keys('Go to Bay A', 'Enter');
    await shown.select('Quote', listRow + 2, verdictColumn);
    await shown.says('A1 on the press');
    await shown.chooseIn('Press', 'Bay B');
    await shown.says('Holes Bay B punches in A36');
    await shown.keys(/^Show all \d+ steps/, 'Enter');
    await shown.says('Show the first 6 steps');
    const visited = await shown.page.evaluate(() => window.tonrow.visited.map(({ sheet }) => sheet));
    expect(visited).toEqual(['Quote', 'Shop']);
    expect(shown.errors).toEqual([]);
  });

  it('a copy is made and its formulas are brought back; a report is made', async () => {
    const shown = await open('quote');
    await shown.keys('Parts', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'Enter');
    await shown.keys('Preview the copy', 'Enter');
    await shown.says('These formulas become values');
    await shown.keys('Make values copy', 'Enter');
    await write(shown, /Done: 18 formulas are values now/);
    await shown.keys('Bring formulas back', 'Enter');
    await write(shown, 'All 18 formulas are back, each identical to the list.');
    await shown.keys('Make report', 'Enter');
    await shown.keys('Refresh report', 'Tab');
    await shown.page.frameLocator('iframe').getByText('Press check of the parts').waitFor();
    expect(shown.errors).toEqual([]);
  });
});

describe('the Tab key reaches every control', () => {
  const screens: [name: string, workbook: string, show: (shown: OpenPane) => Promise<void>][] = [
    ['the first screen', 'empty', (shown) => shown.says('Will it run on your presses?')],
    [
      'a preview',
      'empty',
      async (shown) => {
        await shown.click('Add shop sheet');
        await shown.says('This will be written');
      },
    ],
    [
      'the presses',
      'shop',
      async (shown) => {
        await shown.tab('Shop');
        await shown.says('New press');
      },
    ],
    [
      'a press',
      'shop',
      async (shown) => {
        await shown.tab('Shop');
        await shown.click('Edit Bay A');
        await shown.click(/^Punch:/);
        await shown.click(/^Flat shear:/);
      },
    ],
    [
      'a new tool',
      'shop',
      async (shown) => {
        await shown.tab('Shop');
        await shown.tab('Tools');
        await shown.click('New tool');
      },
    ],
    [
      'the settings',
      'shop',
      async (shown) => {
        await shown.tab('Shop');
        await shown.tab('Settings');
      },
    ],
    ['one part', 'shop', (shown) => shown.click('Fill in an example')],
    [
      'a checked list with an open group',
      'shop+list80',
      async (shown) => {
        await shown.tab('Check a list');
        await shown.click('Check this list');
        await shown.click(/rows · Edge short/);
        await shown.says('Which press can run these rows');
      },
    ],
    [
      'the steps of a row',
      'quote',
      async (shown) => {
        await shown.tab('Steps');
        await shown.select('Quote', listRow + 2, verdictColumn);
        await shown.says('A1 on the press');
      },
    ],
    [
      'the hand-off',
      'quote',
      async (shown) => {
        await shown.tab('Hand-off');
        await shown.click('Preview the copy');
        await shown.says('These formulas become values');
        await shown.click('Make report');
        await shown.says('Save as a page');
      },
    ],
  ];

  it.each(screens)('of %s', async (_, workbook, show) => {
    const shown = await open(workbook);
    await show(shown);
    expect(await shown.unreached()).toEqual([]);
  });
});
