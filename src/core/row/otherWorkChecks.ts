import type { Check } from './check.js';
import type { ReadyRow } from './checkOnPress.js';

/** The notches, corner clips and bends of a row: said to be unchecked. */
export function otherWorkChecks(row: ReadyRow): Check[] {
  const asked = [
    ['notch', row.notches],
    ['corner clip', row.clips],
    ['bend', row.bends],
  ] as const;
  return asked.flatMap(([governs, work]) => {
    if (!work) return [];
    const note = `The ${governs} was not checked: this edition has no rule for it.`;
    return [{ findings: [{ verdict: 'Not checked' as const, governs, note }], steps: [] }];
  });
}
