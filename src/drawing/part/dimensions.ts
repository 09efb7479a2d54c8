import type { Shape } from '../drawing.js';
import { polygon, segment } from '../path.js';

const head = 8;
const headHalf = 4;
/** From the line a text stands on to the edges of its box. */
const aboveText = -14;
const belowText = 5;

export interface DimensionText {
  text: string;
  /** The distance that decides: heavy, its text in a box. */
  governs: boolean;
  x: number;
  y: number;
}

/** A dimension along the part, below it: extension lines from where they start, a double arrow, the text beneath. */
export function alongDimension(
  from: { x: number; start: number },
  to: { x: number; start: number },
  level: number,
  text: DimensionText,
): Shape[] {
  return [
    { kind: 'line', path: segment(from.x, from.start, from.x, level + 5), line: 'thin' },
    { kind: 'line', path: segment(to.x, to.start, to.x, level + 5), line: 'thin' },
    ...doubleArrow([from.x, level], [to.x, level], text.governs),
    textShape(text),
  ];
}

/** A dimension across the part: extension lines from the holes, a double arrow, and a line to its text outside. */
export function acrossDimension(
  from: { y: number; start?: number },
  to: { y: number; start?: number },
  level: number,
  text: DimensionText,
): Shape[] {
  const isAbove = text.y < from.y;
  return [
    ...[from, to].flatMap(({ y, start }): Shape[] =>
      start === undefined
        ? []
        : [{ kind: 'line', path: segment(start, y, level + Math.sign(level - start) * 5, y), line: 'thin' }],
    ),
    {
      kind: 'line',
      path: segment(level, isAbove ? from.y : to.y, text.x, edgeOfText(text, isAbove)),
      line: 'thin',
    },
    ...doubleArrow([level, from.y], [level, to.y], text.governs),
    textShape(text),
  ];
}

/** A dimension aslant: a double arrow from place to place, and a line from its middle to its text outside. */
export function aslantDimension(from: Pixel, to: Pixel, text: DimensionText): Shape[] {
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return [
    { kind: 'line', path: segment(x, y, text.x, edgeOfText(text, text.y < y)), line: 'thin' },
    ...doubleArrow(from, to, text.governs),
    textShape(text),
  ];
}

function edgeOfText({ y }: DimensionText, isAbove: boolean): number {
  return y + (isAbove ? belowText : aboveText);
}

function textShape({ text, governs, x, y }: DimensionText): Shape {
  return { kind: 'text', x, y, text, anchor: 'middle', strong: governs, behind: governs ? 'box' : 'paper' };
}

type Pixel = readonly [number, number];

function doubleArrow(from: Pixel, to: Pixel, heavy: boolean): Shape[] {
  return [
    { kind: 'line', path: segment(...from, ...to), line: heavy ? 'heavy' : 'thin' },
    ...[arrowHead(from, to), arrowHead(to, from)].map(
      (path): Shape => ({ kind: 'area', path, fill: 'solid' }),
    ),
  ];
}

/** The tip of an arrow at one place, from another; shorter where they are near each other. */
function arrowHead([x, y]: Pixel, [fromX, fromY]: Pixel): string {
  const length = Math.hypot(x - fromX, y - fromY);
  if (length === 0) return polygon([[x, y]]);
  const [alongX, alongY] = [(fromX - x) / length, (fromY - y) / length];
  const back = Math.min(head, length / 2);
  const wing = (side: number): [number, number] => [
    x + alongX * back - alongY * side * headHalf,
    y + alongY * back + alongX * side * headHalf,
  ];
  return polygon([[x, y], wing(-1), wing(1)]);
}
