import { type Kept, longest, type View, viewOf, xOf } from './partView.js';

/** A long part is not drawn higher than this on a card, so that its length gets the room. */
const tallestLong = 72;
/** A part with all its holes in view has them at least this far apart, in pixels, so that circles do not meet. */
const narrowest = 16;

/**
 * How a face is laid out: to scale; a long one with its middle left out; and where something lies in that
 * middle, whole, with its length not to scale.
 */
export function faceViewOf(
  part: Pick<View, 'lengthMm' | 'widthMm' | 'fence'>,
  room: { left: number; top: number; width: number; height: number },
  kept: readonly Kept[],
  longHeight = tallestLong,
): View {
  const { lengthMm, widthMm } = part;
  if (lengthMm <= longest * widthMm) return viewOf(part, room, kept);
  const broken = viewOf(part, { ...room, height: Math.min(room.height, longHeight) }, kept);
  const isShown = ({ fromMm, toMm }: Kept) => xOf(broken, (fromMm + toMm) / 2) !== undefined;
  if (kept.every(isShown)) return broken;
  const pixelPerMm = Math.min(room.height, longHeight) / widthMm;
  const alongPerMm = Math.min(pixelPerMm, room.width / lengthMm);
  return { ...part, pixelPerMm, alongPerMm, left: room.left, top: room.top };
}

/** Whether places along the part lie far enough apart to be told one by one in the drawing. */
export function areApart(xs: readonly number[]): boolean {
  const sorted = [...xs].sort((a, b) => a - b);
  return sorted.every((x, at) => at === 0 || x - (sorted[at - 1] ?? 0) >= narrowest);
}
