import type { Finding, FindingOf } from '../check/finding.js';
import { bySeverity, hardestOf, worstFirst } from '../check/severity.js';
import { sentenceInCell } from '../inputError.js';
import type { CellValue } from '../quantity/cellValue.js';
import type { Shop } from '../shop/readShop.js';
import type { Working } from '../working/working.js';
import type { Check } from './check.js';
import { checksOnPress, type OnPress } from './checksOnPress.js';
import { pieceOf } from './piece.js';
import { unreadWork } from './notHeld.js';
import { type PreparedRow, prepareRow } from './prepareRow.js';
import type { Headings } from './headings/readHeadings.js';
import type { ReadRow } from './job/readyRow.js';
import { readRow } from './readRow.js';
import { isPunched, routeOf } from './route.js';
import type { RowJob } from './job/rowJob.js';
import { readKind } from './rowKind.js';
import type { CheckedRow, RowResult } from './rowResult.js';
import { withTypedHeadings } from './typedHeadings.js';
import { isCountKnown, isShapeKnown, isUnclear, waitsOnUnclear } from './unclear.js';

/**
 * Checks one row of a parts list against the shop: every operation of the row, one verdict by precedence, everything
 * that was checked against something, and what was understood and assumed.
 * @param cells the row's cells, in the order of the headings
 * @param headings where each input stands
 * @param shop the shop's presses, tools, grades and settings
 * @param working collects the steps of all checks when given, the governing check first
 * @returns the result as data; never throws for what a cell of the row holds
 * Source: each check names its own.
 */
export function checkRow(
  cells: readonly CellValue[],
  headings: Headings,
  shop: Shop,
  working?: Working,
): RowResult {
  return checkedPart(cells, headings, shop, working).result;
}

/** A checked row, and the part it was checked as; no part where the row is blank or could not be read. */
export interface CheckedPart {
  result: RowResult;
  part?: Pick<PreparedRow, 'row' | 'layouts'>;
}

/** As `checkRow`, with the part: for what goes on from it, such as time and set-up. */
export function checkedPart(
  cells: readonly CellValue[],
  headings: Headings,
  shop: Shop,
  working?: Working,
): CheckedPart {
  const { is, work = '' } = readKind(cells, headings);
  if (is === 'work') return { result: { blank: true, is, finding: strayFinding(work) } };
  if (is !== 'part') return { result: { blank: true, ...(is === 'blank' ? {} : { is }) } };
  const job = readRow(cells, headings, shop);
  const asked = working !== undefined;
  const prepared = isRead(job) ? prepareRow(job, shop, asked) : undefined;
  const onPress = checksOnPress(job, prepared, shop, asked);
  const checks: Check[] = [{ findings: job.problems, steps: [] }];
  if (prepared) checks.push(...prepared.checks);
  else checks.push({ findings: unreadWork(job), steps: [] });
  checks.push(...onPress.checks);
  if (working) reportGoverningFirst(checks, working);
  const found: Finding[] = [];
  for (const { findings } of checks)
    for (const finding of findings) if (!waitsOnUnclear(job, finding)) found.push(finding);
  const findings = withTypedHeadings(worstFirst(onceEach(found)), headings);
  const result = summary(findings, job, prepared, onPress);
  const piece = prepared && pieceOf(prepared.row, shop.unit);
  if (piece) result.piece = piece;
  return prepared ? { result, part: prepared } : { result };
}

function strayFinding(text: string): FindingOf<'work without part'> {
  return { rule: 'work without part', outcome: 'open', verdict: 'No part', text };
}

function isRead(job: RowJob): job is ReadRow {
  return job.section !== undefined && job.grade !== undefined;
}

/** What is told where a cell is read is not told again by the check that needs the cell; nor is a blank cell. */
function onceEach(findings: readonly Finding[]): Finding[] {
  const told = new Set<string>();
  const kept: Finding[] = [];
  for (const finding of findings) {
    const key = keyOf(finding);
    if (key === undefined || !told.has(key)) kept.push(finding);
    if (key !== undefined) told.add(key);
  }
  return kept;
}

function keyOf(finding: Finding): string | undefined {
  switch (finding.rule) {
    case 'refusal':
      return sentenceInCell(finding.failure);
    case 'blank item':
      return `${finding.press} ${finding.item}`;
    case 'blank cell':
      return `${finding.cell.cell} ${finding.cell.group} ${finding.unchecked}`;
    default:
      return undefined;
  }
}

function reportGoverningFirst(checks: readonly Check[], working: Working): void {
  const severity = (each: Check) => [...each.findings].sort(bySeverity)[0];
  const sorted = [...checks].sort((a, b) => {
    const [first, second] = [severity(a), severity(b)];
    if (!first || !second) return Number(first === undefined) - Number(second === undefined);
    return bySeverity(first, second);
  });
  const told = new Set<string>();
  for (const step of sorted.flatMap(({ steps }) => steps)) {
    // Several checks of a row take the same strength: it is worked out once on paper, too.
    const key = JSON.stringify(step);
    if (!told.has(key)) working.step(step);
    told.add(key);
  }
}

function summary(
  findings: readonly Finding[],
  job: RowJob,
  prepared: PreparedRow | undefined,
  { press, choice }: OnPress,
): CheckedRow {
  const [worst] = findings;
  const hardest = hardestOf(findings);
  const verdict = worst?.verdict ?? 'OK';
  const passed = verdict === 'OK' || verdict === 'Near limit';
  const deciding = passed ? hardest : worst;
  const row = prepared?.row;
  const isRouteKnown = isShapeKnown(job) && isCountKnown(job);
  const route = row && isRouteKnown ? routeOf(row, findings) : [];
  const readings = prepared?.readings ?? job.readings;
  const checked: CheckedRow = { blank: false, verdict, route, findings, readings };
  if (hardest) checked.use = hardest.use;
  if (hardest) checked.forceN = hardest.forceN;
  if (deciding) checked.deciding = deciding;
  if (row && isCountKnown(job)) checked.hits = job.qty * punchedHoles(row, findings);
  if (row?.massKg !== undefined && !isUnclear(job, { cell: 'Qty' })) checked.massKg = row.massKg * job.qty;
  if (press !== undefined) checked.press = press;
  if (choice) checked.choice = choice;
  return checked;
}

function punchedHoles({ places }: PreparedRow['row'], findings: readonly Finding[]): number {
  let count = 0;
  for (const placed of places) if (isPunched(placed, findings)) count += placed.group.count;
  return count;
}
