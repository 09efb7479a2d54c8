import { verdictKind, type Verdict } from '../check/verdict.js';
import { toleranceMm } from '../part/tolerance.js';
import { type Press, pressValue } from '../press/press.js';
import { isCutBySaw } from '../press/shearStation.js';
import type { CheckedPart } from '../row/checkRow.js';
import { isCutElsewhere } from '../row/needsPress.js';
import type { Piece, PieceGap } from '../row/piece.js';
import type { ReadyRow } from '../row/readyRow.js';
import { miterKerfMm } from './miterKerf.js';

/** A checked row of a list, with its mark. */
export interface MarkedPart extends CheckedPart {
  mark: string;
}

/** Like pieces, cut at one setting of the back gauge. */
export interface GaugeCut {
  /** Long point to long point. */
  lengthMm: number;
  miterLeftRad: number;
  miterRightRad: number;
  /** Of an angle that is mitered: the hands of its cuts. */
  hand?: Piece['hand'];
  /** What is pushed to the stop, with the slug; or what leaves it open. */
  setting: { mm: number } | { gap: PieceGap | 'Angle shear slug' };
  reach: 'within' | 'over' | 'unknown';
  /** What starts the stroke. Beyond the reach nothing is touched, so it is the pedal. */
  starts: 'touch' | 'pedal' | 'unknown';
  pieces: readonly { mark: string; qty: number }[];
}

/** The cuts of one section in one grade, longest first. */
export interface SectionCuts {
  section: string;
  grade: string;
  cuts: readonly GaugeCut[];
}

export interface BackGaugeCuts {
  press: string;
  /** Infinity where the press says `none`; missing where it says nothing. */
  reachMm?: number;
  sections: readonly SectionCuts[];
  /** Rows of the press that are no work for it as they stand. */
  left: readonly { mark: string; verdict: Verdict }[];
}

/**
 * What the shears of a press cut of a list at the back gauge: for each section and grade the lengths, longest first, each
 * with the setting of the gauge.
 *
 * Formula: p = e + k / cos θ2, as `cutLengthMm` has it; k the slug of the angle shear, 0 for flats and bars
 * @param parts the checked rows, in the order of the list
 * @param press the press; rows that stand for another are left aside, and so is what it does not cut
 * @returns lengths in mm, angles in rad; sections in the order of the list
 * Valid for every list. Throws nothing.
 * @example backGaugeCuts([{ mark: 'A1', ...checkedPart(cells, headings, shop) }], press).sections
 * Source: plane geometry; the plate and manual of the press.
 */
export function backGaugeCuts(parts: readonly MarkedPart[], press: Press): BackGaugeCuts {
  const limit = pressValue(press, 'backGaugeReach');
  const reachMm =
    limit.state === 'value' ? limit.value : limit.state === 'none' ? Number.POSITIVE_INFINITY : undefined;
  const bySection = new Map<string, { section: string; grade: string; cuts: GaugeCut[] }>();
  const left: { mark: string; verdict: Verdict }[] = [];
  for (const { mark, result, part } of parts) {
    if (result.blank || result.press !== press.name || !part || !isShearedHere(part.row)) continue;
    const { verdict, piece } = result;
    const kind = verdictKind(verdict);
    if (!piece || kind === 'fails' || kind === 'unknown') {
      left.push({ mark, verdict });
      continue;
    }
    const { section, grade, qty } = part.row;
    const key = JSON.stringify([section.designation, grade.name]);
    const same = bySection.get(key) ?? { section: section.designation, grade: grade.name, cuts: [] };
    bySection.set(key, same);
    addCut(same.cuts, cutOf(part.row, piece, press, reachMm), { mark, qty });
  }
  const sections = [...bySection.values()];
  for (const { cuts } of sections) cuts.sort((a, b) => b.lengthMm - a.lengthMm);
  return { press: press.name, ...(reachMm === undefined ? {} : { reachMm }), sections, left };
}

function isShearedHere(row: ReadyRow): boolean {
  return !isCutBySaw(row.section) && !isCutElsewhere(row);
}

function cutOf(row: ReadyRow, piece: Piece, press: Press, reachMm: number | undefined): GaugeCut {
  const { miterLeftRad, miterRightRad } = row;
  const setting = settingOf(row, piece, press);
  const reach =
    reachMm === undefined || !('mm' in setting)
      ? 'unknown'
      : setting.mm <= reachMm + toleranceMm
        ? 'within'
        : 'over';
  const starts = reach === 'over' ? 'pedal' : startsOf(press);
  const hand = piece.hand === undefined ? {} : { hand: piece.hand };
  return { lengthMm: piece.longMm, miterLeftRad, miterRightRad, ...hand, setting, reach, starts, pieces: [] };
}

function settingOf({ section, miterRightRad }: ReadyRow, piece: Piece, press: Press): GaugeCut['setting'] {
  const { least, most } = piece.leftLong;
  if (least < most) return { gap: piece.gap ?? 'Long side' };
  const slug = section.kind === 'angle' ? pressValue(press, 'angleShearSlug') : ({ state: 'none' } as const);
  if (slug.state === 'none') return { mm: least };
  if (slug.state !== 'value') return { gap: 'Angle shear slug' };
  return { mm: least + miterKerfMm({ kerfMm: slug.value, miterRad: miterRightRad }) };
}

function startsOf(press: Press): GaugeCut['starts'] {
  const starts = pressValue(press, 'backGaugeStartsStroke');
  if (starts.state !== 'value') return 'unknown';
  return starts.value === 0 ? 'pedal' : 'touch';
}

/** Pieces of one length with the same ends are one setting, whatever their marks. */
function addCut(cuts: GaugeCut[], cut: GaugeCut, pieces: { mark: string; qty: number }): void {
  const at = cuts.findIndex((each) => isSameCut(each, cut));
  const same = cuts[at];
  if (same) cuts[at] = { ...same, pieces: [...same.pieces, pieces] };
  else cuts.push({ ...cut, pieces: [pieces] });
}

function isSameCut(a: GaugeCut, b: GaugeCut): boolean {
  const isClose = (one: number, other: number) => Math.abs(one - other) <= toleranceMm;
  const isSameSetting =
    'mm' in a.setting && 'mm' in b.setting
      ? isClose(a.setting.mm, b.setting.mm)
      : JSON.stringify(a.setting) === JSON.stringify(b.setting);
  return (
    isSameSetting &&
    JSON.stringify(a.hand) === JSON.stringify(b.hand) &&
    isClose(a.lengthMm, b.lengthMm) &&
    isClose(a.miterLeftRad, b.miterLeftRad) &&
    isClose(a.miterRightRad, b.miterRightRad)
  );
}
