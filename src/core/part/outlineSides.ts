import type { BaseSides } from './outlineBase.js';
import type { Cut } from './outlineCuts.js';
import type { OutlineProblem } from './outlineInput.js';
import type { Edge } from './outline.js';
import type { Point } from './point.js';
import { toleranceMm } from './tolerance.js';

/** The cut of a side's first corner, if it has one, and the cuts within the side in their order. */
export interface CutSide {
  readonly corner?: Cut;
  readonly within: readonly Cut[];
}

/** The cuts of each side in their order along it, or the first that do not fit there. */
export function cutSides(sides: BaseSides, cuts: readonly Cut[]): CutSide[] | OutlineProblem {
  const found: CutSide[] = [];
  for (const [number, side] of sides.entries()) {
    const corners = cuts.filter((cut) => cut.atCorner && cut.side === number);
    const [corner, second] = corners;
    if (corner && second) return { problem: 'cuts meet', cause: corner.cause, otherCause: second.cause };
    const place = placeAlong(side);
    const within = cuts
      .filter((cut) => !cut.atCorner && cut.side === number)
      .sort((a, b) => place(first(a)) - place(first(b)));
    found.push(corner ? { corner, within } : { within });
  }
  for (const [number, side] of sides.entries()) {
    const problem = sideProblem(side, number % 2 === 1, found[number], found[(number + 1) % 4]?.corner);
    if (problem) return problem;
  }
  return found;
}

interface Span {
  cause: Cut['cause'];
  atCorner: boolean;
  from: number;
  to: number;
}

function sideProblem(
  side: Edge,
  isEnd: boolean,
  cutSide: CutSide | undefined,
  next: Cut | undefined,
): OutlineProblem | undefined {
  const place = placeAlong(side);
  const [start, end] = [place(side.from), place(side.to)];
  const spans = [...(cutSide?.within ?? [])].map(
    (cut): Span => spanOf(cut, place(first(cut)), place(last(cut))),
  );
  if (cutSide?.corner) spans.unshift(spanOf(cutSide.corner, start, place(last(cutSide.corner))));
  if (next) spans.push(spanOf(next, place(first(next)), end));
  return spans.map((span) => reachProblem(span, start, end, isEnd)).find(Boolean) ?? meetingProblem(spans);
}

function spanOf({ cause, atCorner }: Cut, from: number, to: number): Span {
  return { cause, atCorner, from, to };
}

function reachProblem(span: Span, start: number, end: number, isEnd: boolean): OutlineProblem | undefined {
  const { cause, atCorner, from, to } = span;
  const off = atCorner
    ? to - from >= end - start - toleranceMm
    : from <= start + toleranceMm || to >= end - toleranceMm;
  if (!off) return undefined;
  const problem = atCorner && isEnd ? 'cut too deep' : 'cut off the edge';
  const neededMm = atCorner ? to - from : Math.max(end, to) - Math.min(start, from);
  return { problem, cause, neededMm, availableMm: end - start };
}

function meetingProblem(spans: readonly Span[]): OutlineProblem | undefined {
  for (const [at, span] of spans.entries()) {
    const next = spans[at + 1];
    if (!next || span.to < next.from - toleranceMm) continue;
    const neededMm = span.to - span.from + next.to - next.from;
    const availableMm = Math.max(span.to, next.to) - Math.min(span.from, next.from);
    return { problem: 'cuts meet', cause: span.cause, otherCause: next.cause, neededMm, availableMm };
  }
  return undefined;
}

/** How far along a side a place on it lies: in x on a long edge, in y on an end, growing counter-clockwise. */
function placeAlong({ from, to }: Edge): (point: Point) => number {
  if (from.y === to.y) return from.x < to.x ? ({ x }) => x : ({ x }) => -x;
  return from.y < to.y ? ({ y }) => y : ({ y }) => -y;
}

function first({ path }: Cut): Point {
  return path[0] as Point;
}

function last({ path }: Cut): Point {
  return path.at(-1) as Point;
}
