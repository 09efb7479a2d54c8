import type { Fill, Line, Shape } from '../drawing.js';
import { polygon, rectangle, segment } from '../path.js';
import type { BarInput } from './barInput.js';
import { type BarFace, type FacedBar, facesOf } from './barFaces.js';

/** Narrower gaps are the cut itself. */
const leastGap = 1.5;
/** Cuts nearer to each other than this would be one black patch: only the first of them is drawn. */
const leastBetween = 3;
/** Cuts nearer than this are thin. */
const thinBelow = 10;
/** Trim and grip are seen, however short. */
const leastEnd = 3;

/** The strip of a bar: what is cut off, the cuts, what is left. */
export function barShapes({ bar, trimMm, gripMm, room }: BarInput, faced: FacedBar, top: number): Shape[] {
  const { start, trim, pieces, end } = faced;
  const strip = { top, bottom: top + room.height };
  const area = (from: BarFace, to: BarFace, fill: Fill, line?: Line): Shape => ({
    kind: 'area',
    path: between(from, to, strip),
    fill,
    ...(line ? { line } : {}),
  });
  const last = pieces.at(-1)?.right ?? trim;
  const grip: BarFace = { x: Math.min(faced.gripX, end.x - leastEnd), lean: 0 };
  const trimEnd: BarFace = { x: Math.max(trim.x, start.x + leastEnd), lean: 0 };
  const whole = rectangle(start.x, top, end.x - start.x, room.height);
  return [
    { kind: 'area', path: whole, fill: 'paper' },
    ...gaps(faced).map(([from, to]) => area(from, to, 'cross')),
    ...(bar.isKept ? [] : [area(last, end, 'cross')]),
    ...(gripMm > 0 ? [area(grip, end, 'paper'), area(grip, end, 'stipple', 'thin')] : []),
    ...cutLines(faced, strip),
    ...(trimMm > 0 ? [area(start, trimEnd, 'solid')] : []),
    { kind: 'line', path: whole, line: 'outline' },
    ...(bar.isKept ? [{ kind: 'line', path: between(last, end, strip), line: 'heavy' } satisfies Shape] : []),
  ];
}

/** Where two faces leave steel between them that is in no piece. */
function gaps({ trim, pieces }: FacedBar): [BarFace, BarFace][] {
  return pieces.flatMap(({ left }, at): [BarFace, BarFace][] => {
    const before = pieces[at - 1]?.right ?? trim;
    return widest(before, left) > leastGap ? [[before, left]] : [];
  });
}

function widest(from: BarFace, to: BarFace): number {
  return to.x - from.x + Math.abs(to.lean - from.lean) / 2;
}

/** Whether pieces are so narrow that not every cut is drawn. */
export function hasCrowdedCuts(faced: FacedBar): boolean {
  return narrowest(faced) < leastBetween;
}

function narrowest({ pieces }: FacedBar): number {
  return Math.min(...pieces.map(({ left, right }) => right.x - left.x));
}

function cutLines(faced: FacedBar, strip: Strip): Shape[] {
  const cuts = facesOf(faced).slice(2, -1);
  const line: Line = narrowest(faced) < thinBelow ? 'thin' : 'outline';
  const drawn: BarFace[] = [];
  for (const [at, cut] of cuts.entries()) {
    const before = drawn.at(-1);
    const isShared = before?.lean === cut.lean && cut.x - before.x < leastGap;
    const isCrowded = before?.lean === cut.lean && cut.x - before.x < leastBetween && at < cuts.length - 1;
    if (!isShared && !isCrowded) drawn.push(cut);
  }
  return drawn.map(({ x, lean }) => ({
    kind: 'line',
    path: segment(x + lean / 2, strip.top, x - lean / 2, strip.bottom),
    line,
  }));
}

interface Strip {
  top: number;
  bottom: number;
}

function between(from: BarFace, to: BarFace, { top, bottom }: Strip): string {
  return polygon([
    [from.x + from.lean / 2, top],
    [to.x + to.lean / 2, top],
    [to.x - to.lean / 2, bottom],
    [from.x - from.lean / 2, bottom],
  ]);
}
