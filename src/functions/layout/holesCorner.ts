import { cornerHoles } from '../../core/layout/cornerHoles.js';
import { lengthArgument, optionalLengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';
import { holesGiven, spilledHoles } from './spilledHoles.js';

export const holesCorner = define({
  name: 'HOLESCORNER',
  purpose: 'Where four holes lie, one in each corner of a plate',
  arguments: {
    length: lengthArgument('length', 'Length of the plate'),
    width: lengthArgument('width', 'Width of the plate'),
    fromEnd: lengthArgument('distance', 'From each end to the centers'),
    shop: shopOrUnitArgument,
    fromSide: optionalLengthArgument('distance', 'From each side to the centers', 'as from the ends'),
  },
  result: 'cells',
  gives: `${holesGiven}. Bottom left, bottom right, top left, top right.`,
  errors: '#VALUE! when a distance reaches the middle of the plate.',
  source: 'common practice, no source',
  example: '=TONROW.HOLESCORNER(12,10,2)',
  compute({ length, width, fromEnd, fromSide }, { unit }, working) {
    const plate = { lengthMm: length, widthMm: width, fromEndMm: fromEnd, fromSideMm: fromSide ?? fromEnd };
    return spilledHoles(cornerHoles({ ...plate, unit }, working), unit);
  },
});
