import { findGrade } from '../../src/core/material/findGrade.js';
import type { CellValue } from '../../src/core/quantity/cellValue.js';
import { checkRow } from '../../src/core/row/checkRow.js';
import { readHeadings } from '../../src/core/row/headings/readHeadings.js';
import { lengthAsTyped } from '../../src/core/row/lengthAsTyped.js';
import { readRow } from '../../src/core/row/readRow.js';
import type { Shop } from '../../src/core/shop/readShop.js';
import type { Drawing, Drawn, Shape } from '../../src/drawing/drawing.js';
import { partDrawing } from '../../src/drawing/part/partDrawing.js';

export const inch = 25.4;
export const grade = (name: string) => findGrade(name, 'Grade');

export function drawn(drawing: Drawn): Drawing {
  if ('problem' in drawing) throw new Error(`there is no drawing: ${drawing.problem}`);
  return drawing;
}

type TextShape = Extract<Shape, { kind: 'text' }>;

export function textAt(drawing: Drawing, text: string): TextShape {
  const found = drawing.shapes.find((shape) => shape.kind === 'text' && shape.text === text);
  if (found?.kind !== 'text') throw new Error(`the drawing has no text ${text}`);
  return found;
}

export function pathsOf(drawing: Drawing, wanted: (shape: Shape) => boolean): string[] {
  return drawing.shapes.flatMap((shape) => (shape.kind !== 'text' && wanted(shape) ? shape.path : []));
}

/** The corners of a path of M and L. */
export function corners(path: string): [number, number][] {
  return [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

/** Pixels to values of a linear scale, from two of its marks. */
export function linear(drawing: Drawing, low: [string, number], high: [string, number]) {
  const [from, to] = [textAt(drawing, low[0]).x, textAt(drawing, high[0]).x];
  return (x: number) => low[1] + ((x - from) / (to - from)) * (high[1] - low[1]);
}

export const headings = [
  'Mark',
  'Section',
  'Grade',
  'Length',
  'Hole',
  'Holes',
  'Bolt',
  'Edge',
  'End',
  'Pitch',
  'Gage',
  'Leg',
  'Press',
];

/** The drawing of a row of a list with these headings. */
export function drawingOfRow(
  cells: readonly CellValue[],
  shop: Shop,
  more: { width?: number } = {},
): Drawing {
  const read = readHeadings(headings);
  const result = checkRow(cells, read, shop);
  if (result.blank) throw new Error('the row is blank');
  const job = readRow(cells, read, shop);
  return drawn(
    partDrawing({
      job,
      length: lengthAsTyped(cells, read, job.lengthMm, shop.unit),
      deciding: result.deciding,
      unit: shop.unit,
      mark: String(cells[0]),
      ...more,
    }),
  );
}
