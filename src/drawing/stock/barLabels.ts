import { spread } from '../spread.js';
import type { Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import { segment } from '../path.js';
import type { BarFace, FacedBar, FacedPiece } from './barFaces.js';
import type { BarRun } from './barRuns.js';

/** What is said of a stretch of the bar outside the strip. */
interface Outside {
  text: string;
  fromX: number;
  toX: number;
}

export interface BarLabels {
  /** In the strip, whose middle stands at y. */
  inside: (y: number) => Shape[];
  above: Outside[];
  below: Outside[];
  /** Labels that have no room anywhere. */
  left: number;
}

/** How much a label may be narrower than `labelWidth`, which leaves room around it. */
const tight = 4;
const baseline = 4;

/**
 * The labels of a bar: letter and mark in their pieces, letters in those too narrow for them, and where not even a letter has room,
 * letters below and above the strip with a line to their pieces.
 */
export function barLabels(
  faced: FacedBar,
  runs: readonly BarRun[],
  drop: string | undefined,
  width: number,
): BarLabels {
  const inside: { x: number; text: string; strong: boolean }[] = [];
  const outside: Outside[] = [];
  const put = (text: string, from: BarFace, to: BarFace, strong: boolean): boolean => {
    if (labelWidth(text) - tight > clearWidth(from, to)) return false;
    inside.push({ x: (from.x + to.x) / 2, text, strong });
    return true;
  };
  for (const run of runs) {
    const own = faced.pieces.filter((piece) => piece.run === run);
    const text = textFor(run, own);
    if (text !== undefined) own.forEach(({ left, right }) => put(text, left, right, false));
    else outside.push(outsideOf(run, own));
  }
  const last = faced.pieces.at(-1)?.right ?? faced.trim;
  if (drop !== undefined && !put(drop, last, faced.end, true))
    outside.push({ text: drop, fromX: last.x, toX: faced.end.x });
  const texts = (y: number) =>
    inside.map((label): Shape => ({ kind: 'text', y: y + baseline, anchor: 'middle', ...label }));
  return { inside: texts, ...shared(outside, width) };
}

/** Letter and mark, or the letter, whichever fits in every piece of a run; undefined where neither does. */
function textFor({ name, letter }: BarRun, own: readonly FacedPiece[]): string | undefined {
  const room = Math.min(...own.map(({ left, right }) => clearWidth(left, right)));
  return [`${letter} ${name}`, letter].find((text) => labelWidth(text) - tight <= room);
}

/** Between two faces, over the whole height of the strip. */
function clearWidth(from: BarFace, to: BarFace): number {
  return to.x - from.x - (Math.abs(from.lean) + Math.abs(to.lean)) / 2;
}

function outsideOf({ letter, pieces }: BarRun, own: readonly FacedPiece[]): Outside {
  return {
    text: pieces.length === 1 ? letter : `${pieces.length} × ${letter}`,
    fromX: own[0]?.left.x ?? 0,
    toX: own.at(-1)?.right.x ?? 0,
  };
}

/** All below where they have room; else in turn below and above, as many as there is room for. */
function shared(outside: readonly Outside[], width: number): Pick<BarLabels, 'above' | 'below' | 'left'> {
  if (fits(outside, width)) return { above: [], below: [...outside], left: 0 };
  const sides: { above: Outside[]; below: Outside[] } = { above: [], below: [] };
  let left = 0;
  outside.forEach((label, at) => {
    const side = at % 2 === 0 ? sides.below : sides.above;
    if (fits([...side, label], width)) side.push(label);
    else left += 1;
  });
  return { ...sides, left };
}

function fits(labels: readonly Outside[], width: number): boolean {
  return labels.reduce((sum, { text }) => sum + labelWidth(text), 0) <= width;
}

/** From the strip to the line along the pieces, and from there to the label. */
const bracket = 4;
const leader = 8;
export const outsideHeight = 30;
const textHeight = 10;

/** Labels outside the strip, each with a line along its pieces; `edge` is the side of the strip, `down` away from it. */
export function outsideShapes(
  labels: readonly Outside[],
  edge: number,
  down: 1 | -1,
  width: number,
): Shape[] {
  const wanted = labels.map(({ text, fromX, toX }) => ({ at: (fromX + toX) / 2, room: labelWidth(text) }));
  const middles = spread(wanted, 0, width) ?? [];
  const level = edge + down * bracket;
  return labels.flatMap(({ text, fromX, toX }, at): Shape[] => {
    const x = middles[at] ?? 0;
    const end = level + down * leader;
    return [
      { kind: 'line', path: segment(fromX + 1, level, Math.max(toX - 1, fromX + 2), level), line: 'thin' },
      { kind: 'line', path: segment((fromX + toX) / 2, level, x, end), line: 'thin' },
      { kind: 'text', x, y: down > 0 ? end + textHeight + 2 : end - 3, text, anchor: 'middle' },
    ];
  });
}
