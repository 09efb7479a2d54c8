import { atMost } from '../atMost.js';
import type { Finding } from '../check/finding.js';
import { isCutBySaw } from '../press/shearStation.js';
import { leastStripWidthMm } from '../rule/leastStrip.js';
import { flangeThicknessMm } from '../section/flangeThickness.js';
import { sectionMassKg } from '../section/mass.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import { leastDimensionMm } from '../tooling/hole.js';
import { check, type Check } from './check.js';
import { holesInBar } from './holesInBar.js';
import { holeProcess } from './job/holeProcess.js';
import { distanceSteps } from './layout/distanceSteps.js';
import type { FaceSize } from './job/faces.js';
import { facesOfLeg } from './layout/facesOfLeg.js';
import { layoutFindings } from './layout/layoutFindings.js';
import { type Layouts, layoutsOf } from './layout/layoutOf.js';
import { groupReadings } from './layout/groupReadings.js';
import { isCutElsewhere, isNotchedOnPress } from './job/needsPress.js';
import { notHeld } from './notHeld.js';
import type { Reading } from './job/reading.js';
import type { PlacedGroup, PlacedHoles, ReadRow, ReadyRow } from './job/readyRow.js';
import type { HoleGroup } from './job/rowJob.js';
import { isGroupKnown, isShapeKnown, isUnclear } from './unclear.js';

export interface PreparedRow {
  row: ReadyRow;
  layouts: Layouts;
  checks: Check[];
  readings: Reading[];
}

/** What does not depend on the press: mass, the place and the process of the holes, what is makeable as drawn. */
export function prepareRow(job: ReadRow, shop: Shop, asked: boolean): PreparedRow {
  const { section, grade, lengthMm } = job;
  const checks: Check[] = [];
  const readings: Reading[] = [...job.readings];
  let stock: ReadRow['stock'];
  const stockRead = check(asked, 'cut', () => {
    const answer = setting(shop, 'barStockToWidth');
    if (answer !== 'ask' && section.kind === 'flat' && section.form === 'plate') stock = answer;
    return [];
  });
  checks.push(stockRead);
  const context = { shop, asked, checks, readings };
  const places = job.groups.map((group) => placeGroup(job, group, context));
  const { densityKgPerM3 } = grade;
  const row: ReadyRow =
    lengthMm === undefined
      ? { ...job, places }
      : { ...job, places, massKg: sectionMassKg({ section, lengthMm, densityKgPerM3 }) };
  if (stock !== undefined) row.stock = stock;
  if (lengthMm === undefined && !isUnclear(job, { cell: 'Length' })) readings.push({ is: 'no mass' });
  if (isCutElsewhere(job) && job.cutBy !== undefined && job.cutBy !== 'press') {
    readings.push({ is: 'cut elsewhere', by: job.cutBy, ...burnedWith(job) });
  } else if (isCutBySaw(section)) readings.push({ is: 'cut by saw' });
  readings.push(...stripReadings(row), ...rollingReadings(row));
  if (row.notches && isNotchedOnPress(row)) readings.push({ is: 'sharp corners' });
  const isPunched = row.places.some(({ faces }) => faces.some(({ process }) => process.made !== 'drill'));
  if (isPunched && !shop.tools) readings.push({ is: 'no tools' });
  const laid = knownPart(row);
  let layouts: Layouts | undefined;
  const laidOut = check(asked, 'part', (working) => {
    layouts = layoutsOf(laid, shop.unit, setting(shop, 'holesWithoutPitch') === 'even');
    readings.push(...groupReadings(laid, layouts, shop));
    const found = isShapeKnown(row) ? layoutFindings(laid, layouts, shop) : [];
    distanceSteps(found, working);
    return found;
  });
  checks.push(laidOut, { findings: [...holesInBar(laid), ...shearedSawn(row), ...notHeld(laid)], steps: [] });
  return { row, layouts: layouts ?? layoutsOf(laid, shop.unit, false), checks, readings };
}

/** The row without the hole groups that have a cell that cannot be read: where they lie is not known. */
function knownPart(row: ReadyRow): ReadyRow {
  if (row.unclear === undefined) return row;
  return {
    ...row,
    groups: row.groups.filter(({ number }) => isGroupKnown(row, number)),
    places: row.places.filter(({ index }) => isGroupKnown(row, index)),
  };
}

/** The torch follows the whole outline. */
function burnedWith({ cutBy, notches, clips }: ReadRow): { cuts?: ('notches' | 'corner clips')[] } {
  const cuts = [...(notches ? (['notches'] as const) : []), ...(clips ? (['corner clips'] as const) : [])];
  return cutBy === 'burn' && cuts.length > 0 ? { cuts } : {};
}

/** The ends of what is sawn are not sheared: a row that says so contradicts its section. */
function shearedSawn({ section, cutBy, groups }: ReadyRow): Finding[] {
  if (!isCutBySaw(section) || cutBy === 'bought') return [];
  const isSheared = groups.some(
    ({ endKind }) => endKind === 'sheared' || endKind === 'sheared connection end',
  );
  return isSheared
    ? [{ rule: 'sheared end', outcome: 'failed', verdict: 'Check input', designation: section.designation }]
    : [];
}

/** A narrow strip ripped from sheet twists and bows: a caution, no failure. */
function stripReadings({ section, stock }: ReadyRow): Reading[] {
  if (section.kind !== 'flat' || stock !== 'from sheet') return [];
  const { widthMm: givenMm, thicknessMm } = section;
  const leastMm = leastStripWidthMm({ thicknessMm });
  return atMost(leastMm, givenMm) ? [] : [{ is: 'narrow strip', givenMm, leastMm }];
}

/** Bars are rolled along their length; of a plate it is not known. */
function rollingReadings({ section, stock, bends }: ReadyRow): Reading[] {
  const isPlate = section.kind === 'flat' && section.form === 'plate' && stock !== 'from bar';
  return bends && isPlate ? [{ is: 'rolling not known' }] : [];
}

interface Context {
  shop: Shop;
  asked: boolean;
  checks: Check[];
  readings: Reading[];
}

/** The faces a hole group may be in, and how its holes are made in each. */
function placeGroup(
  { section, grade }: ReadRow,
  group: HoleGroup,
  { shop, asked, checks, readings }: Context,
): PlacedHoles {
  const { number: index } = group;
  const faces = facesOfLeg(section, group.leg, shop.unit).map((face): PlacedGroup => {
    const thicknessMm = thicknessOf(section, face, group);
    const placed: PlacedGroup = {
      group,
      index,
      face,
      thicknessMm,
      process: { made: 'punch', punched: group.hole },
    };
    checks.push(
      check(asked, 'job specification', (working) => {
        placed.process = holeProcess(group, thicknessMm, grade, shop, working);
        return [];
      }),
    );
    return placed;
  });
  checks.push({ findings: boltInHole(group, index), steps: [] });
  const why = faces.find(({ process }) => process.why !== undefined)?.process.why;
  if (why) readings.push({ is: 'made otherwise', group: index, how: why });
  return { group, index, faces };
}

/** A flange tapers: at the gage, and where that is not given at the web, where it is thickest. */
function thicknessOf(
  section: ReadRow['section'],
  { id, thicknessMm, widthMm }: FaceSize,
  group: HoleGroup,
): number {
  if (section.kind !== 'channel' || id === 'web') return thicknessMm;
  const gageMm =
    group.gageMm ?? (group.edgeMm === undefined ? section.webThicknessMm : widthMm - group.edgeMm);
  return flangeThicknessMm({ section, gageMm });
}

function boltInHole({ bolt, hole }: HoleGroup, index: number): Finding[] {
  const holeMm = leastDimensionMm(hole);
  if (!bolt || atMost(bolt.diameterMm, holeMm)) return [];
  return [
    {
      rule: 'bolt in hole',
      outcome: 'failed',
      verdict: 'Check input',
      group: index,
      holeMm,
      bolt: bolt.name,
    },
  ];
}
