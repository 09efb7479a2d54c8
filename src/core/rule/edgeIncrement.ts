import { atMost } from '../atMost.js';
import { mmPer } from '../quantity/units.js';
import { requirePositive } from '../requireRange.js';
import { lengthValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { holeByCode } from './boltHole.js';
import { type BoltSize, ownDiameter } from './boltSize.js';
import { incrementInch, incrementMetric, longSlotIncrementFactor } from './edgeDistanceTables.js';
import type { KnownDistance } from './leastDistance.js';

const sameSize = 0.001;

export interface EdgeIncrement {
  incrementMm: number;
  beyondTable?: NonNullable<KnownDistance['beyondTable']>;
  source: string;
}

/**
 * What a hole that is larger than the standard one for its bolt adds to the least edge distance.
 *
 * Formula: C2 by table for oversize holes and short slots; a longer slot C2 = 3/4 · d − (l0 − l) / 2 with the code's
 * long slot l0, never under that of a short one; half of what exceeds the largest hole or slot of the code is added
 * @param input the bolt; width of the hole, and length over all of a slot whose length lies towards the edge, in mm
 * @param working collects the step when given
 * @returns increment in mm; whether the hole is larger than the code knows
 * Valid for the bolts of Tables J3.3 and J3.3M; throws `unknown` for others.
 * @example edgeIncrement({ bolt: readBolt('3/4', 'Bolt', 'in'), widthMm: 23.8125 }).incrementMm // 1.5875
 * Source: AISC 360-22 Tables J3.5 and J3.5M with their footnote; the excess over the largest hole: common practice.
 */
export function edgeIncrement(
  input: { bolt: BoltSize; widthMm: number; lengthTowardsMm?: number },
  working?: Working,
): EdgeIncrement {
  const { bolt, widthMm, lengthTowardsMm } = input;
  requirePositive('Hole', widthMm);
  const { source } = tableOf(bolt);
  const round = roundIncrement(bolt, widthMm);
  const slot = lengthTowardsMm === undefined ? round : slotIncrement(bolt, lengthTowardsMm);
  const more = slot.incrementMm > round.incrementMm ? slot : round;
  working?.step({
    title: 'Increment for the hole',
    formula: 'C2 by table; longer slots 3/4 · d − (l0 − l) / 2',
    values: [
      lengthValue('w', 'width of the hole', widthMm),
      ...(lengthTowardsMm === undefined
        ? []
        : [lengthValue('l', 'length towards the edge', lengthTowardsMm)]),
      textValue('', 'bolt', bolt.name),
    ],
    result: lengthValue('C2', 'increment of the edge distance', more.incrementMm),
    source,
  });
  return { ...more, source };
}

type Increment = Omit<EdgeIncrement, 'source'>;

function tableOf(bolt: BoltSize) {
  return bolt.system === 'in' ? incrementInch : incrementMetric;
}

function roundIncrement(bolt: BoltSize, widthMm: number): Increment {
  const oversizeMm = holeByCode({ bolt, fit: 'oversize', code: 'AISC' }).widthMm;
  if (atMost(widthMm, holeByCode({ bolt, fit: 'standard', code: 'AISC' }).widthMm)) return { incrementMm: 0 };
  const incrementMm = tabled(bolt, 'oversize');
  return atMost(widthMm, oversizeMm)
    ? { incrementMm }
    : { incrementMm: incrementMm + (widthMm - oversizeMm) / 2, beyondTable: 'larger than oversize' };
}

/** Along the line that the footnote of the table draws, from the short slot over the long one and beyond. */
function slotIncrement(bolt: BoltSize, lengthMm: number): Increment {
  const shortMm = holeByCode({ bolt, fit: 'short slot', code: 'AISC' }).lengthMm ?? 0;
  const longMm = holeByCode({ bolt, fit: 'long slot', code: 'AISC' }).lengthMm ?? 0;
  const ofShortMm = tabled(bolt, 'shortSlot');
  if (atMost(lengthMm, shortMm)) return { incrementMm: ofShortMm };
  const incrementMm = Math.max(
    ofShortMm,
    longSlotIncrementFactor * bolt.diameterMm + (lengthMm - longMm) / 2,
  );
  return atMost(lengthMm, longMm) ? { incrementMm } : { incrementMm, beyondTable: 'longer than a long slot' };
}

function tabled(bolt: BoltSize, fit: 'oversize' | 'shortSlot'): number {
  const row = tableOf(bolt).rows.find((each) => ownDiameter(bolt) <= each.upToDiameter + sameSize);
  return (row?.[fit] ?? 0) * mmPer[bolt.system];
}
