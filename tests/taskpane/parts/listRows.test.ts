import { describe, expect, it } from 'vitest';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { readRow } from '../../../src/core/row/readRow.js';
import { headingsOf, matchColumns } from '../../../src/taskpane/parts/list/columnMatch.js';
import { headingRowOf } from '../../../src/taskpane/parts/list/headingRow.js';
import { listFrom } from '../../../src/taskpane/parts/list/listRead.js';
import { textFormats } from '../../../src/taskpane/parts/list/textFormats.js';
import { starterShop } from '../../../src/taskpane/shop/sheet/starterShop.js';

const shop = starterShop('in');

function listOf(cells: string) {
  const values = cells.split('\n').map((line) =>
    line
      .trim()
      .split('|')
      .map((cell) =>
        cell === '' ? null : /^\d+(?:\.\d+)?$/.test(cell) ? Number(cell) : cell.replaceAll('/n', '\n'),
      ),
  );
  const area = { sheet: 'Sheet1', row: 0, column: 0, rows: values.length, columns: values[0]?.length ?? 0 };
  const list = listFrom({ key: 'cells', title: 'Cells', area }, area, values, headingRowOf(values));
  const matches = matchColumns(list.headings, list.rows, shop, list.written);
  const headings = readHeadings(headingsOf(matches));
  const kinds = list.rows.map((row) => {
    const result = checkRow(row, headings, shop);
    return result.blank ? (result.is ?? 'blank') : 'part';
  });
  return { list, matches, headings, kinds };
}

describe('what lists hold beside parts', () => {
  it('units below the headings are read with them', () => {
    const { list, matches, headings, kinds } = listOf(
      `Mark|Qty|Section|Grade|Length|Hole|Edge
       |ea|||(mm)|(in)|(in)
       C1|1|L3X3X1/4|A36|254|13/16|1-1/4
       TOTAL|1|||||`,
    );
    expect(kinds).toEqual(['units', 'part', 'total']);
    expect(headingsOf(matches)).toEqual(['Mark', 'Qty', 'Section', 'Grade', 'Length (mm)', 'Hole', 'Edge']);
    expect(matches[4]?.guessed).toBe(true);
    expect(readRow(list.rows[1] ?? [], headings, shop).lengthMm).toBe(254);
  });

  it('two rows of headings on each page, page totals and a note', () => {
    const { kinds, matches } = listOf(
      `Mark|Qty|Section|Grade|Hole||
       ||||Dia|Qty|Edge/n(in)
       C1|2|L3X3X1/4|A36|13/16|4|1-1/4
       Page total|2|||||
       |||||
       Mark|Qty|Section|Grade|Hole||
       ||||Dia|Qty|Edge/n(in)
       C2|2|L3X3X1/4|A36|13/16|4|1-1/4
       GRAND TOTAL|4|||||
       All holes standard unless noted||||||`,
    );
    expect(matches.map(({ field }) => field)).toEqual([
      'Mark',
      'Qty',
      'Section',
      'Grade',
      'Hole',
      'Holes',
      'Edge',
    ]);
    expect(kinds).toEqual(['part', 'total', 'blank', 'headings', 'headings', 'part', 'total', 'work']);
  });
});

it('cells become text where parts stand; totals, and numbers with a format of their own, keep theirs', () => {
  const { list, matches } = listOf(
    `Mark|Section|Grade|Length
     C1|FB 3/8x4|A36|12.5
     C2|FB 3/8x4|A36|12.5
     Total|||25`,
  );
  const [step] = textFormats(list, matches, [
    ['General', 'General', 'General', '# ?/?'],
    ['General', 'General', 'General', 'General'],
    ['General', 'General', 'General', '0.0'],
  ]);
  expect(step?.kind === 'cells' && step.formats).toEqual([
    ['@', '@', '@', undefined],
    ['@', '@', '@', '@'],
    [undefined, undefined, undefined, undefined],
  ]);
});
