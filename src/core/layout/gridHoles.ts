import { refuse } from '../inputError.js';
import type { Point } from '../part/point.js';
import type { LengthUnit } from '../quantity/units.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { evenPlacesMm } from './evenPlaces.js';
import { holeCountStep, layoutSource } from './holeCountStep.js';

export interface HoleGrid {
  lengthMm: number;
  widthMm: number;
  columns: number;
  rows: number;
  fromEndMm: number;
  fromSideMm: number;
  /** Of sentences. */
  unit: LengthUnit;
}

/** More are a slip of the keyboard, and more than a sheet should spill. */
const mostHoles = 10_000;

/**
 * The centers of holes in columns and rows, evenly spaced over a plate.
 *
 * Formula: pitch along = (L − 2 · e) / (columns − 1); pitch across = (W − 2 · s) / (rows − 1)
 * @param grid length and width of the plate, the distances of the outer holes from ends and sides, in mm; how many
 *   columns and rows; `unit` of sentences
 * @param working collects the steps when given
 * @returns centers in mm from the left end and the bottom edge, row by row from the bottom, each from the left
 * Valid for up to 10,000 holes; one column or row lies in the middle. Throws `invalid` where a distance from an end or
 * side leaves nothing between the outer holes.
 * @example gridHoles({ lengthMm: 300, widthMm: 200, columns: 3, rows: 2, fromEndMm: 50, fromSideMm: 50, unit: 'mm' })[1] // { x: 150, y: 50 }
 * Source: common practice, no source.
 */
export function gridHoles(grid: HoleGrid, working?: Working): Point[] {
  const { lengthMm, widthMm, columns, rows, fromEndMm, fromSideMm, unit } = grid;
  if (columns * rows > mostHoles) {
    const problem = `${columns} columns of ${rows} are ${columns * rows} holes.`;
    return refuse('Columns', String(columns), problem, `Give at most ${mostHoles} holes in all.`);
  }
  const along = { over: 'Length', overMm: lengthMm, from: 'From end', fromMm: fromEndMm, count: columns };
  const across = { over: 'Width', overMm: widthMm, from: 'From side', fromMm: fromSideMm, count: rows };
  const xs = evenPlacesMm({ ...along, unit });
  const ys = evenPlacesMm({ ...across, unit });
  pitchStep('Pitch along', ['L', 'e', 'columns'], [lengthMm, fromEndMm, columns], xs, working);
  pitchStep('Pitch across', ['W', 's', 'rows'], [widthMm, fromSideMm, rows], ys, working);
  const holes = ys.flatMap((y) => xs.map((x): Point => ({ x, y })));
  holeCountStep(holes.length, working);
  return holes;
}

function pitchStep(
  title: string,
  [over, from, count]: readonly [string, string, string],
  [overMm, fromMm, number]: readonly [number, number, number],
  places: readonly number[],
  working?: Working,
): void {
  const [first, second] = places;
  if (first === undefined || second === undefined) return;
  working?.step({
    title,
    formula: `p = (${over} − 2 · ${from}) / (${count} − 1)`,
    values: [
      lengthValue(over, over === 'L' ? 'length' : 'width', overMm),
      lengthValue(from, 'from the end or side to the first hole', fromMm),
      { symbol: count, meaning: `${count} of holes`, kind: 'count', value: number },
    ],
    result: lengthValue('p', 'pitch, center to center', second - first),
    source: layoutSource,
  });
}
