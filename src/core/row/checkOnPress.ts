import { shearStrengthMPa } from '../material/shearStrength.js';
import type { Finding } from '../press/finding.js';
import { limitOf, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { punchFindings } from '../press/punchStation.js';
import { shearFindings } from '../press/shearStation.js';
import { formatLength } from '../quantity/formatLength.js';
import { kilogramPerPound } from '../quantity/units.js';
import { leastThicknessMm } from '../section/leastThickness.js';
import type { Section } from '../section/section.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Working } from '../working/working.js';
import { describeHole } from '../tooling/hole.js';
import type { HolePlace } from './holePlace.js';
import { reachFindings } from './reach.js';
import type { HoleGroup, RowJob } from './rowJob.js';
import { toolFindings } from './toolOnHand.js';

/** A row whose section and grade were read, with the place of each of its hole groups. */
export interface ReadyRow extends RowJob {
  section: Section;
  grade: NonNullable<RowJob['grade']>;
  massKg?: number;
  places: { group: HoleGroup; place: HolePlace }[];
}

/** Everything one press has to say about a row: the cut, the holes, the supports. */
export function checkOnPress(press: Press, row: ReadyRow, shop: Shop, working?: Working): Finding[] {
  if (press.problem !== undefined)
    return [{ verdict: 'Check input', governs: press.name, note: press.problem }];
  return [
    ...cutFindings(press, row, shop, working),
    ...row.places.flatMap(({ group, place }) => holeFindings(press, row, group, place, shop, working)),
    ...supportFindings(press, row, shop),
  ];
}

function cutFindings(press: Press, row: ReadyRow, shop: Shop, working?: Working): Finding[] {
  const { section, grade, miterRad, lengthMm } = row;
  const { unit } = shop;
  const thicknessMm = leastThicknessMm(section);
  const strength = shearStrengthMPa({ grade, thicknessMm, shearRatio: setting(shop, 'shearRatio') }, working);
  const findings = shearFindings(press, { section, shearStrengthMPa: strength, miterRad, unit }, working);
  const stationMissing = findings.some((finding) => finding.verdict === 'No station');
  if (section.kind !== 'flat' || lengthMm === undefined || stationMissing) return findings;
  return [...findings, ...shortestPieceFindings(press, lengthMm, unit)];
}

/** The hold-down cannot grip a piece shorter than its own width. */
function shortestPieceFindings(press: Press, lengthMm: number, unit: Shop['unit']): Finding[] {
  const shortest = limitOf(press, 'flatShearShortestPiece');
  if (typeof shortest !== 'number') return [shortest];
  // `none` reads as no limit, which for a least length is any length.
  if (!Number.isFinite(shortest) || lengthMm >= shortest) return [];
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const note = `a piece ${size(lengthMm)} long is shorter than ${press.name} can hold, ${size(shortest)}.`;
  return [{ verdict: "Can't reach", governs: 'flat shear shortest piece', note }];
}

function holeFindings(
  press: Press,
  row: ReadyRow,
  group: HoleGroup,
  place: HolePlace,
  shop: Shop,
  working?: Working,
): Finding[] {
  const { thicknessMm } = place;
  const { grade } = row;
  const job = {
    hole: group.hole,
    thicknessMm,
    shearStrengthMPa: shearStrengthMPa(
      { grade, thicknessMm, shearRatio: setting(shop, 'shearRatio') },
      working,
    ),
    holeToThickness: setting(shop, 'holeToThickness'),
    punchAllowanceMPa: setting(shop, 'punchAllowanceMPa'),
    unit: shop.unit,
  };
  const station = punchFindings(press, job, working);
  if (station.some((finding) => finding.verdict === 'No station')) return station;
  const named = station.map((finding) => ({
    ...finding,
    governs: `${finding.governs}, ${describeHole(group.hole, shop.unit)}`,
  }));
  return [
    ...named,
    ...reachFindings(press, row.section, group, place, shop.unit),
    ...toolFindings(press, group.hole, thicknessMm, grade, shop),
  ];
}

function supportFindings(press: Press, { lengthMm, massKg }: ReadyRow, { unit }: Shop): Finding[] {
  const findings: Finding[] = [];
  if (lengthMm !== undefined) {
    findings.push(
      ...withinLimit(press, {
        key: 'longestBar',
        sizeMm: lengthMm,
        what: `a part ${formatLength(lengthMm, unit)} ${unit} long`,
        unit,
      }),
    );
  }
  return massKg === undefined ? findings : [...findings, ...heaviestFindings(press, massKg, unit)];
}

function heaviestFindings(press: Press, massKg: number, unit: Shop['unit']): Finding[] {
  const limit = limitOf(press, 'heaviestBar');
  if (typeof limit !== 'number') return [limit];
  if (massKg <= limit) return [];
  const mass = (kg: number) =>
    unit === 'in' ? `${(kg / kilogramPerPound).toFixed(0)} lb` : `${kg.toFixed(0)} kg`;
  const note = `a part of ${mass(massKg)} is over ${press.name}'s heaviest bar, ${mass(limit)}.`;
  return [{ verdict: 'Too big', governs: 'heaviest bar', note }];
}
