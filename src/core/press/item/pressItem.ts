import type { LengthUnit } from '../../quantity/units.js';
import { gaugeItems } from './gaugeItems.js';
import { shearItems } from './shearItems.js';
import { timeItems } from './timeItems.js';

/** What a press value is: how its cell is read and in which unit the core holds it. */
export type PressItemKind =
  | 'station'
  | 'yesNo'
  | 'legs'
  | 'legPosition'
  | 'force'
  | 'length'
  | 'lengths'
  | 'stress'
  | 'ratio'
  | 'allowance'
  | 'angle'
  | 'mass'
  | 'amount'
  | 'count'
  | 'seconds'
  | 'minutes'
  | 'speed'
  | 'rate';

export type Station = 'punch' | 'flat shear' | 'angle shear' | 'bar shear' | 'notcher' | 'bending attachment';

/** One row of the Presses table: its name there, its kind, and what it means. */
export interface PressItem {
  key: string;
  /** The text of the Item column. It is part of the file format and never changes. */
  name: string;
  kind: PressItemKind;
  meaning: string;
  /** The usual value a blank cell stands for; without one, blank is unknown. Common practice, no source. */
  whenBlank?: Record<LengthUnit, string>;
}

/**
 * The rows of the Presses table. A value is a limit; `none`: there is no such limit; blank: the usual value where
 * the item has one, else unknown, so that the check is reported as not made. Names are read without regard to case and spaces.
 */
export const pressItems = [
  { key: 'punchForce', name: 'Punch force', kind: 'force', meaning: 'rated force of the punch station' },
  {
    key: 'shearForce',
    name: 'Shear force',
    kind: 'force',
    meaning: 'rated force at the blades of the flat shear, where the plate gives no bar sizes',
  },
  {
    key: 'shareToUse',
    name: 'Share of rating to use',
    kind: 'ratio',
    meaning: 'above this share a row is Near limit',
    whenBlank: { in: '0.8', mm: '0.8' },
  },
  {
    key: 'referenceShear',
    name: 'Reference shear strength',
    kind: 'stress',
    meaning: 'shear strength the rated sizes stand for',
    whenBlank: { in: '50 ksi', mm: '345 MPa' },
  },
  { key: 'hourlyRate', name: 'Hourly rate', kind: 'amount', meaning: 'price of one press hour' },
  { key: 'crew', name: 'Crew', kind: 'count', meaning: 'people at the press' },
  {
    key: 'punch',
    name: 'Punch',
    kind: 'station',
    meaning: 'whether the press has a punch station: yes or no',
  },
  { key: 'punchThroat', name: 'Punch throat', kind: 'length', meaning: 'from the punch center to the frame' },
  {
    key: 'punchLargestHole',
    name: 'Punch largest hole',
    kind: 'length',
    meaning: 'largest hole on the plate',
  },
  {
    key: 'punchLargestHoleThickness',
    name: 'Punch largest hole thickness',
    kind: 'length',
    meaning: 'thickness that hole goes through',
  },
  { key: 'punchStroke', name: 'Punch stroke', kind: 'length', meaning: 'full travel of the punch' },
  {
    key: 'punchWorkingGap',
    name: 'Punch working gap',
    kind: 'length',
    meaning: 'room above the work at the top of the stroke',
    whenBlank: { in: 'about 1/4 in', mm: '6 mm' },
  },
  {
    key: 'punchClearUnderDie',
    name: 'Punch clear under die',
    kind: 'length',
    meaning: 'height free below the die with the block lowered or removed',
  },
  {
    key: 'punchDieHalfWidth',
    name: 'Punch die half width',
    kind: 'length',
    meaning: 'from the punch center to the outside of the die holder',
  },
  {
    key: 'punchOpenHeight',
    name: 'Punch open height',
    kind: 'length',
    meaning: 'from the face that carries the punch to the top of the die, at the top of the stroke',
  },
  { key: 'punchBody', name: 'Punch body', kind: 'length', meaning: 'largest punch body the station takes' },
  ...shearItems,
  { key: 'notcher', name: 'Notcher', kind: 'station', meaning: 'whether the press has a notcher: yes or no' },
  {
    key: 'notcherWidth',
    name: 'Notcher width',
    kind: 'length',
    meaning: 'widest notch in one bite, along the edge',
  },
  {
    key: 'notcherDepth',
    name: 'Notcher depth',
    kind: 'length',
    meaning: 'deepest notch in one bite, from the edge',
  },
  {
    key: 'notcherNarrowest',
    name: 'Notcher narrowest notch',
    kind: 'length',
    meaning: 'narrowest notch in an edge: the width of the tool where that is fixed; none: any width',
  },
  {
    key: 'notcherThickness',
    name: 'Notcher thickness',
    kind: 'length',
    meaning: 'thickness the notcher cuts at that width and depth',
  },
  {
    key: 'notcherStroke',
    name: 'Notcher stroke',
    kind: 'length',
    meaning: 'full travel of the notcher',
  },
  {
    key: 'bend',
    name: 'Bend',
    kind: 'station',
    meaning: 'whether the press has a bending attachment: yes or no',
  },
  { key: 'bendLength', name: 'Bend length', kind: 'length', meaning: 'longest bend' },
  {
    key: 'bendVeeOpenings',
    name: 'Bend V openings',
    kind: 'lengths',
    meaning: 'V openings on hand, as text: 1, 1-1/2, 2; the force is checked against Punch force',
  },
  {
    key: 'bendPunchHalfWidth',
    name: 'Bend punch half width',
    kind: 'length',
    meaning: 'from the middle of the bending punch to its side, where a leg that is bent already may stand',
  },
  { key: 'longestBar', name: 'Longest bar', kind: 'length', meaning: 'longest bar the supports carry' },
  {
    key: 'heaviestBar',
    name: 'Heaviest bar',
    kind: 'mass',
    meaning: 'heaviest bar the supports and people carry',
  },
  ...gaugeItems,
  ...timeItems,
  {
    key: 'invented',
    name: 'Invented',
    kind: 'yesNo',
    meaning: 'yes: the numbers are of no real press; no: they are from its plate and manual',
  },
] as const satisfies readonly PressItem[];

/** What an item is and what a blank cell stands for, in words for people of a unit. */
export function pressItemMeaning({ meaning, whenBlank }: PressItem, unit: LengthUnit): string {
  return whenBlank === undefined ? meaning : `${meaning}; ${whenBlank[unit]} when blank`;
}

export type PressItemKey = (typeof pressItems)[number]['key'];
