import { type Finding, refusal } from '../check/finding.js';
import type { Range } from '../check/range.js';
import { shearStrengthMPa } from '../material/shearStrength.js';
import { bladeFindings } from '../press/bladeLimit.js';
import { governsOf, limitStep, roundingShare, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { type ShearMinimum, shearMinimums } from '../press/shearMinimums.js';
import { rememberedBy } from '../rememberedBy.js';
import { isCutBySaw, shearFindings } from '../press/shearStation.js';
import { leastThicknessMm } from '../section/leastThickness.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Working } from '../working/working.js';
import { handFindings } from './handOnPress.js';
import { isCutElsewhere } from './job/needsPress.js';
import type { ReadyRow } from './job/readyRow.js';
import { shortestSide } from './shortestSide.js';

const remembered = rememberedBy<readonly Finding[]>();
const rememberedLeast = rememberedBy<readonly ShearMinimum[]>();

/** The cut of a row at the shear its section needs; nothing where a saw or something else cuts it. */
export function cutFindings(press: Press, row: ReadyRow, shop: Shop, working?: Working): readonly Finding[] {
  const { section, grade } = row;
  if (isCutBySaw(section) || isCutElsewhere(row)) return [];
  const thicknessMm = leastThicknessMm(section);
  const strength = shearStrengthMPa({ grade, thicknessMm, shearRatio: setting(shop, 'shearRatio') }, working);
  const findings: Finding[] = [];
  for (const rad of cutsOf(row)) {
    const shear = () => shearFindings(press, { section, shearStrengthMPa: strength, miterRad: rad }, working);
    findings.push(...(working ? shear() : remembered(press, section, [strength, rad], shear)));
  }
  if (findings.some(({ verdict }) => verdict === 'No station')) return findings;
  findings.push(...bladeFindings(press, { grade, thicknessMm }, working));
  const shortest = shortestSide(row, shop.unit);
  const practice = () => shearMinimums(press, { section }, working);
  const least = working ? practice() : rememberedLeast(press, section, [], practice);
  const found = [...findings, ...ripFindings(press, row, working)];
  for (const minimum of least) {
    if (minimum.sizeMm !== undefined) found.push(minimumFinding(press, minimum, minimum.sizeMm, working));
    else found.push(...pieceFindings(press, minimum, shortest, row, working));
  }
  found.push(...handFindings(press, row, working));
  return found;
}

/** The angles a part is cut at: the steeper miter, and square where an end is square. */
function cutsOf({ miterRad, miterLeftRad, miterRightRad }: ReadyRow): number[] {
  return miterRad > 0 && (miterLeftRad === 0 || miterRightRad === 0) ? [miterRad, 0] : [miterRad];
}

/** A plate that is cut from sheet is ripped along its length, which must fit the blade. */
function ripFindings(press: Press, { stock, lengthMm }: ReadyRow, working?: Working): Finding[] {
  if (stock !== 'from sheet' || lengthMm === undefined) return [];
  return [
    withinLimit(press, { item: 'flatShearBladeLength', sized: { is: 'rip' }, given: lengthMm }, working),
  ];
}

/** A mitered piece is held on its shortest side. Miters that meet leave none: that is told of the part. */
function pieceFindings(
  press: Press,
  minimum: ShearMinimum,
  shortest: Range | undefined,
  { longSide, miterLeftRad, miterRightRad }: ReadyRow,
  working?: Working,
): Finding[] {
  if (shortest === undefined) {
    return minimum.limit.state === 'value'
      ? [openPiece(press, minimum, 'Length')]
      : [minimumFinding(press, minimum, 0, working)];
  }
  if (shortest.most <= 0) return [];
  const best = minimumFinding(press, minimum, shortest.most);
  const worst = minimumFinding(press, minimum, shortest.least);
  if (best.outcome === worst.outcome) return [minimumFinding(press, minimum, shortest.least, working)];
  const bothEnds = miterLeftRad > 0 && miterRightRad > 0;
  const sided = longSide?.left !== undefined && longSide.right !== undefined;
  return [openPiece(press, minimum, bothEnds && !sided ? 'Long side' : 'Miter leg')];
}

function openPiece(press: Press, { key: item }: ShearMinimum, cell: string): Finding {
  return {
    rule: 'blank cell',
    outcome: 'open',
    verdict: 'Not checked',
    press: press.name,
    cell: { cell },
    unchecked: 'shortest piece',
    item,
  };
}

/** A shear cannot grip and cut a piece that is shorter, or a section that is smaller, than it can hold. */
function minimumFinding(
  press: Press,
  { key: item, limit }: ShearMinimum,
  sizeMm: number,
  working?: Working,
): Finding {
  const about = { press: press.name } as const;
  if (limit.state === 'bad') return refusal(limit.failure, governsOf(item), { ...about, ofPressCell: true });
  const sized = item.endsWith('ShortestPiece') ? 'piece' : 'section';
  if (limit.state === 'none') {
    return {
      rule: 'shear minimum',
      outcome: 'held',
      verdict: 'OK',
      ...about,
      item,
      sized,
      given: sizeMm,
      limit: 0,
      from: 'press',
    };
  }
  const { leastMm, from } = limit;
  const held = sizeMm >= leastMm * (1 - roundingShare);
  const verdict = held ? 'OK' : "Can't reach";
  if (from === 'press') {
    const meaning = sized === 'piece' ? 'length of the piece' : 'size of the section';
    limitStep(working, press, item, { kind: 'length', value: sizeMm, meaning }, '≥', verdict);
  }
  const outcome = held ? 'held' : 'failed';
  return {
    rule: 'shear minimum',
    outcome,
    verdict,
    ...about,
    item,
    sized,
    given: sizeMm,
    limit: leastMm,
    from,
  };
}
