import type { EdgeKind } from '../../rule/edgeDistance.js';
import { wordReader } from './wordReader.js';

/** How an edge or an end was made, in the words of a shop. A flame cut counts as machine cut. */
export const readEdgeKind = wordReader<EdgeKind>(
  {
    sheared: ['sheared', 'shear', 'sheared edge'],
    'machine cut': [
      'machine cut',
      'machined',
      'milled',
      'sawn',
      'saw',
      'sawed',
      'saw cut',
      'gas cut',
      'flame cut',
      'thermally cut',
      'burned',
      'burnt',
      'plasma cut',
      'laser cut',
    ],
    rolled: ['rolled', 'as rolled', 'rolled edge'],
    'sheared connection end': ['sheared connection end'],
  },
  'a kind of edge',
);
