import { handlingSeconds } from '../shop/handlingClasses.js';
import type { Working } from '../working/working.js';
import type { Rate, Rates } from './rates.js';

/** What of a row's time a share is. */
export type ShareKind =
  | 'holder changes'
  | 'tool changes'
  | 'gauge settings'
  | 'first piece'
  | 'bars staged'
  | 'bars lifted'
  | 'trim cuts'
  | 'lifts'
  | 'holes marked out'
  | 'hits'
  | 'cuts'
  | 'bites'
  | 'bends'
  | 'deburring'
  | 'piece marks';

/** So many of something, each of which takes so long. */
export interface TimeShare {
  of: ShareKind;
  count: number;
  secondsEach: number;
  seconds: number;
  /** Items that stand in it and that the shop has not given. */
  invented: readonly string[];
  /** Of setting the press, once a row; not of its pieces. */
  isSetup: boolean;
}

/** What is done to a piece by strokes of one station. */
export interface StrokeWork {
  of: 'hits' | 'cuts' | 'bites' | 'bends';
  perPiece: number;
  stroke: Rate;
}

/** What is done for a row, counted. */
export interface RowWork {
  qty: number;
  pieceKg: number;
  pieceMm: number;
  /** None where the press does not cut the pieces. */
  bars?: { count: number; kg: number; lengthMm: number };
  holderChanges: number;
  toolChanges: number;
  gaugeSettings: number;
  liftsPerPiece: number;
  markedHolesPerPiece: number;
  strokes: readonly StrokeWork[];
}

export interface RowTime {
  shares: readonly TimeShare[];
  setupSeconds: number;
  /** With the efficiency of the shop. */
  seconds: number;
}

/**
 * The time a row takes on its press: setting it up, staging the bars, and every piece.
 *
 * Formula: t = (setup + bars · (staging + lift + trim cut) + q · (lifts + marking out + hits · (position + stroke) +
 * cuts · (advance + stroke) + deburring + mark)) / η
 * @param work what is done, counted; masses in kg, lengths in mm
 * @param rates what each of it takes, in seconds
 * @param working collects every share when given
 * @returns the shares in seconds, and their sum over the efficiency
 * Valid for counts from zero and an efficiency above 0 up to 1.
 * @example 10 pieces with 4 hits of 12 s + 4 s each take 640 s for the hits
 * Source: common practice, no source.
 */
export function rowTime(work: RowWork, rates: Rates, working?: Working): RowTime {
  const shares = sharesOf(work, rates).filter(({ count }) => count > 0);
  const sum = shares.reduce((total, { seconds }) => total + seconds, 0);
  const setupSeconds = shares.reduce((total, each) => total + (each.isSetup ? each.seconds : 0), 0);
  const seconds = sum / rates.efficiency;
  for (const share of shares) shareStep(share, working);
  working?.step({
    title: 'Time on the press',
    formula: 't = Σ shares / η',
    values: [
      ...shares.map((share) => ({
        symbol: share.of,
        meaning: share.of,
        kind: 'seconds' as const,
        value: share.seconds,
      })),
      { symbol: 'η', meaning: 'efficiency', kind: 'ratio', value: rates.efficiency },
    ],
    result: { symbol: 't', meaning: 'time of the row', kind: 'minutes', value: seconds },
    source: 'common practice, no source',
  });
  return { shares, setupSeconds: setupSeconds / rates.efficiency, seconds };
}

function sharesOf(work: RowWork, rates: Rates): TimeShare[] {
  const { qty, bars, strokes } = work;
  const { handling } = rates;
  const setup = (of: ShareKind, count: number, rate: Rate) => ({
    ...share(of, count, [rate]),
    isSetup: true,
  });
  const liftOf = (massKg: number, lengthMm: number): Rate => ({
    item: handling.item,
    seconds: handlingSeconds(handling.classes, { massKg, lengthMm }),
    invented: handling.invented,
  });
  const perCut = strokes.find(({ of }) => of === 'cuts')?.stroke;
  const worked = strokes.reduce((sum, { of, perPiece }) => sum + (of === 'bends' ? 0 : perPiece), 0);
  const before = { hits: rates.positionHit, bites: rates.positionHit, bends: rates.positionHit };
  return [
    ...(rates.sharedSetup
      ? []
      : [
          setup('holder changes', work.holderChanges, rates.holderChange),
          setup('tool changes', work.toolChanges, rates.toolChange),
        ]),
    setup('gauge settings', work.gaugeSettings, rates.gaugeChange),
    setup('first piece', 1, rates.firstPiece),
    ...(bars && perCut
      ? [
          share('bars staged', bars.count, [rates.stageBar]),
          share('bars lifted', bars.count, [liftOf(bars.kg, bars.lengthMm)]),
          share('trim cuts', bars.count, [rates.advanceCut, perCut]),
        ]
      : []),
    share('lifts', qty * work.liftsPerPiece, [liftOf(work.pieceKg, work.pieceMm)]),
    share('holes marked out', qty * work.markedHolesPerPiece, [rates.markOutHole]),
    ...strokes.map(({ of, perPiece, stroke }) =>
      share(of, qty * perPiece, [of === 'cuts' ? rates.advanceCut : before[of], stroke]),
    ),
    share('deburring', qty * worked, [rates.deburr]),
    share('piece marks', qty, [rates.pieceMark]),
  ];
}

function share(of: ShareKind, count: number, rates: readonly Rate[]): TimeShare {
  const secondsEach = rates.reduce((sum, { seconds }) => sum + seconds, 0);
  const invented = rates.filter((rate) => rate.invented && rate.seconds > 0).map(({ item }) => item);
  return { of, count, secondsEach, seconds: count * secondsEach, invented, isSetup: false };
}

function shareStep({ of, count, secondsEach, seconds, invented }: TimeShare, working?: Working): void {
  working?.step({
    title: `Time: ${of}`,
    formula: 't = n · s',
    values: [
      { symbol: 'n', meaning: of, kind: 'count', value: count },
      { symbol: 's', meaning: 'time of one', kind: 'seconds', value: secondsEach },
    ],
    result: { symbol: 't', meaning: of, kind: 'seconds', value: seconds },
    source: 'the times of the press and the shop; common practice, no source',
    ...(invented.length === 0
      ? {}
      : { cautions: [`Invented until the shop gives its own: ${invented.join(', ')}.`] }),
  });
}
