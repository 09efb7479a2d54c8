import type { Finding } from '../press/finding.js';
import { isCutBySaw } from '../press/shearStation.js';
import { formatLength } from '../quantity/formatLength.js';
import { leastHoleToBendMm } from '../rule/holeToBend.js';
import { sectionMassKg } from '../section/mass.js';
import type { Shop } from '../shop/readShop.js';
import { insideRadiusOfVeeMm } from '../tooling/bendLimits.js';
import { check, type Check } from './check.js';
import { isCutElsewhere, type ReadyRow } from './checkOnPress.js';
import { holePlace } from './holePlace.js';
import { holeProcess, type HoleProcess } from './holeProcess.js';
import { holesOverCuts } from './holesOverCuts.js';
import { layoutFindings } from './layout/layoutFindings.js';
import { makeableCheck } from './makeable.js';
import type { HoleGroup, RowJob } from './rowJob.js';

/** A row whose section and grade were read. */
export type ReadRow = RowJob & Pick<ReadyRow, 'section' | 'grade'>;

export interface PreparedRow {
  row: ReadyRow;
  checks: Check[];
  /** What is said of the row as a sentence of its own: holes that may not be punched, or may run over a cut. */
  statements: string[];
  understood: string[];
}

/** What does not depend on the press: mass, the place and the process of the holes, what is makeable as drawn. */
export function prepareRow(job: ReadRow, shop: Shop, asked: boolean): PreparedRow {
  const { section, grade, lengthMm } = job;
  const row: ReadyRow = { ...job, places: [], drilledInBar: false };
  const prepared: PreparedRow = { row, checks: [], statements: [], understood: [...job.understood] };
  if (lengthMm === undefined) prepared.understood.push('no length given, so no mass');
  else row.massKg = sectionMassKg({ section, lengthMm, densityKgPerM3: grade.densityKgPerM3 });
  if (isCutElsewhere(job)) prepared.understood.push(cutWords(job));
  else if (isCutBySaw(section)) prepared.understood.push('cut by saw: no press station cuts this section');
  for (const group of job.groups) prepareGroup(prepared, group, shop, asked);
  prepared.checks.push(layoutCheck(prepared, shop));
  prepared.statements.push(...holesOverCuts(row));
  if (row.bends && row.places.length > 0) prepared.understood.push(...holeToBend(row, shop));
  if (row.places.length > 0 && !shop.tools) {
    prepared.understood.push('the shop has no list of tools, so none were checked');
  }
  return prepared;
}

function cutWords({ cutBy }: RowJob): string {
  const how = { saw: 'sawn', burn: 'burned', bought: 'bought cut to length', press: 'cut on a press' };
  return `${how[cutBy ?? 'press']}, as the row says; the cut was not checked on a press`;
}

/** What the part as a whole rules out, beyond what is found of each distance by itself. */
function layoutCheck({ row, checks }: PreparedRow, shop: Shop): Check {
  const known = checks.flatMap(({ findings }) => findings);
  const isTold = (found: Finding) =>
    known.some(
      ({ verdict, holeGroup }) =>
        holeGroup !== undefined &&
        holeGroup === found.holeGroup &&
        (verdict === found.verdict || verdict === 'Check input'),
    );
  return check(false, 'layout', () => layoutFindings(row, shop).filter((found) => !isTold(found)));
}

/** The row does not say where the bend lies, so the least distance is told, not checked. */
function holeToBend({ section, places }: ReadyRow, shop: Shop): string[] {
  const thicknessMm = places[0]?.place.thicknessMm;
  const ratio = shop.settings.settings.veeRatio;
  if (section.kind !== 'flat' || thicknessMm === undefined) return [];
  const leastMm = leastHoleToBendMm({
    thicknessMm,
    insideRadiusMm: insideRadiusOfVeeMm(ratio * thicknessMm),
  });
  return [`hole edges to stay ${formatLength(leastMm, shop.unit)} ${shop.unit} from a bend, not checked`];
}

function prepareGroup(
  { row, checks, statements, understood }: PreparedRow,
  group: HoleGroup,
  shop: Shop,
  asked: boolean,
): void {
  const { section, grade } = row;
  const place = holePlace(section, group, shop.unit);
  if (typeof place === 'string') {
    row.drilledInBar = section.kind !== 'angle' && section.kind !== 'channel';
    const finding: Finding = {
      verdict: row.drilledInBar ? 'No station' : 'Check input',
      governs: group.title,
      note: place,
    };
    checks.push({ findings: [finding], steps: [] });
    return;
  }
  understood.push(...place.assumed);
  let process: HoleProcess = { made: 'punch', punched: group.hole };
  checks.push(
    check(asked, 'job specification', (working) => {
      process = holeProcess(group, place, grade, shop, working);
      return [];
    }),
  );
  if (process.reason !== undefined) statements.push(process.reason);
  row.places.push({ group, place, process });
  const makeable = makeableCheck(section, group, place, row, shop, asked);
  checks.push(makeable.check);
  understood.push(...makeable.understood);
}
