// A parts list whose rows are all different: each has a mark of its own and a length, a section and holes drawn from
// what steel is sold and cut to, so that little of one row is of use for the next.
import { inches, randomSource } from './random.mjs';

export const headings =
  'Mark,Qty,Section,Grade,Length,Hole,Holes,Bolt,Edge,End,Edge kind,Pitch,Gage,Miter left,Miter right,Press,Drawing'.split(
    ',',
  );

const angles = [
  'L2X2X1/4',
  'L2-1/2X2-1/2X1/4',
  'L3X3X1/4',
  'L3X3X3/8',
  'L4X4X1/4',
  'L4X4X3/8',
  'L4X4X1/2',
  'L4X3X3/8',
];
const bars = ['RB 5/8', 'RB 3/4', 'RB 7/8', 'RB 1', 'SQ 1/2', 'SQ 3/4', 'C6X8.2', 'C8X11.5'];
/** A hole, the bolt for it, the least distances it may have in 1/8 in. */
const holes = [
  ['9/16', '1/2', 8],
  ['11/16', '5/8', 9],
  ['13/16', '3/4', 10],
  ['15/16', '7/8', 12],
  ['1-1/16', '1', 14],
  ['13/16x1', '3/4', 11],
];

/** The cells of one row; a number where the shop types one. */
function part(number, random) {
  const { whole, pick, chance } = random;
  const row = Object.fromEntries(headings.map((heading) => [heading, '']));
  const kind = whole(1, 20);
  const widthEighths = whole(12, 64);
  const thickness = inches(whole(3, 10), 16);
  if (kind <= 14) row.Section = `${pick(['PL', 'FB '])}${thickness}X${inches(widthEighths, 8)}`;
  else row.Section = kind <= 18 ? pick(angles) : pick(bars);
  row.Mark = `${pick(['BP', 'GP', 'CL', 'TP', 'KP', 'HB'])}${number}`;
  row.Qty = whole(1, 60);
  row.Grade = pick(['A36', 'A36', 'A36', 'A572-50']);
  const sixteenths = whole(64, 1200);
  row.Length = chance(0.7)
    ? inches(sixteenths, 16)
    : `${Math.floor(sixteenths / 192)}'-${inches(sixteenths % 192, 16)}`;
  row.Press = chance(0.9) ? pick(['Bay A', 'Bay B']) : '';
  row.Drawing = `GT-${100 + Math.floor(number / 40)}`;
  if (kind <= 18 && chance(0.75)) {
    const [hole, bolt, least] = pick(holes);
    const count = whole(1, 4);
    Object.assign(row, { Hole: hole, Holes: count, Bolt: bolt });
    row.Edge = inches(Math.max(least, Math.min(whole(8, 24), Math.floor(widthEighths / 2))), 8);
    row.End = inches(whole(least, 28), 8);
    if (count > 1) row.Pitch = inches(whole(3 * least, 12 * least), 16);
    if (kind > 14) row.Gage = inches(whole(8, 18), 8);
    if (chance(0.1)) row['Edge kind'] = 'sheared';
  } else if (kind > 14 && kind <= 18 && chance(0.5)) row['Miter left'] = 45;
  return headings.map((heading) => row[heading]);
}

/** The rows of a parts list; other ones for another seed. */
export function parts(rows, seed = rows) {
  const random = randomSource(seed);
  return Array.from({ length: rows }, (_, at) => part(at + 1, random));
}
