import { expect, it } from 'vitest';
import { withoutItems } from '../../../src/taskpane/handOff/withoutItems.js';

const cell = (sheet: string, column: number, rows = 1, columns = 1) => ({
  sheet,
  row: 2,
  column,
  rows,
  columns,
});

it('what a copy leaves out becomes blank: of a row, of a list, and of cells that look into the list', () => {
  const formulas = [
    {
      area: cell('Quote', 0),
      formula: '=TONROW.ROWCHECK(A1:D1,A3:D3,ShopStamp,"verdict")',
      values: [['OK']],
    },
    {
      area: cell('Quote', 1),
      formula: '=TONROW.ROWCHECK(A1:D1,A3:D3,ShopStamp,"note")',
      values: [['at Bay A']],
    },
    {
      area: cell('List check', 0, 2, 2),
      formula: '=TONROW.LISTCHECK(Parts[#All],ShopStamp,"verdict, note")',
      values: [
        ['Verdict', 'Note'],
        ['OK', 'at Bay A'],
      ],
    },
    {
      area: cell('Quote', 2),
      formula: "=INDEX('List check'!$B:$B,ROW()-ROW(Parts[[#Headers],[Mark]])+3)",
      values: [['at Bay A']],
    },
    { area: cell('Quote', 3), formula: '=SUM(A1:A3)', values: [[12]] },
  ];
  expect(withoutItems(formulas, new Set(['note'])).map(({ values }) => values)).toEqual([
    [['OK']],
    [[null]],
    [
      ['Verdict', null],
      ['OK', null],
    ],
    [[null]],
    [[12]],
  ]);
  expect(withoutItems(formulas, new Set())).toEqual(formulas);
});
