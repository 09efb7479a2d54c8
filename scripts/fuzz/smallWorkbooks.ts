import { buildWorkbook, formula, spilled, spilling } from '../../tests/xlsx/support/buildWorkbook.js';

/** Small workbooks with what packages hold: tables, names, arrays, spills, shared formulas, several sheets. */
export function smallWorkbooks(): Uint8Array[] {
  const table = { name: 'Parts', ref: 'A1:C4', columns: ['Mark', 'Qty', 'Force'] };
  const force = (row: number) => formula(`_xldudf_TONROW_PUNCHFORCE("13/16",B${row}/8,"A36")`, 1);
  return [
    buildWorkbook(
      [
        {
          name: 'Quote',
          rows: [
            ['Mark', 'Qty', 'Force'],
            ['A', 2, force(2)],
            ['B', 3, force(3)],
            [null, formula('SUM(B2:B3)', 5), formula('SUBTOTAL(109,Parts[Force])', 2)],
            [spilling('_xldudf_TONROW_HOLEMIN({1,2;3,4}/8,"A36")', 'A5:B6', 1), spilled(2)],
            [spilled(3), spilled(4), formula('IF(Other!A1>Limit,\'x y\'!B1&"!","")', '')],
          ],
          tables: [table],
        },
        { name: 'Other', rows: [[1, formula('A1+Quote!B2', 3)]], state: 'hidden' },
        { name: 'x y', rows: [['text', formula('COUNTIF(A:A,"t*")', 1)]] },
      ],
      { names: { Limit: 'Other!$A$1', Again: 'Limit*2' } },
    ),
    buildWorkbook([
      {
        name: 'Quote',
        sheetData:
          '<row r="1"><c r="A1"><f t="shared" ref="A1:A3" si="0">_xldudf_TONROW_HOLEMIN(B1/8,"A36")</f><v>0</v></c><c r="B1"><v>1</v></c></row>' +
          '<row r="2"><c r="A2"><f t="shared" si="0"/><v>0</v></c><c r="B2"><v>2</v></c></row>' +
          '<row r="3"><c r="A3"><f t="shared" si="0"/></c><c r="B3" t="b"><v>1</v></c><c r="C3"><f t="array" ref="C3:C4">A1:A2+1</f><v>1</v></c></row>' +
          '<row r="4"><c r="C4"><v>1</v></c></row>',
        after: '<mergeCells count="1"><mergeCell ref="F1:G2"/></mergeCells>',
      },
    ]),
  ];
}
