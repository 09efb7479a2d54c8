import { refuse } from '../inputError.js';
import { toleranceMm } from '../part/tolerance.js';
import { formatLength } from '../quantity/formatLength.js';
import { lengthValue, ratioValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { handOfEnd, legAtShear, type LongPoint } from '../part/cutHand.js';
import { cutLengthMm } from './cutLength.js';
import { miterShortMm } from './miterShort.js';

/** Which way the legs in the plane of a frame of angles point from their heels: into the opening or out of it. */
export type Toes = 'in' | 'out';

export interface Frame {
  /** Over all, to the outside of the legs or flats in the plane. */
  widthMm: number;
  heightMm: number;
  /** Width of the bar in the plane of the frame. */
  barMm: number;
  /** Of angles; undefined for bars that may be turned over. */
  toes?: Toes;
  kerfMm: number;
}

/** Like pieces of a frame. */
export interface FramePieces {
  piece: 'top and bottom' | 'sides' | 'all sides';
  qty: number;
  longMm: number;
  shortMm: number;
  miterRad: number;
  /** What is pushed to the stop, with kerf or slug. */
  pushMm: number;
  /** Of an angle: how the standing leg lies at the shear for each end; each piece has an end of either hand. */
  legs?: { left: 'down' | 'up'; right: 'down' | 'up' };
}

const miterRad = Math.PI / 4;

/**
 * The pieces of a rectangular frame of one bar, mitered at its four corners. The long points are at the outside: at the
 * heels of angles whose toes point in, at the toes of those whose toes point out.
 *
 * Formula: l = W and H; s = l − 2 · b; θ = 45°; pushed to the stop l + k / cos θ
 * @param frame outside width W and height H, width b of the bar in the plane and kerf k, in mm; toes of angles
 * @param working collects the steps when given; the last is the length of bar, Σ n · p
 * @returns the pieces by kind, lengths in mm: two kinds of two, or four alike
 * Valid where the frame has an opening. Throws `invalid` otherwise.
 * @example frameCuts({ widthMm: 1000, heightMm: 500, barMm: 50, kerfMm: 0 }).map(({ shortMm }) => shortMm) // 900, 400
 * Source: plane geometry; the hands are common practice, no source.
 */
export function frameCuts(frame: Frame, working?: Working): FramePieces[] {
  const { widthMm, heightMm, barMm, toes, kerfMm } = frame;
  requireOpening('Width', widthMm, barMm);
  requireOpening('Height', heightMm, barMm);
  const legs = toes && legsOf(toes, working);
  const pieces = (piece: FramePieces['piece'], qty: number, longMm: number): FramePieces => {
    const cut = { longMm, widthMm: barMm, miterLeftRad: miterRad, miterRightRad: miterRad };
    const shortMm = miterShortMm(cut, working);
    const pushMm = cutLengthMm({ ...cut, kerfMm }, working);
    return { piece, qty, longMm, shortMm, miterRad, pushMm, ...(legs ? { legs } : {}) };
  };
  const isSquare = Math.abs(widthMm - heightMm) <= toleranceMm;
  const kinds = isSquare
    ? [pieces('all sides', 4, widthMm)]
    : [pieces('top and bottom', 2, widthMm), pieces('sides', 2, heightMm)];
  const barLengthMm = kinds.reduce((sum, { qty, pushMm }) => sum + qty * pushMm, 0);
  working?.step({
    title: 'Length of bar',
    formula: 'L = Σ n · p',
    values: kinds.flatMap(({ qty, pushMm }, at) => [
      ratioValue(`n${at + 1}`, 'pieces', qty),
      lengthValue(`p${at + 1}`, 'pushed to the stop', pushMm),
    ]),
    result: lengthValue('L', 'length of bar for the frame; flats that nest take less', barLengthMm),
    source: 'plane geometry',
  });
  return kinds;
}

function legsOf(toes: Toes, working?: Working): NonNullable<FramePieces['legs']> {
  const long: LongPoint = toes === 'in' ? 'heel' : 'toe';
  const hands = { left: handOfEnd('left', long), right: handOfEnd('right', long) };
  const legs = { left: legAtShear(hands.left), right: legAtShear(hands.right) };
  working?.step({
    title: 'Hands of the two ends',
    formula: 'the end itself where its long point is at the heel, the other end where it is at the toe',
    values: [
      textValue('toes', 'legs in the plane point', toes),
      textValue('long', 'long points at the', long),
    ],
    result: textValue(
      'hands',
      'hand, and how the other leg lies at the shear',
      `left end ${hands.left}-hand, leg ${legs.left}; right end ${hands.right}-hand, leg ${legs.right}`,
    ),
    source: 'common practice, no source',
    cautions: [
      'This is for a shear whose cut is farther away at its left, as you push the bar away from you. On another, up and down change places.',
    ],
  });
  return legs;
}

function requireOpening(argument: 'Width' | 'Height', sizeMm: number, barMm: number): void {
  if (sizeMm - 2 * barMm > toleranceMm) return;
  const both = (mm: number) => `${formatLength(mm, 'mm')} mm (${formatLength(mm, 'in')} in)`;
  refuse(
    argument,
    formatLength(sizeMm, 'mm'),
    `a frame of bars ${both(barMm)} wide has no opening when it is ${both(sizeMm)} over all.`,
    `Give more than ${both(2 * barMm)}, or a narrower bar.`,
  );
}
