import type { OutlineProblem } from '../../part/outlineInput.js';
import { outlineOf } from '../../part/outlineOf.js';
import type { Face } from '../../part/part.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { ReadRow } from '../prepareRow.js';
import { alternativesOf, type Choice, type Picked } from './alternatives.js';
import { faceOutline, shortened } from './faceOutline.js';
import { facesOf } from './faces.js';
import { type LaidGroup, layGroup } from './layGroup.js';

/** A part laid out for one of the choices that its row leaves. */
export interface Layout {
  faces: readonly Face[];
  groups: readonly LaidGroup[];
  /** Why the cuts of a face do not leave one piece. */
  problem?: OutlineProblem;
}

/** The layouts of a row, and the cells that would say which of them is meant. */
export interface Layouts {
  layouts: readonly Layout[];
  cells: readonly string[];
}

/** More combinations of choices than these are not tried. */
const mostLayouts = 64;

/**
 * The part of a row as geometry, once for every combination of what the row leaves to choose: the leg, the direction of
 * a slot, the corners that are clipped, the long side of a miter. Undefined where there are too many combinations, or the
 * length is not known.
 */
export function layoutsOf(row: ReadRow, unit: LengthUnit, even: boolean): Layouts | undefined {
  const { lengthMm } = row;
  if (lengthMm === undefined) return undefined;
  const { choices, pick } = alternativesOf(row, unit);
  const total = choices.reduce((product, { options }) => product * options, 1);
  if (total > mostLayouts) return undefined;
  const layouts = Array.from({ length: total }, (_, number) =>
    layoutFor(
      row,
      pick(
        optionsOf(
          number,
          choices.map(({ options }) => options),
        ),
      ),
      { lengthMm, even },
      unit,
    ),
  );
  return { layouts, cells: [...new Set(choices.map(cellName))] };
}

function cellName({ cell, group = 0 }: Choice): string {
  return group === 0 ? cell : `${cell} ${group + 1}`;
}

/** The options of one combination: its number in mixed radix. */
function optionsOf(number: number, sizes: readonly number[]): number[] {
  let rest = number;
  return sizes.map((size) => {
    const option = rest % size;
    rest = Math.floor(rest / size);
    return option;
  });
}

function layoutFor(
  row: ReadRow,
  picked: Picked,
  bar: { lengthMm: number; even: boolean },
  unit: LengthUnit,
): Layout {
  const faces: Face[] = [];
  for (const size of facesOf(row.section)) {
    const outline = outlineOf(faceOutline(row, size, picked, bar.lengthMm, unit));
    if ('problem' in outline) return { faces: [], groups: [], problem: outline };
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
    return own?.face ? [layGroup(group, index, own, bar)] : [];
  });
  return { faces, groups };
}
