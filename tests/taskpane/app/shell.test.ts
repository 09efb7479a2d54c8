// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { listHeadings } from '../../../src/sheet/keptFormulas/formulaList.js';
import { isFormula } from '../../../src/workbook/content.js';
import { WorkbookError } from '../../../src/workbook/workbookError.js';
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

describe('the first screen', () => {
  it('says what it is for, offers three ways on, and writes nothing', async () => {
    const workbook = await open('empty');
    await pane.says('Will it run on your presses?');
    expect(pane.text).toContain('Nothing is written until you say yes.');
    expect(pane.text).toContain('Starter presses are invented: replace them before quoting.');
    for (const name of ['Add shop sheet', 'Try one part', 'Check this list'])
      expect(pane.hasButton(name)).toBe(true);
    expect([...workbook.memory.sheets.keys()]).toEqual(['Sheet1']);
  });

  it('tries one part before there is a shop, and says that the presses are invented', async () => {
    await open('empty');
    await pane.click('Try one part');
    await pane.says('two invented presses');
    await pane.click('Fill in an example');
    await pane.says('Bay A has no angle shear');
  });
});

describe('a later opening', () => {
  it.each([
    ['a checked list', ['Section', 'Verdict'], 'Check a list'],
    ['no checked list', ['Section', 'Grade'], 'Try one part'],
  ])('of a workbook with %s begins there', async (_, headings, view) => {
    const workbook = new MemoryWorkbook('Sheet1');
    await fillWorkbook(workbook, 'shop');
    workbook.type('Sheet1', 0, 0, [headings, ['PL3/8X6', 'OK']]);
    const area = { sheet: 'Sheet1', row: 0, column: 0, rows: 2, columns: 2 };
    workbook.memory.tables.push({ name: 'Parts', area, hasTotals: false });
    pane = new ShownPane(workbook);
    const tab = await pane.button(view);
    expect(tab.getAttribute('aria-selected')).toBe('true');
  });
});

describe('a proposed change', () => {
  it('is shown first, and leaving it writes nothing', async () => {
    const workbook = await open('empty');
    await pane.click('Add shop sheet');
    await pane.says('New sheet Shop');
    await pane.says('No filled cell is overwritten.');
    await pane.click('Cancel');
    await pane.saysNoMore('New sheet Shop');
    expect([...workbook.memory.sheets.keys()]).toEqual(['Sheet1']);
  });

  it('is written on yes, and taken back in one step', async () => {
    const workbook = await open('empty');
    await pane.click('Add shop sheet');
    await pane.click('Write to sheet');
    await pane.says('Done: Add shop sheet.');
    await pane.says('in · 2 presses · rules 1');
    expect(workbook.memory.names.map(({ name }) => name)).toEqual(['ShopStamp']);
    await pane.click('Undo');
    await pane.says('No shop sheet in this workbook yet');
    expect([...workbook.memory.sheets.keys()]).toEqual(['Sheet1']);
    expect(workbook.memory.tables).toEqual([]);
  });

  it('takes the keyboard to what was written; keeping it keeps all that was written before', async () => {
    const workbook = await open('empty');
    await pane.click('Add shop sheet');
    await pane.click('Write to sheet');
    await pane.says('Done: Add shop sheet.');
    expect(document.activeElement?.textContent).toMatch(/^Done: Add shop sheet\./);
    await pane.click('Edit Bay A');
    await pane.click(/^Punch:/);
    await pane.fill('Throat, in', '6');
    await pane.click('Save 1 value');
    await pane.click('Write to sheet');
    await pane.says('Done: Change Bay A.');
    await pane.click('Dismiss');
    await pane.saysNoMore('Done:');
    expect(document.activeElement?.querySelector('#place')).not.toBeNull();
    expect(workbook.memory.sheets.has('Shop')).toBe(true);
  });

  it('that was undone in the spreadsheet is said to be, and its message goes', async () => {
    const workbook = await open('empty');
    await pane.click('Add shop sheet');
    await pane.click('Write to sheet');
    await pane.says('Done: Add shop sheet.');
    vi.spyOn(workbook, 'tables').mockRejectedValueOnce(
      new WorkbookError('undone', 'This change is undone already.'),
    );
    await pane.click('Undo');
    await pane.says('This change is undone already.');
    await pane.saysNoMore('Done:');
    await pane.click('Close');
    await pane.saysNoMore('undone already');
  });

  it('of the shop is not taken back while rows are checked with it', async () => {
    const workbook = await open('empty');
    await pane.click('Add shop sheet');
    await pane.click('Write to sheet');
    await pane.says('Done: Add shop sheet.');
    workbook.type('Sheet1', 0, 0, [
      ['Section', 'Verdict'],
      ['PL3/8X6', 'OK'],
    ]);
    const area = { sheet: 'Sheet1', row: 0, column: 0, rows: 2, columns: 2 };
    workbook.memory.tables.push({ name: 'Parts', area, hasTotals: false });
    await pane.click('Undo');
    await pane.says('1 row is checked with this shop: remove the check columns first. Nothing was undone.');
    expect(workbook.memory.sheets.has('Shop')).toBe(true);
  });

  it('is not taken back over work that somebody did since, and says why', async () => {
    const workbook = await open('empty');
    await pane.click('Add shop sheet');
    await pane.click('Write to sheet');
    await pane.says('Done: Add shop sheet.');
    workbook.type('Shop', 6, 2, [['66']]);
    await pane.click('Undo');
    await pane.says('has changed since this was written, so this was not undone');
    expect(workbook.memory.sheets.has('Shop')).toBe(true);
  });
});

describe('what is true of the whole workbook', () => {
  it('one banner tells of a broken cell of the shop, how many rows wait on it, and goes there', async () => {
    const workbook = await open('shop');
    workbook.type('Sheet1', 0, 0, [
      ['Section', 'Grade', 'Hole', 'Edge', 'End', 'Press', 'Verdict'],
      ['PL3/8X6', 'A36', '13/16', 2, 2, 'Bay B', 'Check input'],
      ['PL3/8X6', 'A36', '13/16', 2, 2, 'Bay A', 'OK'],
    ]);
    workbook.memory.tables.push({
      name: 'Parts',
      area: { sheet: 'Sheet1', row: 0, column: 0, rows: 3, columns: 7 },
      hasTotals: false,
    });
    const throat = workbook.shown('Presses').findIndex(([item]) => item === 'Punch throat');
    const row = 5 + throat;
    workbook.type('Shop', row, 3, [['abc']]);
    await pane.says("Presses, Bay B, Punch throat: 'abc' is not a length.");
    await pane.says('1 row needs this value.');
    await pane.says('Bay B incomplete');
    await pane.click('Go to cell');
    expect(workbook.visited.at(-1)).toMatchObject({ sheet: 'Shop', row, column: 3 });
  });

  it.each([
    [['OK', 'Edge short', 'Check input', 'Not checked'], '1 of 4 rows fails', '2 not fully checked'],
    [['Edge short', 'No tool', 'OK'], '2 of 3 rows fail', undefined],
    [['OK', 'Near limit', 'Not checked'], '2 of 3 rows pass', '1 not fully checked'],
    [['OK'], '1 of 1 row passes', undefined],
    [['OK', 'OK so far', 'Off press'], '2 of 3 rows pass', '1 not fully checked'],
    [['OK so far'], 'No row is fully checked', undefined],
    [['Check input', 'Not checked'], 'No row is fully checked', undefined],
  ])(
    'the status tells rows that fail from rows that are not fully checked: %j',
    async (words, fail, unknown) => {
      const workbook = await open('shop');
      workbook.type('Sheet1', 0, 0, [['Section', 'Verdict'], ...words.map((word) => ['PL3/8X6', word])]);
      const area = { sheet: 'Sheet1', row: 0, column: 0, rows: words.length + 1, columns: 2 };
      workbook.memory.tables.push({ name: 'Parts', area, hasTotals: false });
      await pane.says(fail);
      if (unknown === undefined) expect(pane.text).not.toMatch(/\d not fully checked/);
      else await pane.says(unknown);
    },
  );

  it('the status says that the shop sheet of checked rows is gone', async () => {
    const workbook = await open('empty');
    workbook.type('Sheet1', 0, 0, [
      ['Section', 'Verdict'],
      ['PL3/8X6', '#REF!'],
    ]);
    const area = { sheet: 'Sheet1', row: 0, column: 0, rows: 2, columns: 2 };
    workbook.memory.tables.push({ name: 'Parts', area, hasTotals: false });
    await pane.says('1 row of a checked list shows an error, since the shop sheet is gone');
  });

  it('the status says when the shop cell shows an older shop', async () => {
    const workbook = await open('shop');
    await pane.says('in · 2 presses');
    workbook.memory.set('Shop', 3, 1, { value: 'in · 2 presses · rules 1 · ABCD-EFGH-DT4P' });
    workbook.select({ sheet: 'Shop', row: 0, column: 0, rows: 1, columns: 1 });
    pane.close();
    pane = new ShownPane(workbook);
    await pane.says('Checked with …DT4P; the shop is now …');
    await pane.says('Press Ctrl+Alt+F9 to calculate again.');
  });

  it.each([
    ['editing', undefined, 'A cell is being edited: the functions read the shop when you leave it.'],
    ['ok', 'asked', 'Cells that finished before the shop was read were calculated again.'],
    ['ok', 'manual', 'and calculation is manual: press Ctrl+Alt+F9.'],
  ])('says what the functions wait for, or did: %s, %s', async (state, recalculation, sentence) => {
    const listeners = new Set<() => void>();
    const functions = {
      state: { state: 'reading' },
      recalculation: undefined as string | undefined,
      listen: (listener: () => void) => {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
    };
    vi.stubGlobal('tonrowStartUp', functions);
    await open('shop');
    await pane.says('Shop: ');
    expect(pane.text).not.toContain(sentence);
    Object.assign(functions, { state: { state }, recalculation });
    for (const listener of listeners) listener();
    await pane.says(sentence);
    vi.unstubAllGlobals();
  });

  it('a values copy is no broken shop: its formula is in the list that it keeps', async () => {
    const workbook = await open('shop');
    const { memory } = workbook;
    const { content, value } = memory.cell('Shop', 3, 1);
    const text = String(value);
    if (!isFormula(content)) throw new Error('no formula');
    memory.sheets.set('Tonrow formulas', new Map());
    workbook.type('Tonrow formulas', 0, 0, [[...listHeadings], ['Shop', 'B4', content.formula, null, text]]);
    workbook.type('Shop', 3, 1, [[text]]);
    await pane.says(`Shop: ${text} (values copy)`);
    expect(pane.text).not.toContain('holds no SHOP formula');
    workbook.type('Shop', 7, 2, [['44']]);
    await pane.says('Bring the formulas back (Hand-off) to check again.');
  });

  it('an unreadable shop formula is one sentence with the way to its cell', async () => {
    const workbook = await open('shop');
    workbook.memory.set('Shop', 3, 1, { content: 'nothing' });
    pane.close();
    pane = new ShownPane(workbook);
    await pane.says('ShopStamp: the cell holds no SHOP formula.');
    await pane.click('Go to cell');
    expect(workbook.visited.at(-1)).toMatchObject({ sheet: 'Shop', row: 3, column: 1 });
  });

  it('the caution is within reach in every place', async () => {
    await open('shop');
    for (const place of ['Shop', 'Parts']) {
      await pane.click(place);
      await pane.says('Planning estimates.');
      expect(pane.text).toContain('Never exceed the rating.');
    }
  });
});

describe('a host that does not answer', () => {
  it('is asked again when it was only busy', async () => {
    class Busy extends MemoryWorkbook {
      asked = 0;
      override names() {
        this.asked += 1;
        if (this.asked === 1)
          return Promise.reject(new WorkbookError('busy', 'Finish typing in the cell first.'));
        return super.names();
      }
    }
    const workbook = new Busy('Sheet1');
    pane = new ShownPane(workbook);
    await pane.says('Will it run on your presses?');
    expect(workbook.asked).toBe(2);
  });

  it('shows the sentence of a reading that failed, and tries again on demand', async () => {
    class Broken extends MemoryWorkbook {
      broken = true;
      override names() {
        if (this.broken)
          return Promise.reject(new WorkbookError('unsupported', 'This spreadsheet is too old.'));
        return super.names();
      }
    }
    const workbook = new Broken('Sheet1');
    pane = new ShownPane(workbook);
    await pane.says('This spreadsheet is too old.');
    workbook.broken = false;
    await pane.click('Try again');
    await pane.says('Will it run on your presses?');
  });

  it('says why a change cannot be planned, and why cells cannot be shown', async () => {
    const workbook = await open('shop');
    workbook.plan = () => Promise.reject(new WorkbookError('protected', 'The workbook is protected.'));
    workbook.goTo = () => Promise.reject(new WorkbookError('missing', 'There is no sheet "Shop".'));
    workbook.type('Shop', 7, 2, [['abc']]);
    await pane.click('Go to cell');
    await pane.says('There is no sheet "Shop".');
    await pane.click('Close');
    await pane.saysNoMore('There is no sheet "Shop".');
    await pane.click('Shop');
    await pane.click('Edit Bay B');
    await pane.click(/^Punch:/);
    await pane.fill('Throat, in', '6');
    await pane.click('Save 1 value');
    await pane.says('The workbook is protected.');
  });
});

describe('text from a workbook', () => {
  it('is shown as text, whatever it looks like', async () => {
    const workbook = await open('shop');
    const hostile = '<img src=x onerror="document.title=1">';
    workbook.type('Shop', 5, 2, [[hostile]]);
    await pane.click('Shop');
    await pane.says(hostile);
    expect(document.querySelector('img')).toBeNull();
  });

  it('of a megabyte, or running from right to left, is cut short and kept in its line', async () => {
    const workbook = await open('shop');
    workbook.type('Shop', 5, 2, [[`\u202eevil${'x'.repeat(1_000_000)}`]]);
    await pane.click('Shop');
    await pane.says('evilxxx');
    expect(pane.text).not.toContain('\u202e');
    expect(pane.text.length).toBeLessThan(20_000);
  });
});
