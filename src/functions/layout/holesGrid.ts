import { gridHoles } from '../../core/layout/gridHoles.js';
import { holeCountArgument } from '../argument/holeCount.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';
import { holesGiven, spilledHoles } from './spilledHoles.js';

export const holesGrid = define({
  name: 'HOLESGRID',
  purpose: 'Where holes in columns and rows lie, evenly spaced over a plate',
  arguments: {
    length: lengthArgument('length', 'Length of the plate'),
    width: lengthArgument('width', 'Width of the plate'),
    columns: holeCountArgument('Holes along the plate'),
    rows: holeCountArgument('Holes across the plate'),
    fromEnd: lengthArgument('distance', 'From each end to the outer holes'),
    fromSide: lengthArgument('distance', 'From each side to the outer holes'),
    shop: shopOrUnitArgument,
  },
  result: 'cells',
  gives: `${holesGiven}. Row by row from the bottom, each from the left.`,
  errors: '#VALUE! when nothing is left between the outer holes, or there are more than 10,000 holes.',
  source: 'common practice, no source',
  example: '=TONROW.HOLESGRID(12,9,3,2,1.5,3)',
  compute({ length, width, columns, rows, fromEnd, fromSide }, { unit }, working) {
    const plate = { lengthMm: length, widthMm: width, fromEndMm: fromEnd, fromSideMm: fromSide };
    return spilledHoles(gridHoles({ ...plate, columns, rows, unit }, working), unit);
  },
});
