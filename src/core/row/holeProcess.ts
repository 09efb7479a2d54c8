import type { Grade } from '../material/grade.js';
import { punchedHoleAllowed } from '../rule/jobSpec.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import { type Hole, leastDimensionMm } from '../tooling/hole.js';
import type { Working } from '../working/working.js';
import type { HolePlace } from './holePlace.js';
import type { HoleGroup } from './rowJob.js';

/** How a hole is made: punched to size, punched under size and reamed, or drilled. */
export interface HoleProcess {
  made: 'punch' | 'ream' | 'drill';
  /** What the punch makes: the hole, or what is left under it for the reamer. */
  punched: Hole;
  /** Why it is not punched to size, for the note. */
  reason?: string;
}

const underMm = 2;

/**
 * How a hole group may be made under the job's specification. Where it may not be punched to size,
 * the punching checks hold for what is punched, if anything.
 */
export function holeProcess(
  group: HoleGroup,
  place: HolePlace,
  grade: Grade,
  shop: Shop,
  working?: Working,
): HoleProcess {
  const { hole, bolt, title, by } = group;
  if (by === 'drill' || by === 'burn') {
    const how = by === 'drill' ? 'drilled' : 'burned';
    return {
      made: 'drill',
      punched: hole,
      reason: `${title}: ${how}, as the row says; not checked on a press`,
    };
  }
  const input = {
    spec: setting(shop, 'jobSpec'),
    leastHoleMm: leastDimensionMm(hole),
    thicknessMm: place.thicknessMm,
    grade,
    ...(bolt ? { boltMm: bolt.diameterMm } : {}),
  };
  const ruling = punchedHoleAllowed(input, working);
  if (ruling.allowed) return { made: 'punch', punched: hole };
  const under = hole.shape === 'round' ? hole.diameterMm - underMm : 0;
  if (ruling.instead === 'drill' || hole.shape !== 'round' || under <= 0) {
    return { made: 'drill', punched: hole, reason: `${title}: drill it; ${ruling.reason}` };
  }
  const reason = `${title}: punch 2 mm under and ream; ${ruling.reason}`;
  return { made: 'ream', punched: { shape: 'round', diameterMm: under }, reason };
}
