import type { Finding } from '../check/finding.js';
import { type Verdict, verdictKind } from '../check/verdict.js';
import type { Press } from '../press/press.js';
import { type CellValue, meant, plainText } from '../quantity/cellValue.js';
import { type CheckedPart, checkedPart } from '../row/checkRow.js';
import { rowKindOf } from '../row/rowKind.js';
import { toolsForHole } from '../row/toolsForHole.js';
import type { ToolSet } from '../setup/toolOrder/changes.js';
import { type ToolOrder, toolOrder } from '../setup/toolOrder/toolOrder.js';
import type { Shop } from '../shop/readShop.js';
import type { Tool } from '../shop/readTools.js';
import { nameKey } from '../shop/table.js';
import { withPressColumn } from './onEachPress.js';
import { operationsOf } from './operations.js';

/** A punch and the die for it. */
export interface ToolPair {
  punch: Tool;
  die: Tool;
}

/** A mark that is not in the order, and why. */
export interface LeftMark {
  mark: string;
  verdict: Verdict;
  finding?: Finding;
}

/** The marks of a list on one press, by the tools they need. */
export interface ListToolOrder {
  /** What stands in Mark, by its place in the orders; the row of the list, from 1, where that is blank. */
  marks: readonly string[];
  order: ToolOrder;
  /** The tools that a set of the orders stands for. */
  pairOf: (set: ToolSet) => ToolPair | undefined;
  /** Marks that this press does not make as they stand, or that cannot be read. */
  left: readonly LeftMark[];
  /** How many marks name another press, how many have nothing to punch, and how many rows are no parts. */
  elsewhere: number;
  notPunched: number;
  noParts: number;
  /** Tools besides those of the punch that the list needs: of the notcher, of the bend. */
  otherTools: number;
  /** Punches in the order whose holder the shop does not name: they count as of one family. */
  withoutHolder: readonly Tool[];
}

/**
 * The order in which the marks of a parts list are punched on a press, with the fewest changes of holder and then of
 * tools. Marks that name another press are left out; one that names none is taken on this press.
 * @param list headings and rows of the list, as they stand in the sheet
 * @param press the press that makes them; it has a punch station
 * @param shop the shop with its tools
 * @returns the orders, the tools, and what is not in them
 * Valid for any list with headings; throws `invalid` where there is no Section column.
 * Source: common practice, no source.
 */
export function listToolOrder(
  list: readonly (readonly CellValue[])[],
  press: Press,
  shop: Shop,
): ListToolOrder {
  const [titles = [], ...rows] = list;
  const { headings, at } = withPressColumn(titles);
  const marks: string[] = [];
  const needed: ToolSet[][] = [];
  const left: LeftMark[] = [];
  const keys = new ToolKeys(shop);
  const otherTools = new Set<OtherTools>();
  let [elsewhere, notPunched, noParts] = [0, 0, 0];
  rows.forEach((cells, row) => {
    const kind = rowKindOf(cells, headings);
    if (kind !== 'part') {
      if (kind !== 'blank') noParts += 1;
      return;
    }
    const named = meant(cells[at]);
    if (named !== null && nameKey(named) !== nameKey(press.name)) {
      elsewhere += 1;
      return;
    }
    const onPress = [...cells];
    onPress[at] = press.name;
    const cell = meant(cells[headings.fields.mark?.at ?? -1]);
    const mark = cell === null ? `row ${row + 1}` : plainText(String(cell));
    const checked = checkedPart(onPress, headings, shop);
    const sets = setsOf(checked, press, shop, keys);
    if (Array.isArray(sets)) for (const each of otherToolsOf(checked, press)) otherTools.add(each);
    if (!Array.isArray(sets)) left.push({ mark, ...sets });
    else if (sets.length === 0) notPunched += 1;
    else {
      marks.push(mark);
      needed.push(sets);
    }
  });
  const withoutHolder = keys.punches().filter(({ holder }) => holder === undefined);
  const pairOf = (set: ToolSet) => keys.pairOf(set);
  return {
    marks,
    order: toolOrder(needed),
    pairOf,
    left,
    elsewhere,
    notPunched,
    noParts,
    otherTools: otherTools.size,
    withoutHolder,
  };
}

type OtherTools = 'notcher' | 'bend';

/** The tools besides those of the punch that a mark needs; none of one that is not made. */
function otherToolsOf({ result, part }: CheckedPart, press: Press): OtherTools[] {
  if (result.blank || !part || verdictKind(result.verdict) === 'fails') return [];
  const work = operationsOf(part.row, part.layouts.layouts[0], result.findings, press);
  return work.flatMap(({ is }): OtherTools[] =>
    is === 'bend' ? ['bend'] : is === 'notch' || is === 'clip' ? ['notcher'] : [],
  );
}

/** The sets of tools that a mark needs; of one that is not made as it stands, why. */
function setsOf(
  { result, part }: CheckedPart,
  press: Press,
  shop: Shop,
  keys: ToolKeys,
): ToolSet[] | Omit<LeftMark, 'mark'> {
  if (result.blank) return [];
  const { verdict, deciding, findings } = result;
  const notMade = { verdict, ...(deciding ? { finding: deciding } : {}) };
  if (!part || verdict === 'Check input') return notMade;
  const { row, layouts } = part;
  const isPunched = row.places.some(({ faces }) => faces.some(({ process }) => process.made !== 'drill'));
  if (!isPunched) return [];
  if (verdictKind(verdict) === 'fails') return notMade;
  const work = operationsOf(row, layouts.layouts[0], findings, press);
  const sets: ToolSet[] = [];
  for (const operation of work) {
    if (operation.is !== 'punch') continue;
    const tools = toolsForHole(press, operation.hole, operation.thicknessMm, row.grade, shop);
    if (tools.is === 'stopped') return { verdict: tools.finding.verdict, finding: tools.finding };
    if (tools.is === 'picked') sets.push(keys.setOf(tools));
  }
  return sets;
}

/** Tools by keys, as the order takes them: their places in the table. */
class ToolKeys {
  private readonly pairs = new Map<string, ToolPair>();
  private readonly places: ReadonlyMap<Tool, number>;

  constructor({ tools }: Shop) {
    this.places = new Map(tools?.tools.map((tool, place) => [tool, place]));
  }

  setOf({ punch, die }: ToolPair): ToolSet {
    const set = { holder: nameKey(punch.holder), punch: this.keyOf(punch), die: this.keyOf(die) };
    this.pairs.set(`${set.punch} ${set.die}`, { punch, die });
    return set;
  }

  pairOf({ punch, die }: ToolSet): ToolPair | undefined {
    return this.pairs.get(`${punch} ${die}`);
  }

  punches(): Tool[] {
    return [...new Set([...this.pairs.values()].map(({ punch }) => punch))];
  }

  private keyOf(tool: Tool): string {
    return String(this.places.get(tool) ?? '');
  }
}
