import { notchForceN } from '../../core/force/notch.js';
import type { NotchPlace } from '../../core/force/notchCutLength.js';
import { shearStrengthMPa } from '../../core/material/shearStrength.js';
import { setting } from '../../core/shop/setting.js';
import type { Choice } from '../argument/argument.js';
import { optionalChoiceArgument } from '../argument/choice.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

const places: readonly (Choice & { value: NotchPlace })[] = [
  { value: 'edge', meaning: 'in an edge: cut on three sides' },
  { value: 'corner', meaning: 'off a corner: cut on two sides' },
  { value: 'vee', meaning: 'a vee in an edge: two flanks' },
];

export const notchForce = define({
  name: 'NOTCHFORCE',
  purpose: 'Force to cut a notch in one bite',
  arguments: {
    width: lengthArgument('width', 'Width of the notch, along the edge'),
    depth: lengthArgument('width', 'Depth of the notch, from the edge'),
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopOrUnitArgument,
    where: optionalChoiceArgument('Where the notch is', places, 'edge'),
  },
  result: 'force',
  gives: 'Force in US tons (inch shop) or kN (mm shop): length of the cut × thickness × shear strength.',
  errors: '',
  source: 'common practice, no source; the cut by plane geometry',
  example: '=TONROW.NOTCHFORCE(2,"1-1/2","1/4","A36","in","corner")',
  compute({ width, depth, thickness, grade, shop, where }, _context, working) {
    const shearRatio = setting(shop, 'shearRatio');
    const input = {
      widthMm: width,
      depthMm: depth,
      where: where ?? 'edge',
      thicknessMm: thickness,
      shearStrengthMPa: shearStrengthMPa({ grade, thicknessMm: thickness, shearRatio }, working),
    };
    return notchForceN(input, working);
  },
});
