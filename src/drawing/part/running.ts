import { formatSizes } from '../../core/quantity/formatLength.js';
import { sizeAsTyped } from '../../core/quantity/sizeAsTyped.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Shape } from '../drawing.js';
import { polyline, segment } from '../path.js';
import { halfSize } from './holeShapes.js';
import type { PartPlan } from './partPlan.js';
import { rightOf, type View, xOf, yOf } from './partView.js';
import { spread } from '../spread.js';

/** A distance from the stop or the fence, and where its line starts. */
export interface Running {
  mm: number;
  text: string;
  /** Where it lies in the drawing, along or across. */
  at: number;
  /** The pixel across or along at which its line starts. */
  start: number;
}

const sameMm = 0.01;
const lineHeight = 15;
/** Sizes are figures, which are narrower than the widest letters. */
const figureWidth = 6.9;

/** Holes whose place the row gives, each with the cells that give it: what is read is no dimension. */
function givenHoles({ groups }: PartPlan) {
  return groups.flatMap(({ group: { typed = {} }, holes, isRead }) =>
    holes.filter((hole) => !isRead(hole)).map((hole) => ({ hole, typed })),
  );
}

function once(all: readonly Running[], nearer: (a: number, b: number) => number): Running[] {
  const kept: Running[] = [];
  for (const each of [...all].sort((a, b) => a.mm - b.mm)) {
    const last = kept.at(-1);
    if (last && each.mm - last.mm < sameMm) last.start = nearer(last.start, each.start);
    else kept.push({ ...each });
  }
  return kept;
}

/** Where holes, notches and bends lie from the stop, and the length as it is typed. */
export function alongTheStop(plan: PartPlan, view: View, unit: LengthUnit, length: string): Running[] {
  const size = (mm: number) => formatSizes([mm], unit);
  const bottom = yOf(view, 0);
  const holes = givenHoles(plan).flatMap(({ hole, typed }): Running[] => {
    const at = xOf(view, hole.center.x);
    if (at === undefined) return [];
    const start = yOf(view, hole.center.y) + halfSize(hole, view.pixelPerMm).y;
    const mm = hole.center.x;
    return [{ mm, text: sizeAsTyped(mm, [typed.end, typed.pitch, typed.holesAt], unit), at, start }];
  });
  const bends = plan.bends.flatMap(({ runs, from }): Running[] => {
    const at = runs === 'across' ? xOf(view, from.x) : undefined;
    return at === undefined ? [] : [{ mm: from.x, text: `${size(from.x)} bend`, at, start: bottom }];
  });
  const notches = plan.works.flatMap(({ name: [name], marks }) =>
    name === 'notch'
      ? marks.flatMap(({ x, y }): Running[] => {
          const at = xOf(view, x);
          const isInside = x > sameMm && x < plan.drawnMm - sameMm;
          return at === undefined || !isInside
            ? []
            : [{ mm: x, text: `${size(x)} notch`, at, start: yOf(view, y) }];
        })
      : [],
  );
  const all = once([...holes, ...bends, ...notches], Math.min);
  if (plan.lengthMm === undefined) return all;
  return [...all, { mm: plan.lengthMm, text: `${length} long`, at: rightOf(view), start: bottom }];
}

/** Where holes and bends along the part lie from the fence, and the width. */
export function acrossTheFence(plan: PartPlan, view: View, unit: LengthUnit): Running[] {
  const { face, fence, bends } = plan;
  const size = (mm: number) => formatSizes([mm], unit);
  const from = (y: number) => (fence.side === 'throat' ? face.widthMm - y : y);
  const holes = givenHoles(plan).flatMap(({ hole, typed }): Running[] => {
    const { x, y } = hole.center;
    const start = xOf(view, x);
    if (start === undefined) return [];
    const edge = start + halfSize(hole, view.pixelPerMm).x;
    const text = sizeAsTyped(from(y), [typed.edge, typed.gage, typed.holesAt], unit);
    return [{ mm: from(y), text, at: yOf(view, y), start: edge }];
  });
  const along = bends.flatMap(({ runs, atMm }): Running[] =>
    runs === 'along'
      ? [{ mm: from(atMm), text: `${size(from(atMm))} bend`, at: yOf(view, atMm), start: rightOf(view) }]
      : [],
  );
  const far = fence.side === 'throat' ? 0 : face.widthMm;
  const whole = {
    mm: face.widthMm,
    text: `${size(face.widthMm)} wide`,
    at: yOf(view, far),
    start: rightOf(view),
  };
  return [...once([...holes, ...along], Math.min), whole];
}

/** Running dimensions below the part, and the room they take. */
export interface AlongShapes {
  shapes: Shape[];
  height: number;
}

interface AlongRoom {
  level: number;
  left: number;
  right: number;
  /** Labels that have no room beside each other may stand upright. */
  turn: boolean;
}

/** From where lines turn to their labels, to the top of these. */
const toLabels = 9;
const flatHeight = 30;
const turnedRoom = 14;

/** A row of running dimensions below the part; undefined where they have no room beside each other. */
export function alongShapes(
  running: readonly Running[],
  { level, left, right, turn }: AlongRoom,
): AlongShapes | undefined {
  const width = (text: string) => text.length * figureWidth + 7;
  const flat = spread(
    running.map(({ at, text }) => ({ at, room: width(text) })),
    left,
    right,
  );
  const places =
    flat ??
    (turn
      ? spread(
          running.map(({ at }) => ({ at, room: turnedRoom })),
          left,
          right,
        )
      : undefined);
  if (!places) return undefined;
  const shapes = places.flatMap((x, at): Shape[] => {
    const each = running[at] as Running;
    return [leader(each, x, level), flat ? flatLabel(each.text, x, level) : turnedLabel(each.text, x, level)];
  });
  const longest = Math.max(0, ...running.map(({ text }) => width(text)));
  return { shapes, height: flat ? flatHeight : toLabels + longest + 4 };
}

function leader({ at, start }: Running, x: number, level: number): Shape {
  const path = polyline([
    [at, start],
    [at, level],
    [x, level + toLabels],
  ]);
  return { kind: 'line', path, line: 'thin' };
}

function flatLabel(text: string, x: number, level: number): Shape {
  return { kind: 'text', x, y: level + 22, text, anchor: 'middle', behind: 'paper' };
}

function turnedLabel(text: string, x: number, level: number): Shape {
  return { kind: 'text', x: x + 4, y: level + toLabels + 3, text, anchor: 'end', turned: true };
}

/** A column of running dimensions at the right of the part; undefined where they have no room below each other. */
export function acrossShapes(
  running: readonly Running[],
  { level, top, bottom }: { level: number; top: number; bottom: number },
): Shape[] | undefined {
  const places = spread(
    running.map(({ at }) => ({ at, room: lineHeight })),
    top,
    bottom,
  );
  return places?.flatMap((y, at): Shape[] => {
    const { at: from, start, text } = running[at] as Running;
    return [
      { kind: 'line', path: segment(start, from, level, from), line: 'thin' },
      { kind: 'line', path: segment(level, from, level + 9, y), line: 'thin' },
      { kind: 'text', x: level + 12, y: y + 4, text, behind: 'paper' },
    ];
  });
}
