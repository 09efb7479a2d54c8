import { boltBasis, boltOf } from '../row/layout/boltBasis.js';
import type { HoleGroup } from '../row/job/rowJob.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import { leastDimensionMm } from '../tooling/hole.js';
import type { GaugeHole } from './gaugeSetting.js';

/** Of a piece up to 30 ft long, and of one that is longer: 1/16 in and 1/8 in. AISC 303, 6.4.1 (from memory). */
const lengthTolerance = { toMm: 30 * 304.8, shortMm: 25.4 / 16, longMm: 25.4 / 8 };
/** Of a plate or bar across: 1/16 in. Common practice, no source. */
const widthToleranceMm = 25.4 / 16;
const roundingMm = 1e-6;

/**
 * How the holes of a group are bound to each other by what they meet: undefined where they meet no bolt, or where their
 * clearance covers the tolerances of length and width together, so that any way round will do. A bolt that is read from
 * a standard hole counts as one.
 */
export function matingOf(group: HoleGroup, lengthMm: number, shop: Shop): GaugeHole['mating'] {
  const bolt = boltOf(boltBasis(group, shop.unit, setting(shop, 'edgeCode')));
  if (!bolt) return undefined;
  const clearanceMm = leastDimensionMm(group.hole) - bolt.diameterMm + roundingMm;
  const { toMm, shortMm, longMm } = lengthTolerance;
  const lengthToleranceMm = lengthMm <= toMm ? shortMm : longMm;
  if (clearanceMm >= lengthToleranceMm + widthToleranceMm) return undefined;
  return clearanceMm >= lengthToleranceMm ? 'either end' : 'one end';
}
