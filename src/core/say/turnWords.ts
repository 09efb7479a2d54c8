import type { Turn } from '../setup/way.js';

/** How a part lies for a hole. Turned, the same face is up; flipped, the other. */
export const turnWords: Record<Turn, string> = {
  'as it lies': 'as it lies',
  'half turn': 'turned end for end',
  'over sideways': 'flipped side for side',
  'over endways': 'flipped end for end',
};
