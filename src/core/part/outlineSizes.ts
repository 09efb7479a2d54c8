import type { Cause } from './outline.js';
import type { FaceEnd, NotchPlace, OutlineInput, OutlineProblem } from './outlineInput.js';
import { toleranceMm } from './tolerance.js';

/** The first size that is none: not above 0, not finite, a miter that is not from 0 to under 90°. */
export function sizeProblem(input: OutlineInput): OutlineProblem | undefined {
  if (!areSizes(input.lengthMm, input.widthMm)) return { problem: 'no size' };
  if (!isMiter(input.left)) return { problem: 'no size', cause: { is: 'miter left' } };
  if (!isMiter(input.right)) return { problem: 'no size', cause: { is: 'miter right' } };
  for (const [at, { alongMm, acrossMm }] of (input.clips ?? []).entries()) {
    if (!areSizes(alongMm, acrossMm)) return noSize({ is: 'clip', number: at + 1 });
  }
  for (const [at, { widthMm, depthMm, place }] of (input.notches ?? []).entries()) {
    if (!areSizes(widthMm, depthMm) || !isPlace(place)) return noSize({ is: 'notch', number: at + 1 });
  }
  return undefined;
}

function noSize(cause: Cause): OutlineProblem {
  return { problem: 'no size', cause };
}

function areSizes(oneMm: number, otherMm: number): boolean {
  return isSize(oneMm) && isSize(otherMm);
}

function isSize(sizeMm: number): boolean {
  return sizeMm > toleranceMm && Number.isFinite(sizeMm);
}

function isMiter({ miter }: FaceEnd): boolean {
  return !miter || (miter.rad >= 0 && miter.rad < Math.PI / 2);
}

function isPlace(place: NotchPlace): boolean {
  return place.at === 'corner' || Number.isFinite(place.centerMm);
}
