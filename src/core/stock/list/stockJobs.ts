import { sectionMassKg } from '../../section/mass.js';
import { checkedPart } from '../../row/checkRow.js';
import { readHeadings } from '../../row/headings/readHeadings.js';
import { rowCells } from '../../row/headings/joinedColumns.js';
import { isBlank, plainText } from '../../quantity/cellValue.js';
import { setting } from '../../shop/setting.js';
import type { Shop } from '../../shop/readShop.js';
import type { StockRead } from '../../shop/readStock.js';
import type { ReadyRow } from '../../row/job/readyRow.js';
import { compareParts, compareText } from './compareParts.js';
import { kerfOf } from './kerfOf.js';
import { turningOf } from './nestedEnds.js';
import { type PartOfRow, partsOfRow } from './partsOfRow.js';
import { jobKey, sectionKey } from './sectionKey.js';
import type { JobPart, LeftRow, StockJob, StockJobOptions, StockJobs, StockList } from './stockJob.js';
import { stocksOf } from './stocksOf.js';

interface Group {
  key: string;
  rows: ReadyRow[];
  parts: PartOfRow[];
}

/**
 * What is to be cut of parts lists, by section and grade as they are read: `L3X3X1/4` and `L 3 x 3 x .25` are one. The
 * order of rows makes no difference. Blank and subtotal rows are passed over; every other row is in a job or left out by
 * name.
 * @param lists parts lists, headings in any order, as the row checks read them
 * @param shop the shop; its settings give kerf, end trim, grip and the shortest drop kept
 * @param stock the Stock table of the shop
 * @param options what is left out, and whether common lengths are used
 * @returns the jobs and the rows left out; lengths in mm, angles in rad
 * Valid for every list with a column Section. Throws `invalid` for headings without one, and for a setting that cannot be
 *   read.
 * @example stockJobs([{ name: 'Parts', headings, rows }], shop, readStock(cells, shop)).jobs
 * Source: common practice, no source.
 */
export function stockJobs(
  lists: readonly StockList[],
  shop: Shop,
  stock: StockRead,
  options: StockJobOptions = {},
): StockJobs {
  const groups = new Map<string, Group>();
  const left: LeftRow[] = [];
  const onePiece: string[] = [];
  for (const { name: list, headings: names, rows } of lists) {
    const headings = readHeadings(names);
    for (const [index, cells] of rows.entries()) {
      const checked = checkedPart(cells, headings, shop);
      if (checked.result.blank) continue;
      const markCell = rowCells(cells, headings)[headings.fields.mark?.at ?? -1] ?? null;
      const mark = isBlank(markCell) ? '' : plainText(String(markCell)).trim();
      const place = { list, row: index + 1, mark };
      const made = partsOfRow(checked, place, shop, options);
      if ('why' in made) {
        left.push({ ...place, verdict: checked.result.verdict, why: made.why });
        continue;
      }
      if (checked.result.readings.some(({ is }) => is === 'quantity assumed')) onePiece.push(mark);
      const key = jobKey(made.row.section, made.row.grade);
      const group = groups.get(key) ?? { key, rows: [], parts: [] };
      groups.set(key, group);
      group.rows.push(made.row);
      group.parts.push(...made.parts);
    }
  }
  const jobs = [...groups.values()].map((group) => jobOf(group, shop, stock, options));
  return {
    jobs: jobs.sort((a, b) => compareText(nameOf(a), nameOf(b))),
    left,
    onePiece,
    losses: {
      trimMm: setting(shop, 'endTrimMm'),
      gripMm: setting(shop, 'gripMm'),
      keepMm: setting(shop, 'shortestDropMm'),
    },
    unreadable: stock.unread.flatMap(({ section, sentence }) => (section ? [] : [sentence])),
  };
}

function jobOf(
  { key, rows, parts }: Group,
  shop: Shop,
  stock: StockRead,
  { commonLengths = false }: StockJobOptions,
): StockJob {
  const [first, ...others] = [...rows].sort((a, b) => compareText(nameOf(a), nameOf(b)));
  if (!first) throw new Error('a job has at least one row');
  const named =
    [first, ...others].find(({ section }) => section.kind === 'flat' && section.form === 'bar') ?? first;
  const { section } = named;
  const { grade } = first;
  const kgPerMm = sectionMassKg({ section, lengthMm: 1, densityKgPerM3: grade.densityKgPerM3 });
  const widthMm = widthOf(parts);
  const offered = stocksOf({ section, grade, kgPerMm }, stock, commonLengths ? shop.unit : undefined);
  return {
    key,
    section,
    grade,
    parts: parts.map((part) => inPlane(part, widthMm)).sort(compareParts),
    turning: turningOf(section),
    widthMm,
    kerf: kerfOf(section, parts, shop),
    kgPerMm,
    ...offered,
    unreadable: stock.unread.flatMap((row) =>
      row.section && sectionKey(row.section) === sectionKey(section) ? [row.sentence] : [],
    ),
  };
}

/** The width that most pieces have in the plane of their miters; of two the larger. */
function widthOf(parts: readonly PartOfRow[]): number {
  const pieces = new Map<number, number>();
  for (const { widthMm, pieces: count } of parts) {
    if (widthMm > 0) pieces.set(widthMm, (pieces.get(widthMm) ?? 0) + count);
  }
  return [...pieces].sort(([a, n], [b, m]) => m - n || b - a)[0]?.[0] ?? 0;
}

/** A job has one plane: what is mitered in another is planned as if its ends were square. */
function inPlane({ widthMm: own, ...part }: PartOfRow, widthMm: number): JobPart {
  if (own === 0 || own === widthMm) return part;
  return { ...part, middleMm: part.longMm, leanLeftRad: 0, leanRightRad: 0, notNested: 'another width' };
}

function nameOf({ section, grade }: Pick<ReadyRow, 'section' | 'grade'>): string {
  return `${section.designation} ${grade.name}`;
}
