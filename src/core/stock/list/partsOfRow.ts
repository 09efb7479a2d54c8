import { verdictKind } from '../../check/verdict.js';
import type { Press } from '../../press/press.js';
import { isCutBySaw } from '../../press/shearStation.js';
import type { CheckedPart } from '../../row/checkRow.js';
import { isCutElsewhere } from '../../row/job/needsPress.js';
import type { ReadyRow } from '../../row/job/readyRow.js';
import { reasonOf } from '../../say/reasonOf.js';
import type { Shop } from '../../shop/readShop.js';
import { nestedEnds, turningOf } from './nestedEnds.js';
import type { JobPart, LeftOut, StockJobOptions } from './stockJob.js';

/** Where a row stands. */
export interface RowPlace {
  list: string;
  row: number;
  mark: string;
}

/** A part with its width in the plane of its miters; 0 where it is square or not nested. */
export type PartOfRow = JobPart & { widthMm: number };

/** Cells without which it is not known what is cut. */
const neededCells = [
  'Qty',
  'Length',
  'Feet',
  'Inches',
  'Section',
  'Grade',
  'Cut by',
  'Miter',
  'Miter left',
  'Miter right',
  'Miter leg',
  'Long side',
];

/** The parts that are cut for a checked row, one for each hand where they differ; or why there are none. */
export function partsOfRow(
  { result, part }: CheckedPart,
  place: RowPlace,
  shop: Shop,
  options: StockJobOptions,
): { parts: readonly PartOfRow[]; row: ReadyRow } | { why: LeftOut } {
  if (result.blank) return { why: { is: 'not read', sentence: '' } };
  const row = part?.row;
  if (!row) return { why: { is: 'not read', sentence: reasonOf(result, shop.unit) } };
  const why = whyLeftOut(row, result, options, shop);
  if (why) return { why };
  const press = shop.presses.find(({ name }) => name === result.press);
  return { parts: handed(row, place, result.verdict, press, shop), row };
}

function whyLeftOut(
  row: ReadyRow,
  result: Exclude<CheckedPart['result'], { blank: true }>,
  options: StockJobOptions,
  { unit }: Shop,
): LeftOut | undefined {
  if (row.cutBy === 'bought') return { is: 'bought' };
  if (row.section.kind === 'flat' && row.section.form === 'plate' && row.stock !== 'from bar') {
    return { is: 'plate' };
  }
  const unclear = row.unclear?.find(({ cell }) => neededCells.includes(cell));
  if (unclear) return { is: 'not read', sentence: reasonOf(result, unit) };
  if (row.lengthMm === undefined) return { is: 'no length' };
  // Miters that leave no piece.
  if (result.piece && result.piece.short.most < 0)
    return { is: 'not read', sentence: reasonOf(result, unit) };
  const kind = verdictKind(result.verdict);
  if (options.withoutFailing && kind === 'fails') return { is: 'asked', kind };
  if (options.withoutOffPress && kind === 'elsewhere') return { is: 'asked', kind: 'off press' };
  return undefined;
}

function handed(
  row: ReadyRow,
  { list, row: at, mark }: RowPlace,
  verdict: JobPart['verdict'],
  press: Press | undefined,
  { unit }: Shop,
): PartOfRow[] {
  const longMm = row.lengthMm ?? 0;
  const ends = nestedEnds(row, unit);
  const { miterLeftRad, miterRightRad } = row;
  const base = { mark, list, row: at, longMm, miterLeftRad, miterRightRad, verdict };
  const isSheared = !isCutBySaw(row.section) && !isCutElsewhere(row);
  const made = { ...base, isSheared, ...(press ? { press } : {}) };
  if ('notNested' in ends) {
    const { notNested } = ends;
    const drawn = { ...made, middleMm: longMm, leanLeftRad: 0, leanRightRad: 0, widthMm: 0, notNested };
    return bothHands({ ...drawn, pieces: row.qty }, row);
  }
  const { leanLeftRad, leanRightRad, widthMm } = ends;
  const middleMm = longMm - (widthMm * (Math.tan(miterLeftRad) + Math.tan(miterRightRad))) / 2;
  const drawn: PartOfRow = { ...made, ...ends, middleMm, pieces: row.qty };
  const isSame = turningOf(row.section) === 'over and round' || leanLeftRad === -leanRightRad;
  return isSame ? [drawn] : bothHands(drawn, row);
}

/** The pieces as drawn and those of the other hand, the mirror image: the heel stays at the fence, left and right change places. */
function bothHands(drawn: PartOfRow, { hands }: ReadyRow): PartOfRow[] {
  const { right, left } = hands ?? { right: 0, left: 0 };
  if (right === 0 || left === 0) return [drawn];
  const { leanLeftRad, leanRightRad, miterLeftRad, miterRightRad } = drawn;
  const mirrored = {
    miterLeftRad: miterRightRad,
    miterRightRad: miterLeftRad,
    leanLeftRad: 0 - leanRightRad,
    leanRightRad: 0 - leanLeftRad,
  };
  return [
    { ...drawn, pieces: right },
    { ...drawn, ...mirrored, pieces: left, isOtherHand: true },
  ];
}
