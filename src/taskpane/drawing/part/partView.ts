import type { Section } from '../../../core/section/section.js';

/** How a part is laid out in pixels. */
export interface View {
  lengthMm: number;
  widthMm: number;
  pixelPerMm: number;
  left: number;
  top: number;
  /** The middle is left out: what is shown of each end, and the gap between. */
  broken?: { endMm: number; gap: number };
}

const longest = 4;
const gap = 22;
const tallest = 150;

/** Ends to scale; longer than 4:1, the middle is left out. */
export function viewOf(
  part: { lengthMm: number; widthMm: number },
  room: { left: number; top: number; width: number },
): View {
  const { lengthMm, widthMm } = part;
  const broken = lengthMm > longest * widthMm;
  const shownMm = broken ? longest * widthMm : lengthMm;
  const free = room.width - (broken ? gap : 0);
  const pixelPerMm = Math.min(free / shownMm, tallest / widthMm);
  const view = { ...part, pixelPerMm, left: room.left, top: room.top };
  return broken ? { ...view, broken: { endMm: shownMm / 2, gap } } : view;
}

/** Where a distance from the end at the stop lies; undefined in the part left out. */
export function xOf({ left, lengthMm, pixelPerMm, broken }: View, alongMm: number): number | undefined {
  if (!broken || alongMm <= broken.endMm) return left + alongMm * pixelPerMm;
  const fromFarMm = lengthMm - alongMm;
  if (fromFarMm > broken.endMm) return undefined;
  return left + 2 * broken.endMm * pixelPerMm + broken.gap - fromFarMm * pixelPerMm;
}

export function yOf({ top, pixelPerMm }: View, acrossMm: number): number {
  return top + acrossMm * pixelPerMm;
}

export function rightOf(view: View): number {
  return xOf(view, view.lengthMm) ?? view.left;
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
