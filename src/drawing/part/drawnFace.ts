import type { Finding } from '../../core/check/finding.js';
import type { OutlineProblem } from '../../core/part/outlineInput.js';
import type { Face, FaceId } from '../../core/part/part.js';
import type { Choice } from '../../core/row/layout/alternatives.js';
import type { PlacedBend } from '../../core/row/layout/bendLines.js';
import type { LaidGroup } from '../../core/row/layout/layGroup.js';
import type { LaidPart } from './laidPart.js';

/** The face of a part that is drawn, with what is on it. */
export interface DrawnFace {
  face: Face;
  /** All faces of the part. */
  faces: readonly Face[];
  groups: readonly LaidGroup[];
  /** Groups in another leg or flange. */
  elsewhere: number;
  bends: readonly PlacedBend[];
  choices: readonly Choice[];
  problem?: OutlineProblem;
}

/** The face that is asked for, else that the deciding finding is about, else the one with the first holes. */
export function drawnFace(
  { layout, choices, problem }: LaidPart,
  deciding: Finding | undefined,
  asked?: FaceId,
): DrawnFace {
  const { faces, groups } = layout;
  const id = asked ?? faceOfFinding(groups, deciding) ?? faceOf(groups[0]);
  const face = faces.find((each) => each.id === id) ?? (faces[0] as Face);
  const here = groups.filter((group) => faceOf(group) === face.id);
  return {
    face,
    faces,
    groups: here,
    elsewhere: groups.length - here.length,
    bends: face === faces[0] ? layout.bends : [],
    choices,
    ...(problem ? { problem } : {}),
  };
}

function faceOf(group: LaidGroup | undefined): FaceId | undefined {
  return group?.holes[0]?.face;
}

function faceOfFinding(groups: readonly LaidGroup[], deciding: Finding | undefined): FaceId | undefined {
  if (deciding?.rule === 'distance') return deciding.face;
  return faceOf(groups.find(({ index }) => index === deciding?.group));
}
