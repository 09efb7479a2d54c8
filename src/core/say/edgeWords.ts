import type { Cause } from '../part/outline.js';

const causes: Record<Cause['is'], string> = {
  'left end': 'the left end',
  'right end': 'the right end',
  'bottom edge': 'the bottom edge',
  'top edge': 'the top edge',
  heel: 'the heel',
  toe: 'the toe',
  'miter left': 'the miter at the left end',
  'miter right': 'the miter at the right end',
  clip: 'clipped corner',
  notch: 'notch',
};

/** An edge as a sentence names it: `the top edge`, `notch 2`. */
export function edgeWords({ is, number }: Cause): string {
  return number === undefined ? causes[is] : `${causes[is]} ${number}`;
}
