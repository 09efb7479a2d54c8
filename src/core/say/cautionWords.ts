import type { CardCaution } from '../card/cautionsOf.js';

/** What these numbers are not. It stands on everything that is printed. */
export const caution =
  "Planning estimates. The plate on the press, its manual and the tool maker's limits govern; the job's specification, local codes and a licensed engineer govern connections. Never exceed the rating.";

/** A caution that a step asks for, in one sentence. */
export function cautionWords(of: CardCaution): string {
  switch (of) {
    case 'guards':
      return 'Guards on; eye protection.';
    case 'lock out':
      return 'Lock out before changing tools.';
    case 'existing hole':
      return 'Never punch over the edge of an existing hole, or part of a slug, unless the tool is made for it.';
    case 'stripper':
      return 'Keep the stripper level and close.';
    case 'touching starts':
      return 'Touching the back gauge starts the stroke.';
  }
}
