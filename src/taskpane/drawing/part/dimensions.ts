import type { Shape } from '../drawing.js';
import { polygon, segment } from '../path.js';

const head = 8;
const headHalf = 4;

interface Dimension {
  text: string;
  /** The distance that decides: heavy, its text in a box. */
  governs: boolean;
}

/** A dimension along the part, below it: extension lines, a double arrow, the text beneath. */
export function alongDimension(
  from: number,
  to: number,
  { start, level }: { start: number; level: number },
  { text, governs }: Dimension,
): Shape[] {
  const line = governs ? 'heavy' : 'thin';
  return [
    { kind: 'line', path: segment(from, start, from, level + 5), line: 'thin' },
    { kind: 'line', path: segment(to, start, to, level + 5), line: 'thin' },
    { kind: 'line', path: segment(from, level, to, level), line },
    ...arrows(
      from,
      to,
      (along) => [along, level],
      (along, across) => [along, level + across],
    ),
    {
      kind: 'text',
      x: (from + to) / 2,
      y: level + 22,
      text,
      anchor: 'middle',
      strong: governs,
      behind: governs ? 'box' : 'paper',
    },
  ];
}

const shortest = 26;

/** A dimension across the part: the text to its right, or above the fence where the arrow is too short for one beside it. */
export function acrossDimension(
  from: number,
  to: number,
  { start, level, atFence }: { start: number; level: number; atFence: boolean },
  { text, governs }: Dimension,
): Shape[] {
  const line = governs ? 'heavy' : 'thin';
  const above = atFence && Math.abs(to - from) < shortest;
  return [
    { kind: 'line', path: segment(start, to, level + 5, to), line: 'thin' },
    { kind: 'line', path: segment(level, from, level, to), line },
    ...arrows(
      from,
      to,
      (along) => [level, along],
      (along, across) => [level + across, along],
    ),
    {
      kind: 'text',
      x: above ? level : level + 10,
      y: above ? from - 15 : (from + to) / 2 + 4,
      text,
      anchor: above ? 'middle' : 'start',
      strong: governs,
      behind: governs ? 'box' : 'paper',
    },
  ];
}

type Place = [number, number];

function arrows(
  from: number,
  to: number,
  tip: (along: number) => Place,
  wing: (along: number, across: number) => Place,
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
