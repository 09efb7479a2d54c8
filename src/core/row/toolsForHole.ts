import type { Finding } from '../check/finding.js';
import type { Grade } from '../material/grade.js';
import type { Press } from '../press/press.js';
import { refuseBadCell } from '../press/refuseBadCell.js';
import { stationOf } from '../press/stationOf.js';
import type { Shop } from '../shop/readShop.js';
import type { Tool } from '../shop/readTools.js';
import { type Hole, leastDimensionMm } from '../tooling/hole.js';
import type { Working } from '../working/working.js';
import { pickTools } from './pickTools.js';
import { pickFinding } from './toolOnHand.js';

/** What one hole is punched with; `clearanceMm` is what the two leave between them, both sides together. */
export type HoleTools =
  | { is: 'picked'; punch: Tool; die: Tool; clearanceMm: number }
  /** A tool is lacking, the press has no punch station, or what decides it is not known. */
  | { is: 'stopped'; finding: Finding }
  | { is: 'no list of tools' };

/** Sizes of tools are told to this part of a mm; what is finer comes from units. */
const parts = 1e7;

/**
 * The punch and die that are picked for one hole on a press, or what stops it.
 * @param press the press, with its punch station and the largest body it takes
 * @param hole the hole, of the same size as its punch
 * @param thicknessMm thickness of the material in mm
 * @param grade grade of the material
 * @param shop the shop with its tools and settings
 * @param working collects the steps when given
 * @returns the tools, lengths in mm
 * Valid for thicknesses above zero; throws `invalid` otherwise, and for a cell of the press that cannot be read.
 * Source: common practice, no source.
 */
export function toolsForHole(
  press: Press,
  hole: Hole,
  thicknessMm: number,
  grade: Grade,
  shop: Shop,
  working?: Working,
): HoleTools {
  const [station] = stationOf(press, 'punch', working).findings;
  refuseBadCell(station);
  if (station) return { is: 'stopped', finding: station };
  const pick = pickTools(press, hole, thicknessMm, grade, shop, working);
  if (!pick) return { is: 'no list of tools' };
  const { punch, die, body } = pick;
  if (!punch || !die || body === 'not known') {
    return { is: 'stopped', finding: pickFinding(press, hole, pick, shop) };
  }
  const gapMm = leastDimensionMm(die.size) - leastDimensionMm(punch.size);
  return { is: 'picked', punch, die, clearanceMm: Math.round(gapMm * parts) / parts };
}
