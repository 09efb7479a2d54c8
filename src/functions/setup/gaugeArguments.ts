import { gaugesOfShop, type GaugesOfShop } from '../../core/setup/gaugesOfShop.js';
import { gaugeSteps } from '../../core/setup/gaugeSteps.js';
import { type ListedHole, requireHoles } from '../../core/setup/requireHoles.js';
import type { Turns } from '../../core/setup/way.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Working } from '../../core/working/working.js';
import { optionalChoiceArgument } from '../argument/choice.js';
import { holesArgument } from '../argument/holes.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';

/** What the functions of gauges take. */
export const gaugeArguments = {
  holes: holesArgument(
    'x and y of the holes: from the end at the stop and the edge at the fence, as the plate lies',
  ),
  length: lengthArgument('length', 'Length of the plate'),
  width: lengthArgument('width', 'Width of the plate'),
  shop: shopOrUnitArgument,
  turns: optionalChoiceArgument<Turns>(
    'Ways round that are allowed',
    [
      { value: 'none', meaning: 'as it lies only: for holes that meet those of another part' },
      { value: 'half', meaning: 'turned end for end, too' },
      { value: 'flip', meaning: 'turned and flipped: burrs on both faces' },
    ],
    'half',
  ),
};

export const gaugeSource =
  'number of orbits of the holes under the ways round (group theory); mating holes: common practice, no source';

interface GaugeCall {
  holes: readonly ListedHole[];
  length: number;
  width: number;
  shop: Shop | undefined;
  turns: Turns | undefined;
}

/** The settings of a call, its steps told. */
export function gaugesOf(
  { holes, length, width, shop, turns = 'half' }: GaugeCall,
  unit: LengthUnit,
  working: Working | undefined,
): GaugesOfShop {
  const plate = { lengthMm: length, widthMm: width };
  requireHoles(holes, plate, unit);
  const found = gaugesOfShop({ ...plate, holes, turns }, shop?.presses ?? []);
  gaugeSteps(found, { ...plate, turns, holes: holes.length }, working);
  return found;
}
