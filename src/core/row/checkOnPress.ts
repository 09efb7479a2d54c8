import { shearStrengthMPa } from '../material/shearStrength.js';
import type { Finding } from '../press/finding.js';
import { governsOf, limitOf, limitStep, roundingShare, unreadable, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { punchFindings } from '../press/punchStation.js';
import { type ShearMinimum, shearMinimums } from '../press/shearMinimums.js';
import { isCutBySaw, shearFindings } from '../press/shearStation.js';
import { formatLength } from '../quantity/formatLength.js';
import { formatMass } from '../quantity/formatMass.js';
import { leastThicknessMm } from '../section/leastThickness.js';
import type { AnySection } from '../section/section.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Working } from '../working/working.js';
import { describeHole } from '../tooling/hole.js';
import { check, type Check } from './check.js';
import type { HolePlace } from './holePlace.js';
import type { HoleProcess } from './holeProcess.js';
import { otherWorkChecks } from './otherWorkChecks.js';
import { reachFindings } from './reach.js';
import type { CutBy, HoleGroup, RowJob } from './rowJob.js';
import { toolFindings } from './toolOnHand.js';

/** A row whose section and grade were read, with the place of each of its hole groups. */
export interface ReadyRow extends RowJob {
  section: AnySection;
  grade: NonNullable<RowJob['grade']>;
  massKg?: number;
  places: PlacedHoles[];
  /** Holes in a solid bar, which no press punches. */
  drilledInBar: boolean;
}

/** A hole group with where it lies and how it is made. */
export interface PlacedHoles {
  group: HoleGroup;
  place: HolePlace;
  process: HoleProcess;
}

/** Whether there is anything in the row for a press: what a saw cuts and a drill drills needs none. */
export function needsPress({ section, places, notches, clips, bends, cutBy }: ReadyRow): boolean {
  const punched = places.some(({ process }) => process.made !== 'drill');
  const cut = !isCutBySaw(section) && !isCutElsewhere({ cutBy });
  return punched || cut || [notches, clips, bends].some((work) => work !== undefined);
}

/** The row says that something else than a press cuts the part. */
export function isCutElsewhere({ cutBy }: { cutBy?: CutBy | undefined }): boolean {
  return cutBy !== undefined && cutBy !== 'press';
}

/** Everything one press has to say about a row: the cut, the holes, the supports. */
export function checkOnPress(press: Press, row: ReadyRow, shop: Shop, asked: boolean): Check[] {
  const { problem } = press;
  if (problem !== undefined) {
    return [check(asked, press.name, () => [unreadable(press.name, problem)])];
  }
  return [
    check(asked, 'cut', (working) => cutFindings(press, row, shop, working)),
    ...row.places
      .filter(({ process }) => process.made !== 'drill')
      .map((placed) =>
        check(asked, placed.group.title, (working) => holeFindings(press, row, placed, shop, working)),
      ),
    ...otherWorkChecks(press, row, shop, asked),
    check(asked, 'supports', (working) => supportFindings(press, row, shop, working)),
  ];
}

function cutFindings(press: Press, row: ReadyRow, shop: Shop, working?: Working): Finding[] {
  const { section, grade, miterRad, lengthMm } = row;
  if (isCutBySaw(section) || isCutElsewhere(row)) return [];
  const { unit } = shop;
  const thicknessMm = leastThicknessMm(section);
  const strength = shearStrengthMPa({ grade, thicknessMm, shearRatio: setting(shop, 'shearRatio') }, working);
  const findings = shearFindings(press, { section, shearStrengthMPa: strength, miterRad, unit }, working);
  const stationMissing = findings.some((finding) => finding.verdict === 'No station');
  if (stationMissing) return findings;
  const part = lengthMm === undefined ? { section } : { section, lengthMm };
  const minimums = shearMinimums(press, part, working).flatMap((minimum) =>
    minimumFinding(press, minimum, unit, working),
  );
  return [...findings, ...minimums];
}

/** A shear cannot grip and cut a piece that is shorter, or a section that is smaller, than it can hold. */
function minimumFinding(
  press: Press,
  { key, sizeMm, limit }: ShearMinimum,
  unit: Shop['unit'],
  working?: Working,
): Finding[] {
  if (limit.state === 'bad') return [unreadable(governsOf(key), limit.message)];
  if (limit.state === 'none' || sizeMm === undefined) return [];
  const { leastMm, from } = limit;
  const held = sizeMm >= leastMm * (1 - roundingShare);
  const isPiece = key.endsWith('ShortestPiece');
  const meaning = isPiece ? 'length of the piece' : 'size of the section';
  if (from === 'press') {
    const size = { kind: 'length', value: sizeMm, meaning } as const;
    limitStep(working, press, key, size, '≥', held ? 'OK' : "Can't reach");
  }
  if (held) return [];
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const limitWords = `${size(leastMm)}${from === 'practice' ? ' by common practice' : ''}`;
  const note = isPiece
    ? `a piece ${size(sizeMm)} long is shorter than ${press.name} can hold, ${limitWords}.`
    : `${size(sizeMm)} is smaller than ${press.name} can hold and cut, ${limitWords}.`;
  return [{ verdict: "Can't reach", governs: governsOf(key), note }];
}

function holeFindings(
  press: Press,
  row: ReadyRow,
  { group, place, process }: PlacedHoles,
  shop: Shop,
  working?: Working,
): Finding[] {
  const { thicknessMm } = place;
  const { grade } = row;
  const job = {
    hole: process.punched,
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
    governs: `${finding.governs}, ${describeHole(process.punched, shop.unit)}`,
    holeGroup: group.title,
  }));
  return [
    ...named,
    ...reachFindings({ press, section: row.section, group, place, unit: shop.unit }, working),
    ...toolFindings(press, process.punched, thicknessMm, grade, shop, working),
  ];
}

function supportFindings(
  press: Press,
  { lengthMm, massKg }: ReadyRow,
  { unit }: Shop,
  working?: Working,
): Finding[] {
  if (lengthMm === undefined) return [];
  const what = `a part ${formatLength(lengthMm, unit)} ${unit} long`;
  const length = withinLimit(
    press,
    { key: 'longestBar', sizeMm: lengthMm, what, meaning: 'length of the part', unit },
    working,
  );
  return massKg === undefined ? length : [...length, ...heaviestFindings(press, massKg, unit, working)];
}

function heaviestFindings(press: Press, massKg: number, unit: Shop['unit'], working?: Working): Finding[] {
  const limit = limitOf(press, 'heaviestBar');
  const outcome = typeof limit !== 'number' ? limit.verdict : massKg <= limit ? 'OK' : 'Too big';
  limitStep(
    working,
    press,
    'heaviestBar',
    { kind: 'mass', value: massKg, meaning: 'mass of the part' },
    '≤',
    outcome,
  );
  if (typeof limit !== 'number') return [limit];
  if (massKg <= limit) return [];
  const note = `a part of ${formatMass(massKg, unit)} is over ${press.name}'s heaviest bar, ${formatMass(limit, unit)}.`;
  return [{ verdict: 'Too big', governs: 'heaviest bar', note }];
}
