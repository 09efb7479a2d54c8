import type { Working } from '../working/working.js';
import type { Finding } from './finding.js';
import { pressSource, shareFinding } from './limit.js';
import type { Press } from './press.js';

interface PlateShare {
  forceN: number;
  /** The force the plate's own size takes at the plate's reference strength. */
  plateForceN: number;
  /** `flat shear`. */
  station: string;
  /** `14 × 1/2 in`. */
  plateSize: string;
}

/**
 * The share of a shear station: the force of the part over the force of the plate's own size, so that the
 * plate's size in mild steel reads exactly 100 %. Source: common practice, no source.
 */
export function plateShareFinding(press: Press, share: PlateShare, working?: Working): Finding {
  const { forceN, plateForceN, station, plateSize } = share;
  const use = forceN / plateForceN;
  working?.step({
    title: 'Share of rating',
    formula: 'use = F / R',
    values: [
      { symbol: 'F', meaning: 'force of the cut', kind: 'force', value: forceN },
      {
        symbol: 'R',
        meaning: `force of the plate's ${plateSize} at the plate's strength`,
        kind: 'force',
        value: plateForceN,
      },
    ],
    result: { symbol: 'use', meaning: 'share of rating', kind: 'ratio', value: use },
    source: pressSource,
  });
  return shareFinding(press, use, forceN, station);
}
