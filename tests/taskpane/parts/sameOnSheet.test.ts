// What the pane says of a row, the formula that it writes says too: it is given the same headings and every column that counts.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { headingsOf, matchColumns, matchedTo } from '../../../src/taskpane/parts/list/columnMatch.js';
import { inputSpan, listFrom } from '../../../src/taskpane/parts/list/listRead.js';
import { headingRowOf } from '../../../src/taskpane/parts/list/headingRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith();

interface Column {
  over: string;
  heading: string;
  cell: CellValue;
}
const column = (heading: string, cell: CellValue, over = ''): Column => ({ heading, cell, over });
const part = [
  column('Mark', 'F1'),
  column('Qty', 2),
  column('Section', 'FB3/8X6'),
  column('Grade', 'A36'),
  column('Length', 12),
];

/** The verdict in the pane, and that of the formula on the sheet. */
function verdicts(columns: readonly Column[], isTwoRows: boolean) {
  const rows = [
    ...(isTwoRows ? [columns.map(({ over }) => over)] : []),
    columns.map(({ heading }) => heading),
    columns.map(({ cell }) => cell),
  ];
  const area = { sheet: 'Sheet1', row: 0, column: 0, rows: rows.length, columns: columns.length };
  const list = listFrom({ key: 'cells', title: 'Cells', area }, area, rows, headingRowOf(rows));
  const matches = matchColumns(list.headings, list.rows, shop, list.written);
  const [row = []] = list.rows;
  const pane = checkRow(row, readHeadings(headingsOf(matches)), shop);
  const written = (list.written ?? list.headings).map((cell, at) => matches[at]?.rename ?? cell);
  const span = inputSpan(matches);
  const given = <Cell>(cells: readonly Cell[]) => cells.slice(span?.first.at, (span?.last.at ?? 0) + 1);
  const sheet = checkRow(given(row), readHeadings(given(written)), shop);
  return { matches, pane: pane.blank ? 'blank' : pane.verdict, sheet: sheet.blank ? 'blank' : sheet.verdict };
}

describe('a row checked in the pane and on the sheet', () => {
  it('has one verdict, wherever a column stands that is not read', () => {
    for (const extra of [column('Left angle', 45), column('Mitr left', 60), column('Fixing', '13/16')])
      for (const columns of [
        [...part, extra],
        [extra, ...part],
        [...part, column('Color', 'red'), extra],
      ])
        expect(verdicts(columns, false)).toMatchObject({ pane: 'OK so far', sheet: 'OK so far' });
  });

  it('has one verdict with two rows of headings, of which the upper names the work', () => {
    const columns = [...part, column('Dia', null, 'Holes'), column('No', null), column('Deep', 3, 'Bevel')];
    expect(verdicts(columns, true)).toMatchObject({ pane: 'OK so far', sheet: 'OK so far' });
  });

  it('has one verdict where the upper row names the work of one column and says nothing else', () => {
    expect(verdicts([...part, column('Deep', 3, 'Bevel')], true)).toMatchObject({
      ...{ pane: 'OK so far', sheet: 'OK so far' },
    });
    // A title over the list names no work of its columns.
    const [mark, ...rest] = part;
    const titled = [{ ...column('Line', 7), over: 'Punch list' }, ...(mark ? [mark] : []), ...rest];
    expect(verdicts([...titled, column('Color', 'red')], true)).toMatchObject({ pane: 'OK', sheet: 'OK' });
  });

  it.each(['Cope', 'Bevel'])('takes letters below %s for its sizes', (work) => {
    for (const letters of [
      ['L', 'D'],
      ['W', 'D'],
      ['a', 'b'],
      ['t', 'w'],
    ] as const) {
      const [first, second] = letters;
      const columns = [...part, column(first, 2, work), column(second, 1)];
      expect(verdicts(columns, true), letters.join()).toMatchObject({
        pane: 'OK so far',
        sheet: 'OK so far',
      });
    }
  });

  it('reads W and D below Notch as its width and depth', () => {
    const { matches } = verdicts([...part, column('W', 2, 'Notch'), column('D', 1)], true);
    expect(matches.slice(part.length).map(({ field }) => field)).toEqual(['Notch width', 'Notch depth']);
  });

  it.each([
    ['Hole', 'Dia', 'No'],
    ['Hole', 'Size', 'Qty'],
    ['Holes', 'Dia', '#'],
    ['Bohrung', 'Ø', 'Anz.'],
    ['Loch', 'Durchmesser', 'Anzahl'],
  ])('reads how many holes there are under %s: %s, %s', (over, size, count) => {
    const holes = [column(size, '13/16', over), column(count, 4), column('Edge', 3), column('End', 2)];
    const { matches } = verdicts([...part, ...holes], true);
    expect(matches.slice(part.length).map(({ field }) => field)).toEqual(['Hole', 'Holes', 'Edge', 'End']);
  });

  it('takes a weight behind the holes for no part of them', () => {
    const columns = [...part, column('Dia', null, 'Holes'), column('No', null), column('Weight', 9)];
    expect(verdicts(columns, true)).toMatchObject({ pane: 'OK', sheet: 'OK' });
  });

  it('writes what two rows say together, also where somebody chose it by hand', () => {
    const { matches } = verdicts([...part, column('Dia', '13/16', 'Hole'), column('Edge', 3, '')], true);
    const hole = matches.find(({ field }) => field === 'Hole');
    expect(hole).toBeDefined();
    const chosen = hole && matchedTo(matchedTo(hole, 'Edge'), 'Hole');
    expect(readHeadings(['Section', chosen?.rename ?? 'Dia']).groups[0]).toHaveProperty('hole');
  });

  it('has one verdict whatever columns stand beside the part', () => {
    const word = fc.constantFrom(
      ...[
        '',
        'Hole',
        'Holes',
        'Miter',
        'Left',
        'Right',
        'Dia',
        'Edge',
        'End',
        'Qty',
        'Weight',
        'Note',
        'Angle',
      ],
      ...['Bevel', 'Notch', 'Width', 'Depth', 'Color', 'Size', 'Cut', 'Mitr left', 'Gage', 'Lot'],
    );
    const cell = fc.constantFrom<CellValue>(null, 3, 45, '13/16', '1-1/2', 'x', 'red');
    const extra = fc.record({ over: word, heading: word, cell });
    let open = 0;
    fc.assert(
      fc.property(
        fc.array(extra, { maxLength: 4 }),
        fc.array(extra, { maxLength: 4 }),
        fc.boolean(),
        (left, right, isTwoRows) => {
          const columns = [...left, ...part, ...right];
          let both: ReturnType<typeof verdicts>;
          try {
            both = verdicts(columns, isTwoRows);
          } catch {
            // Two columns mean the same, or a second row of headings hides the Section: the pane asks.
            return;
          }
          if (both.pane === 'OK so far') open += 1;
          expect(both.sheet, JSON.stringify(columns)).toBe(both.pane);
        },
      ),
      { numRuns: 500 },
    );
    expect(open).toBeGreaterThan(40);
  });
});
