import { verdictKind, type Verdict } from '../check/verdict.js';
import { slugMm } from '../cut/backGaugeSetting.js';
import { type Failure, InputError } from '../inputError.js';
import { isInvented } from '../press/isInvented.js';
import type { Press } from '../press/press.js';
import type { CheckedPart } from '../row/checkRow.js';
import type { Layouts } from '../row/layout/layoutOf.js';
import type { ReadyRow } from '../row/job/readyRow.js';
import type { RouteStep } from '../row/route.js';
import type { CheckedRow } from '../row/rowResult.js';
import { findPress } from '../shop/findPress.js';
import type { Shop } from '../shop/readShop.js';
import type { Working } from '../working/working.js';
import { itemName } from '../press/limit.js';
import { barsOf } from './barsOf.js';
import { gaugeUse, punchPasses, type PunchPass } from './gaugeUse.js';
import { type Operation, operationsOf } from './operations.js';
import { ratesOf } from './rates.js';
import { rowMoney, type RowMoney } from './rowMoney.js';
import { type RowTime, rowTime, type RowWork } from './rowTime.js';
import { strokeRate } from './strokeRate.js';
import { type ToolSets, toolSetsOf } from './toolSets.js';

/** A row that its press makes: how long it takes and what it costs. */
export interface TimedRow {
  is: 'timed';
  press: string;
  /** The numbers of the press are invented. */
  isInventedPress: boolean;
  verdict: Verdict;
  time: RowTime;
  money: RowMoney;
  /** Steps of the route that are not on a press, and so not in the time. */
  elsewhere: readonly RouteStep[];
  /** Holders of the punches are not all known: their changes are not counted. */
  holdersNotKnown: boolean;
  /** Items of the press that are not known, and what was taken for them. */
  assumed: readonly { item: string; as: number }[];
  /** Tools are the run's: their changes are not in the row. */
  sharedSetup: boolean;
}

/** What is known of the work on a row; data only. */
export type RowWorkResult =
  | { is: 'blank' }
  /** The row fails, or a cell of it cannot be read: no press makes it as it stands. */
  | { is: 'not made'; verdict: Verdict }
  /** Nothing of it is done on a press. */
  | { is: 'off press'; elsewhere: readonly RouteStep[] }
  | { is: 'no length' }
  /** A cell that the time needs cannot be read. */
  | { is: 'refused'; failure: Failure }
  | TimedRow;

/**
 * The time and the cost of one row of a parts list on its press, from the part as it was checked.
 * @param checked the row and its part, as `checkedPart` gives them
 * @param shop the shop's presses, tools and settings
 * @param working collects every share when given
 * @returns the result as data; never throws for what a cell of the row or the shop holds
 * Source: common practice, no source.
 */
export function workOnChecked({ result, part }: CheckedPart, shop: Shop, working?: Working): RowWorkResult {
  if (result.blank) return { is: 'blank' };
  return part ? workOnPart(result, part, shop, working) : { is: 'not made', verdict: result.verdict };
}

function workOnPart(
  result: CheckedRow,
  part: { row: ReadyRow; layouts: Layouts },
  shop: Shop,
  working?: Working,
): RowWorkResult {
  const { verdict, press: name, route } = result;
  if (verdict === 'Off press') return { is: 'off press', elsewhere: route };
  const isRead = verdict !== 'Check input';
  if (!isRead || verdictKind(verdict) === 'fails' || name === undefined) return { is: 'not made', verdict };
  if (part.row.lengthMm === undefined || part.row.massKg === undefined) return { is: 'no length' };
  try {
    return timed(result, part, findPress(name, 'Press', shop), shop, working);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { is: 'refused', failure: error.failure };
  }
}

function timed(
  result: CheckedRow,
  { row, layouts }: { row: ReadyRow; layouts: Layouts },
  press: Press,
  shop: Shop,
  working?: Working,
): TimedRow {
  const operations = operationsOf(row, layouts.layouts[0], result.findings, press);
  const rates = ratesOf(press, shop);
  const tools = toolSetsOf(operations, row, press, shop);
  const passes = punchPasses(operations, { row, layouts }, press, shop);
  const setUp = { operations, tools, passes };
  const counted = (qty: number, steps?: Working) => workOf(row, qty, setUp, press, shop, steps);
  const time = rowTime(counted(row.qty, working), rates, working);
  const money = rowMoney(
    {
      qty: row.qty,
      pieceKg: row.massKg ?? 0,
      seconds: time.seconds,
      secondsOf: (pieces) => rowTime(counted(pieces), rates).seconds,
    },
    press,
    shop,
    working,
  );
  return {
    is: 'timed',
    press: press.name,
    isInventedPress: isInvented(press),
    verdict: result.verdict,
    time,
    money,
    elsewhere: operations.flatMap((each) => (each.is === 'elsewhere' ? [each.step] : [])),
    holdersNotKnown: tools.holdersNotKnown,
    sharedSetup: rates.sharedSetup,
    assumed: [...assumedOf(row, press, operations, passes), ...money.assumed],
  };
}

function assumedOf(
  row: ReadyRow,
  press: Press,
  operations: readonly Operation[],
  passes: readonly PunchPass[],
): TimedRow['assumed'] {
  const isCut = operations.some(({ is }) => is === 'cut');
  return [
    ...(gaugeUse(passes, press).stopsNotKnown ? [{ item: itemName('stopsAtOnce'), as: 1 }] : []),
    ...(isCut && slugMm(row, press) === undefined ? [{ item: itemName('angleShearSlug'), as: 0 }] : []),
  ];
}

interface SetUp {
  operations: readonly Operation[];
  tools: ToolSets;
  passes: readonly PunchPass[];
}

function workOf(
  row: ReadyRow,
  qty: number,
  { operations, tools, passes }: SetUp,
  press: Press,
  shop: Shop,
  working?: Working,
): RowWork {
  const { lengthMm: pieceMm = 0, massKg: pieceKg = 0 } = row;
  const isCut = operations.some(({ is }) => is === 'cut');
  const bars = isCut ? barsOf(row, qty, press, shop, working) : undefined;
  const gauge = gaugeUse(passes, press);
  const strokes = operations.flatMap((each): RowWork['strokes'][number][] => {
    switch (each.is) {
      case 'cut':
        return [{ of: 'cuts', perPiece: each.cutsPerPiece, stroke: strokeRate(press, each, shop) }];
      case 'punch':
        return [{ of: 'hits', perPiece: each.holes.length, stroke: strokeRate(press, each, shop) }];
      case 'notch':
      case 'clip':
        return [
          { of: 'bites', perPiece: each.places * each.strokesEach, stroke: strokeRate(press, each, shop) },
        ];
      case 'bend':
        return [{ of: 'bends', perPiece: each.bends, stroke: strokeRate(press, each, shop) }];
      default:
        return [];
    }
  });
  const places = operations.reduce(
    (sum, each) =>
      sum + (each.is === 'notch' || each.is === 'clip' ? each.places : each.is === 'bend' ? each.bends : 0),
    0,
  );
  return {
    qty,
    pieceKg,
    pieceMm,
    ...(bars
      ? { bars: { count: bars.count, kg: (pieceKg / pieceMm) * bars.lengthMm, lengthMm: bars.lengthMm } }
      : {}),
    holderChanges: tools.holderChanges,
    toolChanges: tools.toolChanges,
    gaugeSettings: gauge.settings + (isCut ? 1 : 0),
    liftsPerPiece: gauge.lifts + places,
    markedHolesPerPiece: gauge.marked,
    strokes,
  };
}
