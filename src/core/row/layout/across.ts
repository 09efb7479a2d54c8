import { ifRead } from '../../inputError.js';
import { angleGageMm } from '../../rule/angleGage.js';
import { leastDimensionMm } from '../../tooling/hole.js';
import type { HoleGroup } from '../job/rowJob.js';
import type { FaceSize } from '../job/faces.js';

/** The lines of a group across a face: how far each may move down and up from there, and how that was read. */
export interface Across {
  yMm: number;
  downMm: number;
  upMm: number;
}

export interface AcrossLines {
  lines: readonly Across[];
  reading?: 'usual gage' | 'centered' | 'in the middle of the width';
  missing: readonly ('Edge' | 'Gage')[];
}

/** How many lines the holes of a group stand in: two on a plate or web where Gage is between two lines. */
export function lineCount({ gageMm, count, eachEnd }: HoleGroup, face: FaceSize): number {
  return !face.heel && gageMm !== undefined && count > (eachEnd ? 2 : 1) ? 2 : 1;
}

/**
 * Where the lines of a group lie across a face, from its bottom edge or heel. Edge is to the first line of a plate or
 * web, and from the toe of a leg or flange; Gage is from the heel there, and between the two lines of a plate or web.
 */
export function acrossLines(group: HoleGroup, face: FaceSize): AcrossLines {
  return face.heel ? lineOnLeg(group, face) : linesOnPlate(group, face);
}

function fixed(yMm: number): Across {
  return { yMm, downMm: 0, upMm: 0 };
}

function linesOnPlate(group: HoleGroup, face: FaceSize): AcrossLines {
  const { edgeMm, edgeFrom = 'bottom' } = group;
  const { widthMm } = face;
  const gageMm = lineCount(group, face) === 2 ? (group.gageMm ?? 0) : 0;
  const gaps = gageMm > 0 ? [0, gageMm] : [0];
  if (edgeMm !== undefined) {
    const fromBottom = edgeFrom === 'bottom';
    const lines = gaps.map((gapMm) => fixed(fromBottom ? edgeMm + gapMm : widthMm - edgeMm - gapMm));
    return { lines, missing: [] };
  }
  const firstMm = (widthMm - gageMm) / 2;
  const freeMm = Math.max(0, firstMm - leastDimensionMm(group.hole) / 2);
  return {
    lines: gaps.map((gapMm) => ({ yMm: firstMm + gapMm, downMm: freeMm, upMm: freeMm })),
    reading: gageMm > 0 ? 'centered' : 'in the middle of the width',
    missing: ['Edge'],
  };
}

function lineOnLeg(group: HoleGroup, { widthMm }: FaceSize): AcrossLines {
  const { gageMm, edgeMm } = group;
  if (gageMm !== undefined) return { lines: [fixed(gageMm)], missing: [] };
  if (edgeMm !== undefined) return { lines: [fixed(widthMm - edgeMm)], missing: [] };
  const usualMm = usualGageMm(widthMm);
  const yMm = usualMm ?? widthMm / 2;
  const marginMm = leastDimensionMm(group.hole) / 2;
  const line = { yMm, downMm: Math.max(0, yMm - marginMm), upMm: Math.max(0, widthMm - yMm - marginMm) };
  return {
    lines: [line],
    reading: usualMm === undefined ? 'in the middle of the width' : 'usual gage',
    missing: ['Gage'],
  };
}

/** The usual gage of a leg; undefined where no table has one. */
function usualGageMm(legMm: number): number | undefined {
  return ifRead(() => angleGageMm({ legMm, line: 'usual' }));
}
