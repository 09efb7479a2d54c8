import { bySeverity, type Finding } from '../press/finding.js';
import { isSawn } from '../press/shearStation.js';
import { type CellValue, isBlank } from '../quantity/cellValue.js';
import { sectionMassKg } from '../section/mass.js';
import type { Shop } from '../shop/readShop.js';
import type { Working } from '../working/working.js';
import type { Check } from './check.js';
import type { ReadyRow } from './checkOnPress.js';
import { checksOnPress, type OnPress } from './checksOnPress.js';
import { holePlace } from './holePlace.js';
import { makeableCheck } from './makeable.js';
import type { Headings } from './readHeadings.js';
import { readRow } from './readRow.js';
import type { RowJob } from './rowJob.js';
import type { RowResult } from './rowResult.js';

/**
 * Checks one row of a parts list against the shop: every operation of the row, one verdict by precedence,
 * a note with every failure, worst first, and with what was understood and assumed.
 * @param cells the row's cells, in the order of the headings
 * @param headings where each input stands
 * @param shop the shop's presses, tools, grades and settings
 * @param working collects the steps of all checks when given, the governing check first
 * @returns the result; never throws for what a cell of the row holds
 * Source: each check names its own.
 */
export function checkRow(
  cells: readonly CellValue[],
  headings: Headings,
  shop: Shop,
  working?: Working,
): RowResult {
  if (isBlankRow(cells, headings)) return { blank: true };
  const job = readRow(cells, headings, shop);
  const { section, grade } = job;
  const asked = working !== undefined;
  const ready = section && grade ? prepare({ ...job, section, grade }, shop, asked) : undefined;
  const onPress = checksOnPress(job, ready?.row, shop, asked);
  const checks = [{ findings: job.problems, steps: [] }, ...(ready?.checks ?? []), ...onPress.checks];
  if (working) reportGoverningFirst(checks, working);
  const findings = checks.flatMap((each) => each.findings).sort(bySeverity);
  return summary(findings, ready?.understood ?? job.understood, job, ready?.row, onPress);
}

function reportGoverningFirst(checks: readonly Check[], working: Working): void {
  const severity = (each: Check) => [...each.findings].sort(bySeverity)[0];
  const passed: Finding = { verdict: 'OK', governs: '', note: '' };
  const sorted = [...checks].sort((a, b) => bySeverity(severity(a) ?? passed, severity(b) ?? passed));
  for (const { steps } of sorted) steps.forEach((step) => working.step(step));
}

/** Blank: nothing in any read column, or a subtotal: a row of totals without a section. */
function isBlankRow(cells: readonly CellValue[], { fields, groups }: Headings): boolean {
  const columns = [fields, ...groups].flatMap((each) => Object.values(each));
  if (columns.every((column) => isBlank(cells[column.at]))) return true;
  if (!isBlank(cells[fields.section?.at ?? -1])) return false;
  return cells.some(
    (cell) => typeof cell === 'string' && /^\s*(?:(?:sub-?|grand )?totals?|sum)\b/i.test(cell),
  );
}

interface Prepared {
  row: ReadyRow;
  checks: Check[];
  understood: string[];
}

/** What does not depend on the press: mass, the place of the holes, what is makeable as drawn. */
function prepare(job: RowJob & Pick<ReadyRow, 'section' | 'grade'>, shop: Shop, asked: boolean): Prepared {
  const { section, grade, lengthMm } = job;
  const row: ReadyRow = { ...job, places: [] };
  if (lengthMm !== undefined)
    row.massKg = sectionMassKg({ section, lengthMm, densityKgPerM3: grade.densityKgPerM3 });
  const checks: Check[] = [];
  const understood = [...job.understood];
  if (isSawn(section)) understood.push('cut by saw: no press station cuts this section');
  if (lengthMm === undefined) understood.push('no length given, so no mass');
  for (const group of job.groups) {
    const place = holePlace(section, group, shop.unit);
    if (typeof place === 'string') {
      const inBar = section.kind === 'round' || section.kind === 'square';
      const verdict = inBar ? 'No station' : 'Check input';
      checks.push({ findings: [{ verdict, governs: group.title, note: place }], steps: [] });
      continue;
    }
    row.places.push({ group, place });
    if (place.assumed) understood.push(place.assumed);
    const makeable = makeableCheck(section, group, place, shop, asked);
    checks.push(makeable.check);
    understood.push(...makeable.understood);
  }
  if (row.places.length > 0 && !shop.tools) {
    understood.push('the shop has no list of tools, so none were checked');
  }
  return { row, checks, understood };
}

function summary(
  findings: Finding[],
  understood: string[],
  job: RowJob,
  row: ReadyRow | undefined,
  { press, choice }: OnPress,
): RowResult {
  const worst = findings[0];
  const hardest = findings.reduce<Finding | undefined>(
    (most, each) => ((each.use ?? -1) > (most?.use ?? -1) ? each : most),
    undefined,
  );
  const verdict = worst?.verdict ?? 'OK';
  const failures = findings.filter((finding) => finding.note !== '').map((finding) => sentence(finding.note));
  const echo = understood.length > 0 ? [sentence(`read: ${understood.join('; ')}`)] : [];
  const passed = verdict === 'OK' || verdict === 'Near limit';
  return {
    blank: false,
    verdict,
    ...(hardest?.use === undefined ? {} : { use: hardest.use }),
    governs: (passed ? hardest?.governs : worst?.governs) ?? '',
    note: [...new Set([...failures, ...(choice === undefined ? [] : [choice]), ...echo])].join(' '),
    ...(hardest?.forceN === undefined ? {} : { forceN: hardest.forceN }),
    hits: job.qty * job.groups.reduce((sum, group) => sum + group.count, 0),
    ...(row?.massKg === undefined ? {} : { massKg: row.massKg * job.qty }),
    ...(press === undefined ? {} : { press }),
    findings,
  };
}

function sentence(text: string): string {
  const full = text.endsWith('.') ? text : `${text}.`;
  return full.charAt(0).toUpperCase() + full.slice(1);
}
