import type { GroupField, RowField } from './heading.js';

const length = "the shop's, or as the heading says";

/** The unit of the bare numbers below each heading; none where no number stands. */
export const headingUnits: Readonly<Partial<Record<RowField | GroupField, string>>> = {
  qty: 'a count',
  section: length,
  size: length,
  length,
  thickness: length,
  width: length,
  feet: 'ft',
  inches: 'in',
  miterLeft: 'degrees',
  miterRight: 'degrees',
  miter: 'degrees',
  cornerClip: length,
  corners: 'a count',
  notchWidth: length,
  notchDepth: length,
  notches: 'a count',
  bendLength: length,
  bends: 'a count',
  notchAt: length,
  clipAt: length,
  bendAt: length,
  hole: length,
  holes: 'a count, of the part or at each end',
  bolt: length,
  edge: length,
  end: length,
  pitch: length,
  p2: length,
  p3: length,
  p4: length,
  gage: length,
  holesAt: length,
};

/** Whether lengths stand below a heading, in whatever unit it says. */
export function holdsLengths(field: RowField | GroupField): boolean {
  return headingUnits[field] === length;
}
