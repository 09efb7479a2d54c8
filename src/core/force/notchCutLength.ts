import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/** Where a notch is cut: in an edge, off a corner, or as a vee in an edge. */
export const notchPlaces = ['edge', 'corner', 'vee'] as const;
export type NotchPlace = (typeof notchPlaces)[number];

/** A notch: its width along the edge, its depth from the edge. */
export interface Notch {
  widthMm: number;
  depthMm: number;
  where: NotchPlace;
}

const formulas: Record<NotchPlace, string> = {
  edge: 'l = 2 · d + w',
  corner: 'l = d + w',
  vee: 'l = 2 · √(d² + (w / 2)²)',
};

/**
 * The length of the cut around a notch.
 *
 * Formula: edge 2 · d + w; corner d + w; vee two flanks 2 · √(d² + (w / 2)²)
 * @param notch width w along the edge and depth d in mm; where it is
 * @param working collects the step when given
 * @returns length of the cut in mm
 * Valid for sizes above zero; throws `invalid` otherwise.
 * @example notchCutLengthMm({ widthMm: 60, depthMm: 40, where: 'vee' }) // 100
 * Source: plane geometry.
 */
export function notchCutLengthMm(notch: Notch, working?: Working): number {
  const { widthMm, depthMm, where } = notch;
  requirePositive('Width', widthMm);
  requirePositive('Depth', depthMm);
  const cutLengthMm = cutLength(notch);
  working?.step({
    title: where === 'vee' ? 'Flanks of the vee notch' : `Cut of the ${where} notch`,
    formula: formulas[where],
    values: [lengthValue('w', 'width of the notch', widthMm), lengthValue('d', 'its depth', depthMm)],
    result: lengthValue('l', 'length of the cut', cutLengthMm),
    source: 'plane geometry',
  });
  return cutLengthMm;
}

function cutLength({ widthMm, depthMm, where }: Notch): number {
  switch (where) {
    case 'edge':
      return 2 * depthMm + widthMm;
    case 'corner':
      return depthMm + widthMm;
    case 'vee':
      return 2 * Math.hypot(depthMm, widthMm / 2);
  }
}
