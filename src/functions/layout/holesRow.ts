import { rowHolesMm } from '../../core/layout/rowHoles.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import { holeCountArgument } from '../argument/holeCount.js';
import { lengthArgument, optionalLengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';
import { holesGiven } from './spilledHoles.js';

export const holesRow = define({
  name: 'HOLESROW',
  purpose: 'Where the holes of a row lie, evenly spaced between both ends',
  arguments: {
    length: lengthArgument('length', 'Length of the part'),
    end: lengthArgument('distance', 'From each end to the outer hole'),
    count: holeCountArgument('How many holes, at least'),
    shop: shopOrUnitArgument,
    greatestPitch: optionalLengthArgument(
      'distance',
      'Greatest pitch; there are more holes where it asks for them',
      'no limit',
    ),
    y: optionalLengthArgument('distance', 'From the bottom edge or heel to the row', 'y stays blank'),
  },
  result: 'cells',
  gives: `${holesGiven}.`,
  errors: '#VALUE! when nothing is left between the outer holes, or more than 1,000 holes are asked for.',
  source: 'common practice, no source',
  example: '=TONROW.HOLESROW(120,3,4,"in",24,2)',
  compute({ length, end, count, greatestPitch, y }, { unit }, working) {
    const row = { lengthMm: length, endMm: end, count, unit };
    const most = greatestPitch === undefined ? {} : { greatestPitchMm: greatestPitch };
    const across = y === undefined ? '' : inShopUnit(y, 'length', unit);
    return rowHolesMm({ ...row, ...most }, working).map((x) => [inShopUnit(x, 'length', unit), across]);
  },
});
