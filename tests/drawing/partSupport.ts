import type { CellValue } from '../../src/core/quantity/cellValue.js';
import { checkRow } from '../../src/core/row/checkRow.js';
import { readHeadings } from '../../src/core/row/headings/readHeadings.js';
import { lengthAsTyped } from '../../src/core/row/lengthAsTyped.js';
import { readRow } from '../../src/core/row/readRow.js';
import type { Drawing } from '../../src/drawing/drawing.js';
import { partDrawing } from '../../src/drawing/part/partDrawing.js';
import type { HoleSetting } from '../../src/drawing/part/settingMarks.js';
import { settingTable, shopWith } from '../support/sampleShop.js';
import { corners, drawn, pathsOf } from './support.js';

export type Row = Record<string, CellValue>;

/** The drawing of a row given by its headings; a plate of 4 × 12 in unless the row says otherwise. */
export function partOf(
  row: Row,
  more: { width?: number; settings?: Row; press?: Row; drawnSettings?: HoleSetting[] } = {},
): Drawing {
  const whole: Row = { Mark: 'P1', Section: 'PL1/4X4', Grade: 'A36', Length: 12, ...row };
  const { settings = {}, press = {}, drawnSettings = [], ...input } = more;
  const shop = shopWith(press, { settings: settingTable(settings) });
  const [cells, headings] = [Object.values(whole), readHeadings(Object.keys(whole))];
  const result = checkRow(cells, headings, shop);
  if (result.blank) throw new Error('the row is blank');
  const job = readRow(cells, headings, shop);
  const length = lengthAsTyped(cells, headings, job.lengthMm, 'in');
  const asked = {
    job,
    deciding: result.deciding,
    unit: 'in',
    shop,
    length,
    settings: drawnSettings,
  } as const;
  return drawn(partDrawing({ ...asked, ...input }));
}

/** The corners of the outline of an unbroken part, in inches from its left end and from its bottom edge or heel. */
export function outlineInches(drawing: Drawing, lengthInch: number): [number, number][] {
  const [outline = ''] = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'outline');
  const inches = inchesOf(drawing, lengthInch);
  return corners(outline).map(inches);
}

/** A place of the drawing of an unbroken part in inches from its left end and from its bottom edge or heel. */
export function inchesOf(drawing: Drawing, lengthInch: number) {
  const places = pathsOf(
    drawing,
    (shape) => shape.kind === 'line' && (shape.line === 'outline' || shape.line === 'hidden'),
  ).flatMap(corners);
  const [left, bottom] = [Math.min(...places.map(([x]) => x)), Math.max(...places.map(([, y]) => y))];
  const pixelPerInch = (Math.max(...places.map(([x]) => x)) - left) / lengthInch;
  return ([x, y]: readonly [number, number]): [number, number] => [
    (x - left) / pixelPerInch,
    (bottom - y) / pixelPerInch,
  ];
}

/** Corners in a fixed order, to a hundredth of an inch. */
export const sortedInches = (places: readonly (readonly [number, number])[]) =>
  places
    .map(([x, y]): [number, number] => [Number(x.toFixed(2)) + 0, Number(y.toFixed(2)) + 0])
    .sort(([a, b], [c, d]) => a - c || b - d);

/** The heavy line of the distance that decides, from end to end in inches. */
export function decidingInches(drawing: Drawing, lengthInch: number): [number, number][] {
  const heavy = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'heavy').at(-1) ?? '';
  return corners(heavy).map(inchesOf(drawing, lengthInch));
}

export const boxed = (drawing: Drawing) =>
  drawing.shapes.flatMap((shape) => (shape.kind === 'text' && shape.behind === 'box' ? shape.text : []));

/** The last cell of the rows of the table that are about some work. */
export function drawnAs(drawing: Drawing, work: string): string[] {
  return drawing.table.rows.filter(([name]) => name === work).map((cells) => cells.at(-1) ?? '');
}

export const linesOf = (drawing: Drawing, wanted: string) =>
  pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === wanted);
