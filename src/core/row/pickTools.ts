import type { Grade } from '../material/grade.js';
import type { Press } from '../press/press.js';
import { bestTool } from '../shop/bestTool.js';
import { greatestClearance } from '../shop/greatestClearance.js';
import type { Shop } from '../shop/readShop.js';
import type { Tool } from '../shop/readTools.js';
import { setting } from '../shop/setting.js';
import { toolText } from '../shop/toolText.js';
import { totalDieClearanceMm } from '../tooling/dieClearance.js';
import { dieSuits } from '../tooling/dieSuits.js';
import { describeHole, type Hole, sidesOf } from '../tooling/hole.js';
import { lengthValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { pickPunch, type PunchPick, toolsOf } from './pickPunch.js';

/** The tools for a hole on a press, and what there is to pick from. */
export interface ToolPick {
  /** The total clearance wanted, both sides together. */
  clearanceMm: number;
  /** The punch of that size that the press takes, or of which that is not known; undefined where there is none. */
  punch?: Tool;
  /** What is known of the body of a punch of that size. */
  body?: PunchPick['body'];
  /** The die for it; undefined where none on hand suits. */
  die?: Tool;
  /** All punches and dies of the hole's shape on hand for the press. */
  punches: readonly Tool[];
  dies: readonly Tool[];
}

/**
 * The punch and the die that are picked for a hole, of those on hand for a press: the punch of its shape and size whose
 * body the press takes; of the dies that suit, the one whose opening is nearest to the hole with the total clearance,
 * the tighter of two that are as near.
 *
 * Formula: c / 2 ≤ D − d ≤ 2 · c, and |D − d − c| least
 * @param press the press that the tools must fit
 * @param hole the hole, of the same size as its punch
 * @param thicknessMm thickness of the material in mm; with the grade it decides the clearance
 * @param grade grade of the material
 * @param shop the shop with its tools and settings
 * @param working collects the steps when given
 * @returns the tools picked, lengths in mm; undefined where the shop keeps no list of tools
 * Valid for thicknesses above zero; throws `invalid` otherwise. The order of the rows in the table makes no difference.
 * Source: common practice, no source.
 */
export function pickTools(
  press: Press,
  hole: Hole,
  thicknessMm: number,
  grade: Grade,
  shop: Shop,
  working?: Working,
): ToolPick | undefined {
  if (!shop.tools) return undefined;
  const method = setting(shop, 'clearanceMethod');
  const clearance = { thicknessMm, method, grade, ...greatestClearance(shop) };
  const clearanceMm = totalDieClearanceMm(clearance, working);
  const { tools } = shop.tools;
  const ofShape = toolsOf(tools, press).filter(({ size }) => size.shape === hole.shape);
  const dies = ofShape.filter(({ kind }) => kind === 'die');
  const found = pickPunch(press, hole, tools, working);
  const pick: ToolPick = { clearanceMm, dies, punches: ofShape.filter(({ kind }) => kind === 'punch') };
  if (found) pick.body = found.body;
  if (found && typeof found.body === 'string') pick.punch = found.punch;
  const suiting = dies.filter(({ size }) => dieSuits({ die: size, punch: hole, clearanceMm }));
  const die = bestTool(suiting, ({ size }) => offWanted(size, hole, clearanceMm));
  if (die) pick.die = die;
  pickStep(pick, hole, shop, working);
  return pick;
}

/** How far a die is from the clearance wanted, in the worse direction; then how wide it is. */
function offWanted(die: Hole, hole: Hole, clearanceMm: number): [number, number] {
  const [opening, size] = [sidesOf(die), sidesOf(hole)];
  const off = (sizeMm: number, openingMm: number) => Math.abs(openingMm - sizeMm - clearanceMm);
  const most = Math.max(off(size.widthMm, opening.widthMm), off(size.lengthMm, opening.lengthMm));
  return [most, opening.widthMm];
}

function pickStep(
  { clearanceMm, punch, die }: ToolPick,
  hole: Hole,
  { unit }: Shop,
  working?: Working,
): void {
  const picked = (tool: Tool | undefined) => (tool ? toolText(tool, unit) : 'none');
  working?.step({
    title: 'Tool on hand',
    formula: 'a punch of the size; a die of hole + c / 2 to hole + 2 c, the nearest to hole + c',
    values: [
      textValue('hole', 'hole', describeHole(hole, unit)),
      lengthValue('c', 'total die clearance', clearanceMm),
      textValue('punch', 'punch picked', picked(punch)),
      textValue('die', 'die picked', picked(die)),
    ],
    result: textValue('verdict', 'outcome of the check', punch && die ? 'OK' : 'No tool'),
    source: 'the Tools table of the shop; common practice, no source',
  });
}
