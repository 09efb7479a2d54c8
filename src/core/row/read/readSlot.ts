import { wordReader } from './wordReader.js';

/** Which way a slot is long; `slotted` where the cell says no more than that it is one. */
export type SlotWord = 'along' | 'across' | 'slotted';

/**
 * Which way a slot, or a rectangle, is long. Words that mean one thing to a shop and another to a code (`transverse` is
 * across the load there) or a kind of slot (`long`) are not read.
 */
export const readSlot = wordReader<SlotWord>(
  {
    along: [
      ...['along', 'along the length', 'along length', 'with the length', 'with length', 'along the part'],
      ...['lengthwise', 'lengthways', 'longways', 'longwise', 'parallel to length', 'parallel to the length'],
      ...['längs', 'laengs', 'in längsrichtung', 'längsrichtung', 'in lengterichting', 'lengterichting'],
      ...['in de lengte', 'in der länge'],
    ],
    across: [
      'across',
      'across the length',
      'across length',
      'across the width',
      'across width',
      'across the part',
      'crosswise',
      'crossways',
      'widthwise',
      'perpendicular to length',
      'perpendicular to the length',
      ...['quer', 'querrichtung', 'in querrichtung', 'dwars', 'overdwars', 'in breedterichting'],
      ...['in de breedte', 'dwarsrichting'],
    ],
    slotted: ['yes', 'y', 'ja', 'j', 'slot', 'slotted', 'langloch', 'slobgat', 'sleufgat', 'oui'],
  },
  'the direction of a slot',
  'Write along or across.',
);
