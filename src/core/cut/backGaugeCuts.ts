import { verdictKind, type Verdict } from '../check/verdict.js';
import { toleranceMm } from '../part/tolerance.js';
import type { Press } from '../press/press.js';
import { isCutBySaw } from '../press/shearStation.js';
import type { CheckedPart } from '../row/checkRow.js';
import { isCutElsewhere } from '../row/job/needsPress.js';
import type { Piece } from '../row/piece.js';
import type { ReadyRow } from '../row/job/readyRow.js';
import { type BackGaugeSetting, backGaugeSetting, gaugeReachMm } from './backGaugeSetting.js';

/** A checked row of a list, with its mark. */
export interface MarkedPart extends CheckedPart {
  mark: string;
}

/** Like pieces, cut at one setting of the back gauge. */
export interface GaugeCut extends BackGaugeSetting {
  /** Long point to long point. */
  lengthMm: number;
  miterLeftRad: number;
  miterRightRad: number;
  /** Of an angle that is mitered: the hands of its cuts. */
  hand?: Piece['hand'];
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
 * Formula: as `backGaugeSetting` has it
 * @param parts the checked rows, in the order of the list
 * @param press the press; rows that stand for another are left aside, and so is what it does not cut
 * @returns lengths in mm, angles in rad; sections in the order of the list
 * Valid for every list. Throws nothing.
 * @example backGaugeCuts([{ mark: 'A1', ...checkedPart(cells, headings, shop) }], press).sections
 * Source: plane geometry; the plate and manual of the press.
 */
export function backGaugeCuts(parts: readonly MarkedPart[], press: Press): BackGaugeCuts {
  const reachMm = gaugeReachMm(press);
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
    addCut(same.cuts, cutOf(part.row, piece, press), { mark, qty });
  }
  const sections = [...bySection.values()];
  for (const { cuts } of sections) cuts.sort((a, b) => b.lengthMm - a.lengthMm);
  return { press: press.name, ...(reachMm === undefined ? {} : { reachMm }), sections, left };
}

function isShearedHere(row: ReadyRow): boolean {
  return !isCutBySaw(row.section) && !isCutElsewhere(row);
}

function cutOf(row: ReadyRow, piece: Piece, press: Press): GaugeCut {
  const { miterLeftRad, miterRightRad } = row;
  const hand = piece.hand === undefined ? {} : { hand: piece.hand };
  const gauge = backGaugeSetting(row, piece, press);
  return { lengthMm: piece.longMm, miterLeftRad, miterRightRad, ...hand, ...gauge, pieces: [] };
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
