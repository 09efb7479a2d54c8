import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anchorsOf } from '../../../src/sheet/keptFormulas/anchor.js';
import { findPlaces } from '../../../src/sheet/keptFormulas/findPlaces.js';
import type { ListedPlace } from '../../../src/sheet/keptFormulas/listedPlace.js';
import type { CellValue } from '../../../src/sheet/cellValue.js';
import type { SheetCells } from '../../../src/sheet/keptFormulas/sheetCells.js';

const top = 2;
const headings = ['Mark', 'Section', 'Qty', 'Verdict', 'Use'];
const rowFormula =
  '=TONROW.ROWCHECK(Parts[[#Headers],[Mark]:[Qty]],Parts[@[Mark]:[Qty]],ShopStamp,"verdict")';

/** A sheet with a title, then the table Parts of these rows, then what stands below it. */
function sheetOf(
  rows: readonly (readonly CellValue[])[],
  { titles = headings, below = [] as CellValue[][], name = 'Parts' } = {},
): SheetCells {
  const cells: CellValue[][] = [['Quote'], [], ...rows.map((row) => [...row]), ...below];
  cells.splice(1, 1, [...titles]);
  return {
    name: 'Quote',
    rows: cells.length,
    columns: Math.max(...cells.map((row) => row.length)),
    value: (row, column) => cells[row]?.[column] ?? null,
    hasFormula: () => false,
    tables: [{ name, top, bottom: top + rows.length - 1, left: 0, headings: titles }],
  };
}

function listOf(
  sheet: SheetCells,
  formulas: { row: number; column: number; formula: string }[],
): ListedPlace[] {
  const filled = formulas.map((each) => ({ ...each, rows: 1, columns: 1 }));
  const anchors = anchorsOf(sheet, filled, [sheet]);
  return filled.map((each, at) => ({
    ...each,
    sheet: sheet.name,
    value: sheet.value(each.row, each.column),
    anchor: anchors[at] ?? { row: '', sizes: '' },
  }));
}

type Part = [mark: string, section: string, qty: number, verdict: string, use: number];
const parts: Part[] = [
  ['A1', 'FB 3/8x4', 2, 'OK', 0.5],
  ['A2', 'FB 1/2x4', 4, 'Too big', 0.7],
  ['A3', 'L3X3X1/4', 1, 'OK', 0.2],
];
const inTable = (rows: readonly unknown[]) =>
  rows.flatMap((_, at) => [3, 4].map((column) => ({ row: top + at, column, formula: rowFormula })));

describe('rows of a table that hold the same and have different formulas', () => {
  const [one, other] = [rowFormula, '=TONROW.HOLEMIN(Parts[@Qty],"A36")'];
  const alike = (verdict: string): Part => ['', 'FB 3/8x4', 2, verdict, 0.5];
  const listed = (first: string, second: string) =>
    listOf(sheetOf([alike(first), alike(second)]), [
      { row: top, column: 3, formula: one },
      { row: top + 1, column: 3, formula: other },
    ]);
  const found = (places: ListedPlace[], rows: Part[]) =>
    findPlaces(places, [sheetOf(rows)]).map((place) => place?.row);

  it('are told apart by what the formulas showed', () => {
    expect(found(listed('OK', 'Too big'), [alike('Too big'), alike('OK')])).toEqual([top + 1, top]);
    expect(found(listed('OK', 'Too big'), [alike('Too big')])).toEqual([undefined, top]);
  });
  it('stay where they were while they show the same, and are refused where they cannot be told', () => {
    expect(found(listed('OK', 'OK'), [alike('OK'), alike('OK')])).toEqual([top, top + 1]);
    const message = '2 rows held "FB 3/8x4 2 0.5" with different formulas, and which is which cannot be told';
    expect(() => found(listed('OK', 'OK'), [['A1', 'FB 1/2x4', 1, '', 0], alike('OK'), alike('OK')])).toThrow(
      message,
    );
    expect(() => found(listed('OK', 'Too big'), [alike('typed'), alike('over')])).toThrow(message);
  });
});

describe('the places of formulas in a table', () => {
  const listed = listOf(sheetOf(parts), inTable(parts));
  const [a, b, c] = parts as [Part, Part, Part];
  const rowsFound = (rows: readonly (readonly CellValue[])[], more = {}) =>
    findPlaces(listed, [sheetOf(rows, more)]).map((place) => place && [place.row - top, place.column]);

  it('are where they were while nothing moved', () => {
    expect(rowsFound(parts)).toEqual(listed.map(({ row, column }) => [row - top, column]));
  });

  it('follow their rows when these are sorted, or others are put between them', () => {
    expect(rowsFound([c, ['N1', 'FB 1/4x2', 1, '', ''], a, b])).toEqual([
      [2, 3],
      [2, 4],
      [3, 3],
      [3, 4],
      [0, 3],
      [0, 4],
    ]);
  });

  it('follow a row whose mark is left though other cells were edited', () => {
    expect(rowsFound([b, ['A1', 'FB 1/4x4', 8, 'OK', 0.5], c])?.[0]).toEqual([1, 3]);
  });

  it('are gone with a row that was deleted', () => {
    expect(rowsFound([a, c])).toEqual([[0, 3], [0, 4], undefined, undefined, [1, 3], [1, 4]]);
  });

  it('follow their column when another is put before it, by its heading', () => {
    const moved = parts.map(([mark, ...rest]) => [mark, 'x', ...rest]);
    const titles = ['Mark', 'Drawing', 'Section', 'Qty', 'Verdict', 'Use'];
    expect(rowsFound(moved, { titles })[0]).toEqual([0, 4]);
  });

  it('stay in a column that has another heading and shows the same', () => {
    const titles = ['Mark', 'Section', 'Qty', 'Result', 'Use'];
    expect(rowsFound([c, a, b], { titles })[0]).toEqual([1, 3]);
  });

  it.each([
    [
      'a column with another heading that shows something else',
      [[...a.slice(0, 3), 'my word', 0.5], b, c],
      { titles: ['Mark', 'Section', 'Qty', 'Result', 'Use'] },
      'no column "Verdict"',
    ],
    [
      'a heading that the formulas name and that is gone',
      parts,
      { titles: ['Mark', 'Section', 'Pieces', 'Verdict', 'Use'] },
      'name the column "Qty" of the table Parts',
    ],
    ['a table that is gone', parts, { name: 'Other' }, 'no table Parts'],
    [
      'a row under another mark among others',
      [['Z9', 'RB 1', 9, 'OK', 0.5], b, c],
      {},
      'the row of Parts that held "A1 FB 3/8x4 2" is not found',
    ],
  ])('are refused by name for %s', (_, rows, more, sentence) => {
    expect(() => rowsFound(rows as CellValue[][], more)).toThrow(sentence);
  });
});

describe('the places of formulas beside tables', () => {
  const below: CellValue[][] = [[], ['Plate', 0.5, 28.7], ['Bar', 0.75, 30.1]];
  const own = (row: number) => ({ row, column: 2, formula: `=TONROW.HOLEMIN(B${row + 1},"A36")` });
  const sheet = sheetOf(parts, { below });
  const first = top + parts.length + 1;
  const listed = listOf(sheet, [own(first), own(first + 1)]);

  it('follow their rows, and so do the addresses in them', () => {
    const grown = sheetOf([...parts, ['A4', 'RB 1', 1, '', '']], { below });
    expect(findPlaces(listed, [grown])).toEqual([
      { row: first + 1, column: 2, formula: `=TONROW.HOLEMIN(B${first + 2},"A36")` },
      { row: first + 2, column: 2, formula: `=TONROW.HOLEMIN(B${first + 3},"A36")` },
    ]);
  });

  it('are refused where two rows hold the same, or none does', () => {
    const twice = sheetOf(parts, {
      below: [['x'], [], ['Plate', 0.5, 28.7], ['Plate', 0.5, 1], ['Bar', 0.75, 30.1]],
    });
    expect(() => findPlaces(listed, [twice])).toThrow('is not found: it held "Plate 0.5"');
    expect(() => findPlaces(listed, [sheetOf(parts, { below: [['x']] })])).toThrow('is not found');
  });

  it('are found by what they showed where nothing is typed in their row, or refused', () => {
    const alone = (...shown: CellValue[]) =>
      sheetOf(parts, { below: [['x'], ...shown.map((value) => [null, null, value])] });
    const [own] = listOf(alone(null, 7), [{ row: first, column: 2, formula: '=TONROW.HOLEMIN(1)' }]);
    const last = { ...(own as ListedPlace), value: 7, anchor: { row: '', sizes: '' } };
    const at = (...shown: CellValue[]) => findPlaces([last], [alone(...shown)])[0]?.row;
    const row = at(7) ?? NaN;
    expect([at(null, 7), at(null, null, 7)]).toEqual([row + 1, row + 2]);
    expect(() => at(null, 8)).toThrow('is not found: it held nothing');
    expect(() => at(8, null, 7, 7)).toThrow('is not found: it held nothing');
  });

  it('are refused where one is left of two rows that held the same', () => {
    const two = sheetOf(parts, { below: [['x'], ['Bar', 1, 7], ['Bar', 1, 8]] });
    const both = listOf(
      two,
      [1, 2].map((down) => ({ row: top + parts.length + down, column: 2, formula: '=TONROW.HOLEMIN(1)' })),
    );
    expect(findPlaces(both, [two])).toHaveLength(2);
    const one = sheetOf(parts, { below: [['x'], ['Bar', 1, 8]] });
    expect(() => findPlaces(both, [one])).toThrow('is not found: it held "Bar 1"');
  });

  it('are refused where a formula names other cells by address and rows moved', () => {
    const far = listOf(sheet, [{ row: first, column: 2, formula: '=TONROW.SHOP(A3:C5)' }]);
    expect(findPlaces(far, [sheet])[0]?.formula).toBe('=TONROW.SHOP(A3:C5)');
    const grown = sheetOf([...parts, ['A4', 'RB 1', 1, '', '']], { below });
    expect(() => findPlaces(far, [grown])).toThrow('names cells by address, and rows or columns');
  });
});

describe('whatever happens to the rows of a table', () => {
  const mark = fc.constantFrom('', 'A1', 'A2', 'A3', 'A4', 'A5', 'B1', 'B2');
  const part = fc.tuple(
    mark,
    fc.constantFrom('FB 3/8x4', 'RB 1', ''),
    fc.nat(3),
    fc.constant('OK'),
    fc.constant(0.5),
  );
  const edit = fc.record({
    kept: fc.array(fc.nat(20), { maxLength: 12 }),
    added: fc.array(part, { maxLength: 3 }),
    retyped: fc.option(fc.tuple(fc.nat(20), fc.nat(3)), { nil: undefined }),
  });

  it('no formula goes to a row that holds another part, or two to one cell', () => {
    fc.assert(
      fc.property(
        fc.array(part, { minLength: 1, maxLength: 8 }),
        edit,
        (before, { kept, added, retyped }) => {
          const chosen = [...new Set(kept.map((at) => at % before.length))];
          const rows: CellValue[][] = [
            ...chosen.map((at) => [...(before[at] as Part)]),
            ...added.map((row) => [...row]),
          ];
          if (rows.length === 0) return;
          if (retyped) (rows[retyped[0] % rows.length] as CellValue[])[1] = `FB 1x${retyped[1]}`;
          const listed = listOf(sheetOf(before), inTable(before));
          const now = sheetOf(rows);
          let places;
          try {
            places = findPlaces(listed, [now]);
          } catch {
            return;
          }
          const cells = places.flatMap((place) => (place ? [`${place.row},${place.column}`] : []));
          expect(new Set(cells).size).toBe(cells.length);
          places.forEach((place, at) => {
            const was = before[(listed[at]?.row ?? 0) - top] as Part;
            if (place) expect(now.value(place.row, 0) ?? '').toBe(was[0]);
          });
        },
      ),
      { numRuns: 2000 },
    );
  });
});
