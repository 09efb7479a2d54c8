import type { JobPart } from './stockJob.js';

/** Longest first; of one length by mark, and so on to the row: the order of a list makes no difference but to rows that are alike. */
export function compareParts(a: JobPart, b: JobPart): number {
  return (
    b.longMm - a.longMm ||
    compareText(a.mark, b.mark) ||
    a.leanLeftRad - b.leanLeftRad ||
    a.leanRightRad - b.leanRightRad ||
    b.pieces - a.pieces ||
    compareText(a.list, b.list) ||
    a.row - b.row
  );
}

/** The same everywhere, whatever the language of the host. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
