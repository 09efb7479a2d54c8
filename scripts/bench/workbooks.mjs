// The workbooks that are measured: six numbers a row by our functions and by native formulas, a parts list checked row by
// row, and one checked as a whole. No row is like another.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../ensure.mjs';
import { cell, SharedStrings, workbook } from './package.mjs';
import { headings, parts } from './parts.mjs';
import { inches, randomSource } from './random.mjs';

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const row = (number, contents, strings) =>
  `<row r="${number}">${contents.map((content, at) => cell(`${letters[at]}${number}`, content, strings)).join('')}</row>`;

/** The columns hole, thickness, width, bolt, length; then the six formulas. */
const ours = (row) => [
  `_xldudf_TONROW_PUNCHFORCE(A${row},B${row},"A36")`,
  `_xldudf_TONROW_SHEARFORCE("FB "&B${row}&"x"&C${row},"A36","in",4)`,
  `_xldudf_TONROW_HOLEMIN(B${row},"A36")`,
  `_xldudf_TONROW_DIECLEARANCE(B${row},"A36")`,
  `_xldudf_TONROW_EDGEMIN(D${row},"in","rolled")`,
  `_xldudf_TONROW_SECTIONMASS("FB "&B${row}&"x"&C${row},E${row})`,
];
const engaged = (row) => `B${row}/TAN(RADIANS(4))`;
const native = (row) => [
  `PI()*A${row}*B${row}*60/2`,
  `IF(C${row}>=${engaged(row)},60*B${row}^2/(2*TAN(RADIANS(4))),60*C${row}*(B${row}-C${row}*TAN(RADIANS(4))/2))/2`,
  `MAX(B${row},4*60*B${row}/240)`,
  `IF(B${row}<=0.125,1/64,IF(B${row}<=0.5,1/32,1/16))`,
  `IF(D${row}<=0.5,0.75,IF(D${row}<=0.625,0.875,IF(D${row}<=0.75,1,IF(D${row}<=0.875,1.125,1.25))))`,
  `B${row}*C${row}*E${row}*(7850*0.0254^3/0.45359237)`,
];

/** Rows of five inputs and six formulas; inputs as numbers, or as the texts a shop types. */
function sixNumbers(rows, formulas, asText) {
  const strings = new SharedStrings();
  const { whole, pick } = randomSource(rows);
  const shown = (parts, of) => (asText ? inches(parts, of) : parts / of);
  const lines = Array.from({ length: rows }, (_, at) => {
    const inputs = [
      shown(whole(20, 96), 64),
      shown(whole(8, 64), 64),
      shown(whole(16, 192), 16),
      shown(pick([4, 5, 6, 7, 8]), 8),
      shown(whole(64, 3840), 16),
    ];
    const contents = [...inputs, ...formulas(at + 1).map((formula) => ({ formula }))];
    return row(at + 1, contents, strings);
  });
  return workbook([{ name: 'Parts', rows: lines }], strings);
}

export const oursWorkbook = (rows) => sixNumbers(rows, ours, false);
export const textWorkbook = (rows) => sixNumbers(rows, ours, true);
export const nativeWorkbook = (rows) => sixNumbers(rows, native, false);

/** The cells of a table of the example's shop. */
const example = (name) =>
  readFileSync(path.join(root, 'examples', 'quote', `${name}.tsv`), 'utf8')
    .trimEnd()
    .split('\n')
    .map((line) => line.split('\t'));

/** The sheet of the shop: presses and tools of the example, and the stamp in its first cell. */
function shopSheet(strings) {
  const tables = [example('presses'), example('tools')];
  const [presses, tools] = tables.map((table, at) => {
    const top = at === 0 ? 3 : 5 + tables[0].length;
    const right = letters[Math.max(...table.map((cells) => cells.length)) - 1];
    return { table, top, range: `A${top}:${right}${top + table.length - 1}` };
  });
  const stamp = { formula: `_xldudf_TONROW_SHOP(${presses.range},${tools.range})` };
  const rows = [
    row(1, [stamp], strings),
    ...[presses, tools].flatMap(({ table, top }) =>
      table.map((cells, at) => row(top + at, cells.map(typed), strings)),
    ),
  ];
  return { name: 'Shop', rows };
}

const typed = (text) => (/^\d+(?:\.\d+)?$/.test(text) ? Number(text) : text);

/** A parts list on a sheet of its own with formulas in each row, and in the first one. */
function checkedList(rows, { inRow = () => [], inFirst = () => [], seed }) {
  const strings = new SharedStrings();
  const first = row(1, [...headings, ...inFirst(rows + 1)], strings);
  const lines = parts(rows, seed).map((cells, at) => row(at + 2, [...cells, ...inRow(at + 2)], strings));
  const sheets = [{ name: 'Parts', rows: [first, ...lines] }, shopSheet(strings)];
  return workbook(sheets, strings, { ShopStamp: 'Shop!$A$1' });
}

const last = letters[headings.length - 1];
const items = ['verdict', 'use', 'note', 'force'];

export const rowCheckWorkbook = (rows, seed) =>
  checkedList(rows, {
    seed,
    inRow: (row) =>
      items.map((item) => ({
        formula: `_xldudf_TONROW_ROWCHECK($A$1:$${last}$1,A${row}:${last}${row},ShopStamp,"${item}")`,
      })),
  });

export const listCheckWorkbook = (rows) =>
  checkedList(rows, {
    inFirst: (end) => [
      { formula: `_xldudf_TONROW_LISTCHECK(A1:${last}${end},ShopStamp,"verdict, use, note")`, array: true },
    ],
  });
