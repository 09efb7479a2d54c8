import type { OpenCell } from '../../check/rowFact.js';
import type { OutlineProblem } from '../../part/outlineInput.js';
import { outlineOf } from '../../part/outlineOf.js';
import type { Face } from '../../part/part.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { RowWithSection } from '../job/readyRow.js';
import { alternativesOf, type Choice, type Picked } from './alternatives.js';
import { bendLinesOf, type PlacedBend } from './bendLines.js';
import { faceOutline, shortened } from './faceOutline.js';
import { type FaceSize, facesOf } from '../job/faces.js';
import { type LaidGroup, layGroup } from './layGroup.js';

/** A part laid out for one of the choices that its row leaves. */
export interface Layout {
  lengthMm: number;
  /** The row gives no length: `lengthMm` stands for one that no hole knows the end of. */
  endless: boolean;
  faces: readonly Face[];
  groups: readonly LaidGroup[];
  bends: readonly PlacedBend[];
  /** Why the cuts of a face do not leave one piece. */
  problem?: OutlineProblem;
}

/** The layouts of a row, and the choices that tell them apart. */
export interface Layouts {
  layouts: readonly Layout[];
  choices: readonly Choice[];
  /** There are more combinations of choices: these are only some. */
  more: boolean;
}

/** More combinations of choices than these are not tried; of a part with very many holes fewer. */
const mostLayouts = 64;
const mostHolesLaid = 2000;
/** Longer than any bar. */
const endlessMm = 100_000;

/**
 * The part of a row as geometry, once for every combination of what the row leaves to choose: the leg, the direction of
 * a slot, the corners that are clipped, the long side of a miter.
 */
export function layoutsOf(row: RowWithSection, unit: LengthUnit, even: boolean): Layouts {
  const { choices, pick } = alternativesOf(row, unit);
  const sizes = choices.map(({ options }) => options);
  const total = sizes.reduce((product, options) => product * options, 1);
  const holes = row.groups.reduce((sum, { count }) => sum + count, 0);
  const tried = Math.min(total, mostLayouts, Math.max(2, Math.floor(mostHolesLaid / Math.max(1, holes))));
  const known: FaceKnown[] = [];
  const layouts: Layout[] = [];
  for (let number = 0; number < tried; number++) {
    layouts.push(layoutFor(row, pick(optionsOf(number, sizes)), even, unit, known));
  }
  return { layouts, choices, more: total > tried };
}

/** A choice as the cell that would settle it. */
export function cellOf({ cell, group }: Choice): OpenCell {
  return group === undefined ? { cell } : { cell, group };
}

/** The options of one combination: its number in mixed radix. */
export function optionsOf(number: number, sizes: readonly number[]): number[] {
  let rest = number;
  return sizes.map((size) => {
    const option = rest % size;
    rest = Math.floor(rest / size);
    return option;
  });
}

/** Every face of a part with cuts; of one without, those with holes, or the first. */
function facesToLay(row: RowWithSection, { groups }: Picked): readonly FaceSize[] {
  const faces = facesOf(row.section);
  if (row.miterRad > 0 || row.clips || row.notches) return faces;
  const used = faces.filter(({ id }) => groups.some(({ face }) => face?.id === id));
  return used.length > 0 ? used : faces.slice(0, 1);
}

/** The outline of a face for what was picked of its cuts: many layouts have the same. */
interface FaceKnown {
  size: FaceSize;
  picked: Picked;
  face: Face | OutlineProblem;
}

function faceFor(
  row: RowWithSection,
  size: FaceSize,
  picked: Picked,
  lengthMm: number,
  unit: LengthUnit,
  known: FaceKnown[],
): Face | OutlineProblem {
  const same = known.find(
    (each) =>
      each.size.id === size.id &&
      each.picked.corners === picked.corners &&
      each.picked.mitered === picked.mitered &&
      each.picked.longSide.left === picked.longSide.left &&
      each.picked.longSide.right === picked.longSide.right,
  );
  if (same) return same.face;
  const face = outlinedFace(row, size, picked, lengthMm, unit);
  known.push({ size, picked, face });
  return face;
}

function outlinedFace(
  row: RowWithSection,
  size: FaceSize,
  picked: Picked,
  lengthMm: number,
  unit: LengthUnit,
): Face | OutlineProblem {
  const outline = outlineOf(faceOutline(row, size, picked, lengthMm, unit));
  if ('problem' in outline) return outline;
  const { id, widthMm, thicknessMm } = size;
  const offsetMm = shortened(row, size, picked, 'left');
  if (offsetMm === 0) return { id, widthMm, thicknessMm, outline };
  const edges = outline.edges.map(({ from, to, cause, kind }) => ({
    cause,
    kind,
    from: { x: from.x + offsetMm, y: from.y },
    to: { x: to.x + offsetMm, y: to.y },
  }));
  return { id, widthMm, thicknessMm, outline: { edges } };
}

function layoutFor(
  row: RowWithSection,
  picked: Picked,
  even: boolean,
  unit: LengthUnit,
  known: FaceKnown[],
): Layout {
  const lengthMm = row.lengthMm ?? endlessMm;
  const endless = row.lengthMm === undefined;
  const faces: Face[] = [];
  for (const size of facesToLay(row, picked)) {
    const face = faceFor(row, size, picked, lengthMm, unit, known);
    if ('problem' in face) {
      return { lengthMm, endless, faces: [], groups: [], bends: [], problem: face };
    }
    faces.push(face);
  }
  const bar = { lengthMm, even };
  const groups: LaidGroup[] = [];
  for (const [index, group] of row.groups.entries()) {
    const own = picked.groups[index];
    if (own?.face) groups.push(layGroup(group, own, bar));
  }
  const [face] = faces;
  const bends = face && row.bends?.at ? bendLinesOf(row.bends.at, { lengthMm, widthMm: face.widthMm }) : [];
  return { lengthMm, endless, faces, groups, bends };
}
