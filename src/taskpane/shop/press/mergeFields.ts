import type { CellValue } from '../../../core/quantity/cellValue.js';

/** The fields of something being edited, by name: the items of a press. */
export type Fields = Readonly<Record<string, CellValue>>;

/** A field that two people changed to different values. */
export interface FieldConflict {
  field: string;
  /** What it was when both began. */
  base: CellValue;
  mine: CellValue;
  theirs: CellValue;
}

export interface FieldMerge {
  /** The fields to go on with: conflicting ones keep mine until the user decides. */
  merged: Fields;
  /** Fields taken from the other author. */
  taken: readonly string[];
  conflicts: readonly FieldConflict[];
}

/**
 * Merges two edits of the same fields, field by field: a field changed by one side takes that change, one
 * changed by both to the same value is no conflict. A field that is not there counts as blank.
 */
export function mergeFields(base: Fields, mine: Fields, theirs: Fields): FieldMerge {
  const names = [...new Set([base, mine, theirs].flatMap((fields) => Object.keys(fields)))];
  const at = (fields: Fields, field: string) =>
    Object.hasOwn(fields, field) ? (fields[field] ?? null) : null;
  const changes = names.map((field) => ({
    field,
    base: at(base, field),
    mine: at(mine, field),
    theirs: at(theirs, field),
  }));
  const taken = changes.filter((each) => each.theirs !== each.base && each.mine === each.base);
  const conflicts = changes.filter(
    (each) => each.theirs !== each.base && each.mine !== each.base && each.mine !== each.theirs,
  );
  const fromTheirs = new Set(taken.map(({ field }) => field));
  return {
    merged: Object.fromEntries(
      changes.map(({ field, mine: my, theirs: their }) => [field, fromTheirs.has(field) ? their : my]),
    ),
    taken: taken.map(({ field }) => field),
    conflicts,
  };
}
