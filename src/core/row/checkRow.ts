import { bySeverity, type Finding, hardestOf } from '../press/finding.js';
import type { CellValue } from '../quantity/cellValue.js';
import type { Shop } from '../shop/readShop.js';
import type { Working } from '../working/working.js';
import { isBlankRow } from './blankRow.js';
import type { Check } from './check.js';
import { checksOnPress, type OnPress } from './checksOnPress.js';
import { type PreparedRow, prepareRow } from './prepareRow.js';
import type { Headings } from './readHeadings.js';
import { readRow } from './readRow.js';
import { isPunched, routeOf } from './route.js';
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
  const prepared = section && grade ? prepareRow({ ...job, section, grade }, shop, asked) : undefined;
  const onPress = checksOnPress(job, prepared?.row, shop, asked);
  const checks = [{ findings: job.problems, steps: [] }, ...(prepared?.checks ?? []), ...onPress.checks];
  if (working) reportGoverningFirst(checks, working);
  const findings = onceEach(checks.flatMap((each) => each.findings)).sort(bySeverity);
  return summary(findings, job, prepared, onPress);
}

/** What is told where a cell is read is not told again by the check that needs the cell. */
function onceEach(findings: readonly Finding[]): Finding[] {
  const told = new Set<string>();
  return findings.filter(({ verdict, note }) => {
    if (verdict !== 'Check input') return true;
    const isNew = !told.has(note);
    told.add(note);
    return isNew;
  });
}

function reportGoverningFirst(checks: readonly Check[], working: Working): void {
  const severity = (each: Check) => [...each.findings].sort(bySeverity)[0];
  const passed: Finding = { verdict: 'OK', governs: '', note: '' };
  const sorted = [...checks].sort((a, b) => bySeverity(severity(a) ?? passed, severity(b) ?? passed));
  const told = new Set<string>();
  for (const step of sorted.flatMap(({ steps }) => steps)) {
    // Several checks of a row take the same strength: it is worked out once on paper, too.
    const key = JSON.stringify(step);
    if (!told.has(key)) working.step(step);
    told.add(key);
  }
}

function summary(
  findings: Finding[],
  job: RowJob,
  prepared: PreparedRow | undefined,
  { press, choice }: OnPress,
): RowResult {
  const [worst] = findings;
  const hardest = hardestOf(findings);
  const verdict = worst?.verdict ?? 'OK';
  const passed = verdict === 'OK' || verdict === 'Near limit';
  const row = prepared?.row;
  return {
    blank: false,
    verdict,
    ...(hardest === undefined ? {} : { use: hardest.use }),
    governs: (passed ? hardest?.governs : worst?.governs) ?? '',
    note: noteOf(findings, job, prepared, choice),
    ...(hardest?.forceN === undefined ? {} : { forceN: hardest.forceN }),
    route: row ? routeOf(row, findings).join(', ') : '',
    ...(row ? { hits: job.qty * punchedHoles(row, findings) } : {}),
    ...(row?.massKg === undefined ? {} : { massKg: row.massKg * job.qty }),
    ...(press === undefined ? {} : { press }),
    findings,
  };
}

function punchedHoles({ places }: PreparedRow['row'], findings: readonly Finding[]): number {
  const punched = places.filter((placed) => isPunched(placed, findings));
  return punched.reduce((sum, { group }) => sum + group.count, 0);
}

/** Failures, worst first; what is said of the row; how the press was chosen; what was read and assumed. */
function noteOf(
  findings: Finding[],
  job: RowJob,
  prepared: PreparedRow | undefined,
  choice: string | undefined,
): string {
  const failures = findings.filter((finding) => finding.note !== '').map((finding) => finding.note);
  const understood = prepared?.understood ?? job.understood;
  const echo = understood.length > 0 ? [`read: ${understood.join('; ')}`] : [];
  const chosen = choice === undefined ? [] : [choice];
  const sentences = [...failures, ...(prepared?.statements ?? []), ...chosen, ...echo].map(sentence);
  return [...new Set(sentences)].join(' ');
}

function sentence(text: string): string {
  const full = text.endsWith('.') ? text : `${text}.`;
  return full.charAt(0).toUpperCase() + full.slice(1);
}
