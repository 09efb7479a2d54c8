import type { OpenCell } from '../../check/rowFact.js';
import type { OutlineProblem } from '../../part/outlineInput.js';
import { outlineOf } from '../../part/outlineOf.js';
import type { Face } from '../../part/part.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { RowWithSection } from '../readyRow.js';
import { alternativesOf, type Choice, type Picked } from './alternatives.js';
import { bendLinesOf, type PlacedBend } from './bendLines.js';
import { faceOutline, shortened } from './faceOutline.js';
import { facesOf } from './faces.js';
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

/** More combinations of choices than these are not tried. */
const mostLayouts = 64;
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
  const layouts = Array.from({ length: Math.min(total, mostLayouts) }, (_, number) =>
    layoutFor(row, pick(optionsOf(number, sizes)), even, unit),
  );
  return { layouts, choices, more: total > mostLayouts };
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

function layoutFor(row: RowWithSection, picked: Picked, even: boolean, unit: LengthUnit): Layout {
  const lengthMm = row.lengthMm ?? endlessMm;
  const part = { lengthMm, endless: row.lengthMm === undefined };
  const faces: Face[] = [];
  for (const size of facesOf(row.section)) {
    const outline = outlineOf(faceOutline(row, size, picked, lengthMm, unit));
    if ('problem' in outline) return { ...part, faces: [], groups: [], bends: [], problem: outline };
    const offsetMm = shortened(row, size, picked, 'left');
    const edges = outline.edges.map(({ from, to, ...edge }) => ({
      ...edge,
      from: { x: from.x + offsetMm, y: from.y },
      to: { x: to.x + offsetMm, y: to.y },
    }));
    const { id, widthMm, thicknessMm } = size;
    faces.push({ id, widthMm, thicknessMm, outline: offsetMm === 0 ? outline : { edges } });
  }
  const groups = row.groups.flatMap((group, index) => {
    const own = picked.groups[index];
    return own?.face ? [layGroup(group, index, own, { lengthMm, even })] : [];
  });
  const [face] = faces;
  const bends = face && row.bends?.at ? bendLinesOf(row.bends.at, { lengthMm, widthMm: face.widthMm }) : [];
  return { ...part, faces, groups, bends };
}
