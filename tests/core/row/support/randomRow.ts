// Rows of a parts list at random, with what may stand in the cells that place their work.
import fc from 'fast-check';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';

export type Cells = Record<string, CellValue>;

const pick = <Value>(...values: Value[]) => fc.constantFrom(...values);
const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((parts) => parts / 16);

const sections = [
  'PL3/8X8',
  'PL1/4X4',
  'PL1/2X2',
  'FB 3/8x3',
  'FB 1/4x1-1/2',
  'L4X4X3/8',
  'L5X3X1/4',
  'C6X8.2',
];

const holes = ['9/16', '11/16', '13/16', '1', '13/16x1-7/8', 'SQ 3/4', '3/4 x 1-1/4 rect'];

/** Cells that define the work: they are given in every row. */
const work = fc.record({
  Section: pick(...sections),
  Grade: pick('A36', 'A572-50'),
  Press: pick('Bay A'),
  Hole: pick(...holes, null),
  Holes: pick(1, 1, 2, 3, 4, 6),
  'Hole 2': pick(null, null, '9/16', '13/16'),
  'Holes 2': pick(1, 2),
  'Notch width': pick(null, null, null, 1),
  'Corner clip': pick(null, null, null, '3/4'),
  'Bend length': pick(null, null, null, 1.5),
  'Miter left': pick(null, null, null, 30),
  Finish: pick(null, 'galvanized'),
  'Gage of a plate': pick(null, null, 1.5, 2.5),
});

/** What may stand in the cells that place the work. */
const likely = {
  Length: fc.oneof(sixteenths(24, 60), sixteenths(2, 60)),
  Edge: fc.oneof(pick(1.25, 1.5, 2), sixteenths(0.5, 4)),
  End: fc.oneof(pick(1.5, 2, 3), sixteenths(0.5, 6)),
  Pitch: fc.oneof(pick(2.5, 3, 4), sixteenths(0.75, 5)),
  Gage: fc.oneof(pick(1.75, 2.5), sixteenths(0.75, 4)),
};
const places = fc.record({
  ...likely,
  Bolt: pick('1/2', '5/8', '3/4', 'none'),
  Leg: pick('long', 'short', 'web', 'flange'),
  Slot: pick('along', 'across'),
  'Edge kind': pick('sheared', 'rolled', 'sawn'),
  'End kind': pick('sheared', 'sawn'),
  'Edge 2': likely.Edge,
  'End 2': fc.tuple(pick('', 'right '), likely.End).map(([end, size]) => `${end}${size}`),
  'Pitch 2': likely.Pitch,
  'Gage 2': likely.Gage,
  'Bolt 2': pick('1/2', '3/4', 'none'),
  'Leg 2': pick('long', 'short', 'web', 'flange'),
  'Notch at': pick('bottom left', 'top right', 'left end', 'bottom edge 3'),
  'Clip at': pick('bottom left', 'bottom right', 'top left', 'top right'),
  'Bend at': pick('left end 2', 'bottom edge 1', 'right end 4', 'top edge 3/4'),
  'Long side': pick('left bottom', 'left top', 'left heel', 'left toe'),
  'Miter leg': pick('both', 'long', 'short'),
});

/** Places that do not fit the work, such as a leg of a plate, are left out. */
function fitting(given: Cells, all: Cells): Cells {
  const section = String(given.Section);
  const isFlat = section.startsWith('PL') || section.startsWith('FB');
  const isAngle = section.startsWith('L');
  const fits = (heading: string): boolean => {
    const second = heading.endsWith(' 2');
    const hole = given[second ? 'Hole 2' : 'Hole'];
    const base = heading.replace(/ 2$/, '');
    switch (base) {
      case 'Length':
        return true;
      case 'Leg': {
        const word = String(all[heading]);
        return (
          hole !== null &&
          (isAngle ? word === 'long' || word === 'short' : !isFlat && (word === 'web' || word === 'flange'))
        );
      }
      case 'Slot':
        return hole === '13/16x1-7/8';
      case 'Pitch':
        return hole !== null && Number(given[second ? 'Holes 2' : 'Holes']) > 1;
      case 'Gage':
        // Of a plate or web it says that there are two lines, which is what is asked for, not where.
        return hole !== null && isAngle;
      case 'Edge kind':
        return hole !== null && section.startsWith('PL');
      case 'Notch at':
        return given['Notch width'] !== null && isFlat;
      case 'Clip at':
        return given['Corner clip'] !== null && isFlat;
      case 'Bend at':
        return given['Bend length'] !== null && isFlat;
      case 'Long side':
        return (
          given['Miter left'] !== null && (isAngle ? /heel|toe/ : /bottom|top/).test(String(all[heading]))
        );
      case 'Miter leg':
        return given['Miter left'] !== null && isAngle;
      default:
        return hole !== null;
    }
  };
  return Object.fromEntries(Object.entries(all).filter(([heading]) => fits(heading)));
}

/** A row with the work it asks for, and every cell that places it, filled in. */
export const wholeRow = fc.tuple(work, places).map(([given, all]) => {
  const { 'Gage of a plate': gage, ...own }: Cells = { ...given };
  if (/^(?:PL|FB)/.test(String(own.Section)) && own.Hole !== null) own.Gage = gage ?? null;
  if (own.Hole === null) own.Holes = null;
  if (own['Hole 2'] === null) own['Holes 2'] = null;
  if (own['Notch width'] !== null) own['Notch depth'] = 1;
  if (own['Corner clip'] !== null) own.Corners = 1;
  return { given: own, places: fitting(own, all) };
});
