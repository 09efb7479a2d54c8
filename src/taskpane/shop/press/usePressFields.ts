import { type FieldConflict, type Fields, mergeFields } from './mergeFields.js';
import { useContext } from 'react';
import { KeptContext, useKept } from '../../shared/useKept.js';

const keptKey = (press: string) => `press ${press}`;

interface Edited {
  base: Fields;
  mine: Fields;
  taken: readonly string[];
  conflicts: readonly FieldConflict[];
}

/**
 * The fields of a press while they are edited. What the sheet says meanwhile is merged in: fields left alone
 * follow it, fields changed on both sides are kept and reported.
 */
export function usePressFields(press: string, onSheet: Fields) {
  const first = (): Edited => ({ base: onSheet, mine: onSheet, taken: [], conflicts: [] });
  const { value: edited, set: setEdited } = useKept(keptKey(press), first);
  const current = sameFields(edited.base, onSheet) ? edited : follow(edited, onSheet);
  if (current !== edited) setEdited(current);
  // Two fields of a pair are typed in one go: the second goes on where the first left off.
  let latest = current;
  const type = (field: string, text: string) => {
    latest = {
      ...latest,
      mine: { ...latest.mine, [field]: text },
      conflicts: latest.conflicts.filter(
        (each) => each.field !== field || String(each.theirs ?? '') !== text,
      ),
    };
    setEdited(latest);
  };
  const changed = Object.keys(current.mine).filter((field) => current.mine[field] !== current.base[field]);
  return { ...current, changed, type, discard: () => setEdited(first()) };
}

/** How many values of a press are typed and not written. */
export function useUnsaved(press: string): number {
  const edited = useContext(KeptContext).get(keptKey(press)) as Edited | undefined;
  if (!edited) return 0;
  return Object.keys(edited.mine).filter((field) => edited.mine[field] !== edited.base[field]).length;
}

function follow({ base, mine, conflicts }: Edited, theirs: Fields): Edited {
  const merge = mergeFields(base, mine, theirs);
  const open = conflicts.filter(
    ({ field }) =>
      theirs[field] !== merge.merged[field] && !merge.conflicts.some((each) => each.field === field),
  );
  return { base: theirs, mine: merge.merged, taken: merge.taken, conflicts: [...open, ...merge.conflicts] };
}

function sameFields(a: Fields, b: Fields): boolean {
  return Object.keys({ ...a, ...b }).every((field) => a[field] === b[field]);
}
