import type { Grade } from '../../material/grade.js';
import { punchedHoleAllowed } from '../../rule/jobSpec.js';
import type { Shop } from '../../shop/readShop.js';
import { setting } from '../../shop/setting.js';
import { type Hole, leastDimensionMm } from '../../tooling/hole.js';
import type { Working } from '../../working/working.js';
import type { HoleMaking } from './reading.js';
import type { HoleGroup } from './rowJob.js';

/** How a hole is made: punched to size, punched under size and reamed, or drilled. */
export interface HoleProcess {
  made: 'punch' | 'ream' | 'drill';
  /** What the punch makes: the hole, or what is left under it for the reamer. */
  punched: Hole;
  /** Why it is not punched to size. */
  why?: HoleMaking;
}

const underMm = 2;

/**
 * How a hole group may be made under the job's specification. Where it may not be punched to size,
 * the punching checks hold for what is punched, if anything.
 */
export function holeProcess(
  group: HoleGroup,
  thicknessMm: number,
  grade: Grade,
  shop: Shop,
  working?: Working,
): HoleProcess {
  const { hole, bolt, by, finishing } = group;
  if (by === 'drill' || by === 'burn') {
    return { made: 'drill', punched: hole, why: { by: 'row', process: by } };
  }
  // The size of a tapped hole is that of its thread: what is drilled for it is smaller.
  if (finishing?.includes('tap')) return { made: 'drill', punched: hole, why: { by: 'row', process: 'tap' } };
  const input = {
    spec: setting(shop, 'jobSpec'),
    leastHoleMm: leastDimensionMm(hole),
    thicknessMm,
    grade,
    ...(bolt ? { boltMm: bolt.diameterMm } : {}),
  };
  const ruling = punchedHoleAllowed(input, working);
  if (ruling.allowed) return { made: 'punch', punched: hole };
  const because = ruling.reason;
  const under = hole.shape === 'round' ? hole.diameterMm - underMm : 0;
  if (ruling.instead === 'drill' || hole.shape !== 'round' || under <= 0) {
    return { made: 'drill', punched: hole, why: { by: 'job specification', process: 'drill', because } };
  }
  return {
    made: 'ream',
    punched: { shape: 'round', diameterMm: under },
    why: { by: 'job specification', process: ruling.instead, because },
  };
}
