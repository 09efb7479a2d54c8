/** How the places of a group were read where the row does not give them all. */
export type PlaceReading =
  | 'evenly spaced'
  | 'at each end'
  | 'in each corner'
  | 'centered'
  | 'usual gage'
  | 'in the middle of the width'
  | 'from the right end';

/** A cell that places holes. */
export type PlaceCell = 'End' | 'Edge' | 'Pitch' | 'Gage' | 'Length';
