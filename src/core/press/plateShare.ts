import type { PressFinding } from '../check/finding.js';
import type { Operation, PlateSize } from '../check/pressFact.js';
import { forceValue, lengthValue, ratioValue, stressValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { pressSource } from './limit.js';
import type { Press } from './press.js';
import { shareFinding } from './share.js';

interface PlateShare {
  operation: Operation;
  forceN: number;
  /** The force the plate's own size takes at the plate's reference strength. */
  plateForceN: number;
  plate: PlateSize;
}

/**
 * The share of a shear station: the force of the part over the force of the plate's own size, so that the
 * plate's size in mild steel reads exactly 100%. Source: common practice, no source.
 */
export function plateShareFinding(press: Press, share: PlateShare, working?: Working): PressFinding {
  const { operation, forceN, plateForceN, plate } = share;
  const use = forceN / plateForceN;
  working?.step({
    title: 'Share of rating',
    formula: 'use = F / R',
    values: [
      forceValue('F', 'force of the cut', forceN),
      forceValue('R', 'force of the rated size at its strength', plateForceN),
      ...plate.sizesMm.map((sizeMm, at) => lengthValue(`s${at + 1}`, 'rated size', sizeMm)),
      stressValue('τ', 'strength of the rated size', plate.strengthMPa),
    ],
    result: ratioValue('use', 'share of rating', use),
    source: pressSource,
  });
  return shareFinding(press, { operation, use, forceN, ratingN: plateForceN, plate });
}
