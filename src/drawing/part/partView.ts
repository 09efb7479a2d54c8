import type { Section } from '../../core/section/section.js';
import type { Point } from '../../core/part/point.js';
import type { Side } from './fence.js';

/** How a part is laid out in pixels. */
export interface View {
  lengthMm: number;
  widthMm: number;
  /** The edge that lies along the fence. */
  fence: Side;
  pixelPerMm: number;
  /** Along the part, where its length is not to scale. */
  alongPerMm?: number;
  left: number;
  top: number;
  /** The middle is left out: what is shown of each end, and the gap between. */
  broken?: { endMm: number; gap: number };
}

/** Longer than so many widths, the middle is left out. */
export const longest = 4;
const gap = 22;
/** Room for the width of the part. */
const usualHeight = 150;
const roundingMm = 1e-6;

/** A stretch of the part that is not to be cut through by the break. */
export interface Kept {
  fromMm: number;
  toMm: number;
}

/** Ends to scale; longer than 4:1, the middle is left out. */
export function viewOf(
  part: Pick<View, 'lengthMm' | 'widthMm' | 'fence'>,
  room: { left: number; top: number; width: number; height?: number },
  kept: readonly Kept[] = [],
): View {
  const { lengthMm, widthMm } = part;
  const broken = lengthMm > longest * widthMm;
  const shownMm = broken ? 2 * shownEndMm(part, kept) : lengthMm;
  const free = room.width - (broken ? gap : 0);
  const pixelPerMm = Math.min(free / shownMm, (room.height ?? usualHeight) / widthMm);
  const view = { ...part, pixelPerMm, left: room.left, top: room.top };
  return broken ? { ...view, broken: { endMm: shownMm / 2, gap } } : view;
}

const leastWidths = 1;
const greatestWidths = 3;
const step = 1 / 16;

/** How much of each end is shown: two widths, or more or less so that the breaks cut through nothing. */
function shownEndMm(
  { lengthMm, widthMm }: { lengthMm: number; widthMm: number },
  kept: readonly Kept[],
): number {
  const usual = longest / 2;
  const most = Math.min(greatestWidths, (0.45 * lengthMm) / widthMm);
  const steps = (to: number) => Math.max(0, Math.floor(Math.abs(to - usual) / step));
  const tries = [
    usual,
    ...Array.from({ length: steps(most) }, (_, at) => usual + (at + 1) * step),
    ...Array.from({ length: steps(leastWidths) }, (_, at) => usual - (at + 1) * step),
  ].map((widths) => widths * widthMm);
  const cuts = (placeMm: number) => kept.some(({ fromMm, toMm }) => placeMm > fromMm && placeMm < toMm);
  return tries.find((endMm) => !cuts(endMm) && !cuts(lengthMm - endMm)) ?? usual * widthMm;
}

/** Where a distance from the left end lies; undefined in the part left out. */
export function xOf(
  { left, lengthMm, pixelPerMm, alongPerMm = pixelPerMm, broken }: View,
  xMm: number,
): number | undefined {
  if (!broken) return left + xMm * alongPerMm;
  if (xMm <= broken.endMm + roundingMm) return left + xMm * pixelPerMm;
  const fromFarMm = lengthMm - xMm;
  if (fromFarMm > broken.endMm + roundingMm) return undefined;
  return left + 2 * broken.endMm * pixelPerMm + broken.gap - fromFarMm * pixelPerMm;
}

/** Where a distance from the bottom edge or heel lies. */
export function yOf({ top, widthMm, pixelPerMm }: View, yMm: number): number {
  return top + (widthMm - yMm) * pixelPerMm;
}

/** Where a place on the part lies; what is left out lies at the end at the stop. */
export function pixelOf(view: View, { x, y }: Point): [number, number] {
  return [xOf(view, x) ?? view.left, yOf(view, y)];
}

export function rightOf(view: View): number {
  return xOf(view, view.lengthMm) ?? view.left;
}

/** Room in pixels beside the part. */
interface Rooms {
  /** Above it, to the lowest text there. */
  above: number;
  /** Above it, besides rows of text. */
  head: number;
  /** Below it, to the highest text there. */
  below: number;
  /** Below it, besides rows of text. */
  foot: number;
}

/** There is more room where the fence is. */
export function roomsOf(fence: Side): Rooms {
  return fence === 'throat'
    ? { above: 26, head: 24, below: 20, foot: 0 }
    : { above: 16, head: 26, below: 26, foot: 6 };
}

/** What is shown of the part, from the stop to the far end: all of it, or its two ends. */
export function piecesOf(view: View): { from: number; to: number }[] {
  const right = rightOf(view);
  if (!view.broken) return [{ from: view.left, to: right }];
  const shown = view.broken.endMm * view.pixelPerMm;
  return [
    { from: view.left, to: view.left + shown },
    { from: right - shown, to: right },
  ];
}

/** The width that lies on the press where no hole says which side it is. */
export function lyingWidthMm(section: Section): number {
  switch (section.kind) {
    case 'flat':
      return section.widthMm;
    case 'angle':
      return section.legAMm;
    case 'channel':
      return section.depthMm;
    case 'round':
      return section.diameterMm;
    case 'square':
      return section.sideMm;
  }
}
