import { refuse } from '../../core/inputError.js';
import { circleHoles } from '../../core/layout/circleHoles.js';
import { holeCountArgument } from '../argument/holeCount.js';
import { lengthArgument, optionalLengthArgument } from '../argument/length.js';
import { optionalAngleArgument } from '../argument/number.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';
import { spilledHoles } from './spilledHoles.js';

export const holesCircle = define({
  name: 'HOLESCIRCLE',
  purpose: 'Where holes on a circle lie, evenly spaced, as the bolts of a flange',
  arguments: {
    diameter: lengthArgument('length', 'Diameter of the circle through the centers'),
    count: holeCountArgument('How many holes'),
    shop: shopOrUnitArgument,
    startAngle: {
      ...optionalAngleArgument(
        'Angle of the first hole in degrees, counter-clockwise from the length of the plate',
        360,
      ),
      kind: 'full angle',
    },
    centerX: optionalLengthArgument('distance', 'From the left end to the center of the circle', '0'),
    centerY: optionalLengthArgument('distance', 'From the bottom edge to the center of the circle', '0'),
  },
  result: 'cells',
  gives:
    'x and y of each hole in in or mm, without a heading, counter-clockwise. They count from the left end and the bottom edge where the center is given, else from the center.',
  errors: '#VALUE! when only one distance of the center is given.',
  source: 'plane geometry',
  example: '=TONROW.HOLESCIRCLE(7.5,8,"in",22.5,4.5,4.5)',
  compute({ diameter, count, startAngle, centerX, centerY }, { unit }, working) {
    if ((centerX === undefined) !== (centerY === undefined)) {
      const blank = centerX === undefined ? 'Center x' : 'Center y';
      return refuse(blank, '', 'the cell is blank.', 'Give both distances of the center, or neither.');
    }
    const center = { x: centerX ?? 0, y: centerY ?? 0 };
    return spilledHoles(
      circleHoles({ diameterMm: diameter, count, startRad: startAngle, center }, working),
      unit,
    );
  },
});
