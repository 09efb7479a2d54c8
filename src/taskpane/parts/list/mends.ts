import type { Finding } from '../../../core/check/finding.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import { formatLength, nextSizeMm } from '../../../core/quantity/formatLength.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import type { HoleGroup } from '../../../core/row/job/rowJob.js';
import { readRow } from '../../../core/row/readRow.js';
import type { Shop } from '../../../core/shop/readShop.js';
import type { Step } from '../../../workbook/step.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { counted } from '../../shared/change/describeStep.js';
import { type ColumnMatch, headingsOf } from './columnMatch.js';
import { areasOf } from './groupChanges.js';
import type { ListRead } from './listRead.js';

const sameMm = 0.01;

/** Changes of cells that would mend rows that fail for one reason, each ready to be written; a press is offered elsewhere. */
export function mendsOf(
  list: ListRead,
  matches: readonly ColumnMatch[],
  rows: readonly number[],
  finding: Finding,
  shop: Shop,
): Proposal[] {
  const larger = largerDistance(list, matches, rows, finding, shop);
  const drilled = drillInstead(list, matches, rows, finding);
  return [larger, drilled].flatMap((mend) => mend ?? []);
}

/** Of a distance that a cell of the row gives and that is too short: what it needs, rounded up to what people work with. */
function largerDistance(
  list: ListRead,
  matches: readonly ColumnMatch[],
  rows: readonly number[],
  finding: Finding,
  shop: Shop,
): Proposal | undefined {
  if (finding.rule !== 'distance' || finding.outcome !== 'failed' || finding.group === undefined)
    return undefined;
  const { given, limit } = finding;
  const neededMm = Number.isFinite(limit.most) ? limit.most : limit.least;
  if (given.least !== given.most || !Number.isFinite(neededMm)) return undefined;
  const headings = readHeadings(headingsOf(matches));
  const fieldsOf = (row: number) =>
    givingCells(readRow(list.rows[row] ?? [], headings, shop).groups[finding.group ?? 0], given.least);
  const [field] = fieldsOf(rows[0] ?? 0);
  const column = matches.find((match) => match.field === field);
  if (field === undefined || !column) return undefined;
  const own = rows.filter((row) => fieldsOf(row).includes(field));
  // The heading may have a unit of its own, so the cell says its unit.
  const size = `${formatLength(nextSizeMm(neededMm, shop.unit), shop.unit)} ${shop.unit}`;
  return { title: `Make ${field} ${size}${ofRows(own)}`, steps: cellSteps(list, column.at, own, size) };
}

/** The cells of a hole group that give a distance. */
function givingCells(group: HoleGroup | undefined, mm: number): string[] {
  if (!group) return [];
  const behind = group.number > 1 ? ` ${group.number}` : '';
  const is = (cell: number | undefined) => cell !== undefined && Math.abs(cell - mm) < sameMm;
  return [
    ...(is(group.endMm) ? [`End${behind}`] : []),
    ...(is(group.edgeMm) ? [`Edge${behind}`] : []),
    ...(is(group.pitchMm) ? [`Pitch${behind}`] : []),
  ];
}

const drillMends = new Set<Finding['verdict']>(['Hole too small', 'Over capacity', "Can't reach"]);

/** Holes that the press cannot punch are drilled. */
function drillInstead(
  list: ListRead,
  matches: readonly ColumnMatch[],
  rows: readonly number[],
  finding: Finding,
): Proposal | undefined {
  if (finding.group === undefined || !drillMends.has(finding.verdict)) return undefined;
  const behind = finding.group === 0 ? '' : ` ${finding.group + 1}`;
  const heading = `Holes by${behind}`;
  const title = `Drill ${rows.length === 1 ? 'its holes' : `the holes of ${counted(rows.length, 'row')}`}`;
  const own = matches.find(({ field }) => field === heading);
  if (own) return { title, steps: cellSteps(list, own.at, rows, 'drill') };
  const hole = matches.find(({ field }) => field === `Hole${behind}`);
  const table = list.source.table?.name;
  if (!hole || table === undefined) return undefined;
  const set = new Set(rows);
  const contents = list.rows.map((_, row): CellValue => (set.has(row) ? 'drill' : null));
  return {
    title,
    remarks: [`The list gets a column ${heading}, right of ${hole.heading}.`],
    steps: [{ kind: 'column', table, rightOf: hole.heading, heading, contents, format: '@' }],
  };
}

const ofRows = (rows: readonly number[]) => (rows.length === 1 ? '' : ` (${counted(rows.length, 'row')})`);

function cellSteps(list: ListRead, column: number, rows: readonly number[], text: string): Step[] {
  return areasOf(list, column, rows).map((area) => ({
    kind: 'cells',
    area,
    contents: Array.from({ length: area.rows }, () => [text]),
  }));
}
