import type { Finding } from '../check/finding.js';
import { refusal } from '../check/finding.js';
import { shearStrengthMPa } from '../material/shearStrength.js';
import { governsOf, limitStep, roundingShare, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { type ShearMinimum, shearMinimums } from '../press/shearMinimums.js';
import { isCutBySaw, shearFindings } from '../press/shearStation.js';
import { leastThicknessMm } from '../section/leastThickness.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Working } from '../working/working.js';
import { isCutElsewhere } from './needsPress.js';
import type { ReadyRow } from './readyRow.js';

/** The cut of a row at the shear its section needs; nothing where a saw or something else cuts it. */
export function cutFindings(press: Press, row: ReadyRow, shop: Shop, working?: Working): Finding[] {
  const { section, grade, miterRad } = row;
  if (isCutBySaw(section) || isCutElsewhere(row)) return [];
  const thicknessMm = leastThicknessMm(section);
  const strength = shearStrengthMPa({ grade, thicknessMm, shearRatio: setting(shop, 'shearRatio') }, working);
  const findings = shearFindings(press, { section, shearStrengthMPa: strength, miterRad }, working);
  if (findings.some(({ verdict }) => verdict === 'No station')) return findings;
  const shortestMm = shortestSideMm(row);
  const part = shortestMm === undefined ? { section } : { section, lengthMm: shortestMm };
  const minimums = shearMinimums(press, part, working).map((minimum) => minimumFinding(press, minimum, working));
  return [...findings, ...ripFindings(press, row, working), ...minimums, ...handFindings(press, row)];
}

/** A plate that is cut from sheet is ripped along its length, which must fit the blade. */
function ripFindings(press: Press, { stock, lengthMm }: ReadyRow, working?: Working): Finding[] {
  if (stock !== 'from sheet' || lengthMm === undefined) return [];
  return [
    withinLimit(press, { item: 'flatShearBladeLength', sized: { is: 'rip' }, given: lengthMm }, working),
  ];
}

/** A mitered piece is held on its shorter side; where its long sides are not known, on the shortest it may have. */
function shortestSideMm({ lengthMm, section, miterLeftRad, miterRightRad }: ReadyRow): number | undefined {
  if (lengthMm === undefined) return undefined;
  const widthMm =
    section.kind === 'flat' ? section.widthMm : section.kind === 'angle' ? Math.max(section.legAMm, section.legBMm) : 0;
  return Math.max(0, lengthMm - widthMm * (Math.tan(miterLeftRad) + Math.tan(miterRightRad)));
}

/** A shear cannot grip and cut a piece that is shorter, or a section that is smaller, than it can hold. */
function minimumFinding(
  press: Press,
  { key: item, sizeMm, limit }: ShearMinimum,
  working?: Working,
): Finding {
  const about = { press: press.name } as const;
  if (limit.state === 'bad') return refusal(limit.failure, governsOf(item), { ...about, ofPressCell: true });
  const sized = item.endsWith('ShortestPiece') ? 'piece' : 'section';
  if (limit.state === 'none') {
    return { rule: 'shear minimum', outcome: 'held', verdict: 'OK', ...about, item, sized, given: sizeMm ?? 0, limit: 0, from: 'press' };
  }
  if (sizeMm === undefined) {
    const cell = { cell: 'Length' };
    return { rule: 'blank cell', outcome: 'open', verdict: 'Not checked', ...about, cell, unchecked: 'shortest piece', item };
  }
  const { leastMm, from } = limit;
  const held = sizeMm >= leastMm * (1 - roundingShare);
  const verdict = held ? 'OK' : "Can't reach";
  if (from === 'press') {
    const meaning = sized === 'piece' ? 'length of the piece' : 'size of the section';
    limitStep(working, press, item, { kind: 'length', value: sizeMm, meaning }, '≥', verdict);
  }
  const outcome = held ? 'held' : 'failed';
  return { rule: 'shear minimum', outcome, verdict, ...about, item, sized, given: sizeMm, limit: leastMm, from };
}

/** A shear that miters one leg only cannot be known to make a part whose mitered leg, or both of whose ends, differ. */
function handFindings(press: Press, { section, miterLeftRad, miterRightRad, miterLeg }: ReadyRow): Finding[] {
  const legs = press.values.angleShearLegsMitered;
  if (section.kind !== 'angle' || legs?.state !== 'value' || legs.value !== 1) return [];
  if (miterLeftRad === 0 && miterRightRad === 0) return [];
  const both = miterLeftRad > 0 && miterRightRad > 0;
  if (!both && miterLeg !== undefined && miterLeg !== 'both') return [];
  return [
    {
      rule: 'blank cell',
      outcome: 'open',
      verdict: 'Not checked',
      press: press.name,
      cell: { cell: 'Miter leg' },
      unchecked: 'hand of the miter',
      item: 'angleShearLegsMitered',
    },
  ];
}
