import { sectionMassKg } from '../../section/mass.js';
import type { ReadyRow } from '../../row/job/readyRow.js';
import type { Shop } from '../../shop/readShop.js';
import type { StockRead } from '../../shop/readStock.js';
import { setting } from '../../shop/setting.js';
import { compareParts, compareText } from './compareParts.js';
import { kerfOf } from './kerfOf.js';
import type { ListRow, OtherListRow } from './listRow.js';
import { turningOf } from './nestedEnds.js';
import { type PartOfRow, partsOfRow } from './partsOfRow.js';
import { jobKey, sectionKey } from './sectionKey.js';
import type { JobPart, LeftRow, RowOnSheet, StockJob, StockJobOptions, StockJobs } from './stockJob.js';
import { stocksOf } from './stocksOf.js';

interface Group {
  key: string;
  rows: ReadyRow[];
  parts: PartOfRow[];
}

/**
 * The jobs of rows that are checked: quick, so that what is asked for may change without another check.
 * @param listed checked rows of one or more lists, and those that are no parts
 * @param shop the shop they were checked with
 * @param stock the Stock table of the shop
 * @param options what is left out, and whether common lengths are used
 * @returns the jobs, the rows left out, and those that are no parts; lengths in mm, angles in rad
 * Valid for every list. Throws `invalid` for a setting that cannot be read.
 * @example jobsOfRows(rows, shop, readStock(cells, shop)).jobs
 * Source: common practice, no source.
 */
export function jobsOfRows(
  listed: readonly (ListRow | OtherListRow)[],
  shop: Shop,
  stock: StockRead,
  options: StockJobOptions = {},
): StockJobs {
  const groups = new Map<string, Group>();
  const left: LeftRow[] = [];
  const onePiece: string[] = [];
  const hidden: RowOnSheet[] = [];
  const others: OtherListRow[] = [];
  const lists = new Set<string>();
  for (const each of listed) {
    lists.add('is' in each ? each.list : each.place.list);
    if ('is' in each) {
      others.push(each);
      continue;
    }
    const { place, checked, verdict, isOnePiece, hiddenRow } = each;
    if (hiddenRow !== undefined && options.withoutHidden) {
      left.push({ ...place, verdict, why: { is: 'asked', kind: 'hidden' } });
      continue;
    }
    const made = partsOfRow(checked, place, shop, options);
    if ('why' in made) {
      left.push({ ...place, verdict, why: made.why });
      continue;
    }
    if (isOnePiece) onePiece.push(place.mark);
    if (hiddenRow !== undefined) hidden.push({ list: place.list, row: hiddenRow });
    const key = jobKey(made.row.section, made.row.grade);
    const group = groups.get(key) ?? { key, rows: [], parts: [] };
    groups.set(key, group);
    group.rows.push(made.row);
    for (const part of made.parts) group.parts.push(part);
  }
  const jobs = [...groups.values()].map((group) => jobOf(group, shop, stock, options));
  return {
    jobs: jobs.sort((a, b) => compareText(nameOf(a), nameOf(b))),
    left,
    onePiece,
    lists: [...lists],
    hidden,
    others,
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
