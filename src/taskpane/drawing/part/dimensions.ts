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
    { kind: 'line', path: segment(from.x, level, to.x, level), line: text.governs ? 'heavy' : 'thin' },
    ...arrows(
      from.x,
      to.x,
      (along) => [along, level],
      (along, across) => [along, level + across],
    ),
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
  const above = text.y < from.y;
  const near = above ? from.y : to.y;
  const label = text.y + (above ? belowText : aboveText);
  return [
    ...[from, to].flatMap(({ y, start }): Shape[] =>
      start === undefined
        ? []
        : [{ kind: 'line', path: segment(start, y, level + Math.sign(level - start) * 5, y), line: 'thin' }],
    ),
    { kind: 'line', path: segment(level, near, text.x, label), line: 'thin' },
    { kind: 'line', path: segment(level, from.y, level, to.y), line: text.governs ? 'heavy' : 'thin' },
    ...arrows(
      from.y,
      to.y,
      (along) => [level, along],
      (along, across) => [level + across, along],
    ),
    textShape(text),
  ];
}

function textShape({ text, governs, x, y }: DimensionText): Shape {
  return { kind: 'text', x, y, text, anchor: 'middle', strong: governs, behind: governs ? 'box' : 'paper' };
}

type Point = [number, number];

function arrows(
  from: number,
  to: number,
  tip: (along: number) => Point,
  wing: (along: number, across: number) => Point,
): Shape[] {
  const inward = Math.sign(to - from) * Math.min(head, Math.abs(to - from) / 2);
  return [
    { at: from, back: from + inward },
    { at: to, back: to - inward },
  ].map(({ at, back }) => ({
    kind: 'area',
    path: polygon([tip(at), wing(back, -headHalf), wing(back, headHalf)]),
    fill: 'solid',
  }));
}
