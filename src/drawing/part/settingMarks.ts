import type { Turn } from '../../core/setup/way.js';
import type { Shape } from '../drawing.js';
import { ellipse, polygon, polyline, segment } from '../path.js';
import { around, type Box, overlaps } from './box.js';
import { halfSize } from './holeShapes.js';
import type { PartPlan } from './partPlan.js';
import { type View, xOf, yOf } from './partView.js';

/** The gauge setting that makes a hole, by the number of its group in the row and its own number in the group. */
export interface HoleSetting {
  number: number;
  group: number;
  index: number;
  turn: Turn;
}

/** A hole with the number of the gauge setting that makes it, and how the part is turned there. */
export interface MarkedHole {
  number: number;
  turn: Turn;
  x: number;
  y: number;
  /** How far the hole reaches. */
  half: number;
}

/** The holes of the face that is drawn, as far as they are shown, with their settings. */
export function markedHoles(
  settings: readonly HoleSetting[],
  { groups }: Pick<PartPlan, 'groups'>,
  view: View,
): MarkedHole[] {
  const holes = groups.flatMap((group) => group.holes);
  return settings.flatMap(({ number, turn, group, index }): MarkedHole[] => {
    const hole = holes.find((each) => each.group === group && each.index === index);
    const x = hole && xOf(view, hole.center.x);
    if (!hole || x === undefined) return [];
    const { x: halfX, y: halfY } = halfSize(hole, view.pixelPerMm);
    return [{ number, turn, x, y: yOf(view, hole.center.y), half: Math.max(halfX, halfY) }];
  });
}

export const markRadius = 9;
const turnedRadius = 13;
const step = 3;
const farthest = 90;
const directions = 16;

/** Numbers in circles beside their holes, over nothing that stands there; those without room are left out and counted. */
export function settingMarks(
  holes: readonly MarkedHole[],
  taken: readonly Box[],
  frame: Box,
): { shapes: Shape[]; left: number } {
  const boxes = [...taken, ...holes.map(({ x, y, half }) => around(x, y, half + 1))];
  const shapes: Shape[] = [];
  let left = 0;
  for (const hole of holes) {
    const radius = (hole.turn === 'as it lies' ? markRadius : turnedRadius) + 2;
    const spot = freeSpot(hole, radius, boxes, frame);
    if (!spot) {
      left += 1;
      continue;
    }
    boxes.push(around(spot.x, spot.y, radius));
    shapes.push(...markShapes(hole, spot));
  }
  return { shapes, left };
}

/** The nearest place around a hole where a circle meets nothing. */
function freeSpot(
  { x, y, half }: MarkedHole,
  radius: number,
  boxes: readonly Box[],
  frame: Box,
): { x: number; y: number } | undefined {
  for (let away = half + radius + 1; away <= farthest; away += step) {
    for (let turn = 0; turn < directions; turn += 1) {
      const angle = -Math.PI / 4 + (2 * Math.PI * turn) / directions;
      const spot = { x: x + away * Math.cos(angle), y: y + away * Math.sin(angle) };
      const box = around(spot.x, spot.y, radius);
      const isInside =
        box.left >= frame.left &&
        box.right <= frame.right &&
        box.top >= frame.top &&
        box.bottom <= frame.bottom;
      if (isInside && !boxes.some((each) => overlaps(each, box))) return spot;
    }
  }
  return undefined;
}

function markShapes(hole: MarkedHole, { x, y }: { x: number; y: number }): Shape[] {
  const length = Math.hypot(hole.x - x, hole.y - y);
  const [alongX, alongY] = [(hole.x - x) / length, (hole.y - y) / length];
  return [
    {
      kind: 'line',
      path: segment(
        x + alongX * markRadius,
        y + alongY * markRadius,
        hole.x - alongX * hole.half,
        hole.y - alongY * hole.half,
      ),
      line: 'thin',
    },
    { kind: 'area', path: ellipse(x, y, markRadius), fill: 'paper', line: 'thin' },
    { kind: 'text', x, y: y + 4.5, text: String(hole.number), anchor: 'middle', strong: true },
    ...turnShapes(hole.turn, x, y),
  ];
}

const arcSteps = 12;

/** An arrow around the number: three quarters for a half turn, a half above or beside it where the part is turned over. */
function turnShapes(turn: Turn, x: number, y: number): Shape[] {
  if (turn === 'as it lies') return [];
  const [from, to] = {
    'half turn': [-0.5, 1],
    'over sideways': [0.75, 1.75],
    'over endways': [1.25, 2.25],
  }[turn].map((share) => share * Math.PI) as [number, number];
  const at = (angle: number, radius = turnedRadius): [number, number] => [
    x + radius * Math.cos(angle),
    y + radius * Math.sin(angle),
  ];
  const points = Array.from({ length: arcSteps + 1 }, (_, part) =>
    at(from + ((to - from) * part) / arcSteps),
  );
  return [
    { kind: 'line', path: polyline(points), line: 'thin' },
    {
      kind: 'area',
      path: polygon([at(to + 0.35), at(to - 0.1, turnedRadius + 3.5), at(to - 0.1, turnedRadius - 3.5)]),
      fill: 'solid',
    },
  ];
}
