import { bySeverity, type Finding, verdicts } from '../press/finding.js';
import type { Press } from '../press/press.js';
import { type CellValue, isBlank } from '../quantity/cellValue.js';
import { sectionMassKg } from '../section/mass.js';
import type { Shop } from '../shop/readShop.js';
import { nameKey } from '../shop/table.js';
import type { Working } from '../working/working.js';
import { checkOnPress, type ReadyRow } from './checkOnPress.js';
import { holePlace } from './holePlace.js';
import { makeableFindings } from './makeable.js';
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
  const read = section && grade ? prepare({ ...job, section, grade }, shop) : undefined;
  const common = read?.findings ?? job.problems;
  const understood = read?.understood ?? job.understood;
  const onPress = pressFindings(job, read?.row, shop, working);
  const findings = [...common, ...onPress.findings].sort(bySeverity);
  return summary(findings, [...onPress.understood, ...understood], job, read?.row, onPress.press);
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
  findings: Finding[];
  understood: string[];
}

/** What does not depend on the press: mass, the place of the holes, what is makeable as drawn. */
function prepare(job: RowJob & Pick<ReadyRow, 'section' | 'grade'>, shop: Shop): Prepared {
  const { section, grade, lengthMm } = job;
  const row: ReadyRow = { ...job, places: [] };
  if (lengthMm !== undefined)
    row.massKg = sectionMassKg({ section, lengthMm, densityKgPerM3: grade.densityKgPerM3 });
  const findings = [...job.problems];
  const understood = [...job.understood];
  if (section.kind === 'channel') understood.push('cut by saw: no press station cuts channels');
  if (lengthMm === undefined) understood.push('no length given, so no mass');
  for (const group of job.groups) {
    const place = holePlace(section, group, shop.unit);
    if (typeof place === 'string') {
      const inBar = section.kind === 'round' || section.kind === 'square';
      findings.push({ verdict: inBar ? 'No station' : 'Check input', governs: group.title, note: place });
      continue;
    }
    row.places.push({ group, place });
    if (place.assumed) understood.push(place.assumed);
    const makeable = makeableFindings(section, group, place, shop);
    findings.push(...makeable.findings);
    understood.push(...makeable.understood);
  }
  if (row.places.length > 0 && !shop.tools)
    understood.push('the shop has no list of tools, so none were checked');
  return { row, findings, understood };
}

interface OnPress {
  findings: Finding[];
  understood: string[];
  press?: string;
}

function pressFindings(job: RowJob, row: ReadyRow | undefined, shop: Shop, working?: Working): OnPress {
  if (shop.presses.length === 0) {
    return {
      findings: [
        { verdict: 'No press', governs: 'press', note: 'The shop has no press. Add one on the Shop sheet.' },
      ],
      understood: [],
    };
  }
  const { press: name } = job;
  if (name === undefined) return row ? bestPress(row, shop, working) : { findings: [], understood: [] };
  const press = shop.presses.find((each) => nameKey(each.name) === nameKey(name));
  if (!press) {
    const names = shop.presses.map((each) => each.name).join(', ');
    return {
      findings: [
        {
          verdict: 'No press',
          governs: 'press',
          note: `'${name}' is not a press of the shop. Presses: ${names}.`,
        },
      ],
      understood: [],
    };
  }
  return { findings: row ? checkOnPress(press, row, shop, working) : [], understood: [], press: press.name };
}

/** Without a press in the row all are tried; the best verdict wins, then the smaller share. */
function bestPress(row: ReadyRow, shop: Shop, working?: Working): OnPress {
  const tried = shop.presses.map((press) => ({ press, findings: checkOnPress(press, row, shop) }));
  const [best] = tried.sort(
    (a, b) => rank(a.findings) - rank(b.findings) || largestUse(a.findings) - largestUse(b.findings),
  );
  const press = best?.press as Press;
  const runs = rank(best?.findings ?? []) >= verdicts.indexOf('Near limit');
  const understood = [
    runs
      ? `no press given: ${press.name} chosen of ${tried.length}`
      : `no press runs it; ${press.name} comes nearest`,
  ];
  return {
    findings: working ? checkOnPress(press, row, shop, working) : (best?.findings ?? []),
    understood,
    press: press.name,
  };
}

function rank(findings: readonly Finding[]): number {
  return Math.min(verdicts.length - 1, ...findings.map((finding) => verdicts.indexOf(finding.verdict)));
}

function largestUse(findings: readonly Finding[]): number {
  return Math.max(0, ...findings.map((finding) => finding.use ?? 0));
}

function summary(
  findings: Finding[],
  understood: string[],
  job: RowJob,
  row: ReadyRow | undefined,
  press: string | undefined,
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
    note: [...new Set([...failures, ...echo])].join(' '),
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
