import { type Verdict, verdictKind, verdicts } from '../../../core/check/verdict.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import { formatMass } from '../../../core/quantity/formatMass.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { isFullyChecked } from '../../../core/row/isFullyChecked.js';
import type { RouteStep } from '../../../core/row/route.js';
import { settingRows } from '../../../core/shop/settings.js';
import { nameKey } from '../../../core/shop/table.js';
import { failGroups } from '../../parts/list/failGroups.js';
import type { ShopState } from '../../shared/shopState.js';
import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import { itemOf } from '../../shop/press/pressFields.js';
import { isStarter } from '../../shop/sheet/starter.js';
import { type Assumption, assumptionsOf } from './assumptions.js';
import type { ReportRow } from './lists.js';
import { asSentence, type ReportedRow, reportedRows } from './reportedRows.js';
import { byGrade, byPress, bySection, type MassSum, type PressSum } from './sums.js';

export interface ElsewhereRow {
  mark: string;
  list: string;
  row: number;
  qty: number;
  steps: string;
}

export interface Reason {
  verdict: Verdict;
  rows: number;
  reason: string;
}

/** What the caller knows of a report. */
export interface ReportJob {
  job: string;
  customer: string;
  /** The name of the file. */
  file: string;
  /** From outside, so that the same rows give the same report. */
  date: string;
  /** What is to be known of rows that are hidden or no parts, in sentences. */
  told: readonly string[];
}

/** What a report says, as text. */
export interface ReportData extends ReportJob {
  title: string;
  /** The lists that were checked, by name. */
  lists: string;
  stamp: string;
  /** The sheet was calculated with another shop than the report. */
  otherStamp?: string;
  totals: [label: string, value: string][];
  counts: { verdict: Verdict; rows: number; pieces: number }[];
  failing: ReportedRow[];
  /** Rows that pass, and are above the share of the rating that the shop uses. */
  near: ReportedRow[];
  /** Rows that are not fully checked: something is missing, cannot be read, or is open. */
  unknown: ReportedRow[];
  /** Both by reason, the most frequent first. */
  reasons: Reason[];
  assumptions: Assumption[];
  /** The rules of the shop that the rows are checked against, by the name of the setting. */
  rules: [setting: string, value: string][];
  /** Rows with work that no press does, with its steps. */
  elsewhere: ElsewhereRow[];
  byPress: PressSum[];
  bySection: MassSum[];
  byGrade: MassSum[];
  /** Presses that still have the invented values they came with. */
  starters: string[];
  presses: CellValue[][];
}

/** What a shop pays is nobody else's business; a report is handed round. */
const costItems = new Set(['hourlyRate', 'crew'].map((key) => nameKey(itemOf(key as PressItemKey).name)));

type Ready = Extract<ShopState, { kind: 'ready' }>;

/** The report of checked rows. */
export function reportData(rows: readonly ReportRow[], state: Ready, job: ReportJob): ReportData {
  const { shop, shown } = state;
  return {
    title: 'Press check of the parts',
    lists: [...new Set(rows.map(({ list }) => list))].join(', '),
    ...job,
    stamp: shop.stamp,
    ...(shown === shop.stamp ? {} : { otherStamp: shown }),
    totals: totals(rows, shop.unit),
    counts: verdicts
      .map((verdict) => {
        const own = rows.filter(({ result }) => result.verdict === verdict);
        return { verdict, rows: own.length, pieces: own.reduce((sum, { qty }) => sum + qty, 0) };
      })
      .filter((count) => count.rows > 0),
    failing: reportedRows(
      rows.filter(({ result }) => verdictKind(result.verdict) === 'fails'),
      shop,
    ),
    near: reportedRows(
      rows.filter(({ result }) => result.verdict === 'Near limit'),
      shop,
    ),
    unknown: reportedRows(
      rows.filter(({ result }) => ['unknown', 'open'].includes(verdictKind(result.verdict))),
      shop,
    ),
    reasons: failGroups(
      rows.map(({ result }) => result),
      shop.unit,
    ).map(({ verdict, rows: own, reason }) => ({
      verdict,
      rows: own.length,
      reason: asSentence(reason),
    })),
    assumptions: assumptionsOf(rows, state),
    rules: rules(shop),
    elsewhere: elsewhere(rows),
    byPress: byPress(
      rows,
      shop.presses.map(({ name }) => name),
      shop.unit,
    ),
    bySection: bySection(rows, shop.unit),
    byGrade: byGrade(rows, shop.unit),
    starters: starters(state),
    presses: state.tables.presses.values.filter(([item]) => !costItems.has(nameKey(item))),
  };
}

function totals(rows: readonly ReportRow[], unit: LengthUnit): ReportData['totals'] {
  const sum = (of: (row: ReportRow) => number | undefined) =>
    rows.reduce((total, row) => total + (of(row) ?? 0), 0);
  const weighed = rows.filter(({ result }) => result.massKg !== undefined).length;
  const mass = formatMass(
    sum(({ result }) => result.massKg),
    unit,
  );
  const open = rows.filter(({ result }) => !isFullyChecked(result)).length;
  const missing = rows.length - weighed;
  const partly =
    missing > 0
      ? ` (without ${missing} ${missing === 1 ? 'row' : 'rows'} whose section, grade or length is not known)`
      : '';
  return [
    ['Rows', counted(rows.length)],
    ['Pieces', counted(sum(({ qty }) => qty))],
    ['Mass', `${mass}${partly}`],
    ['Punch hits', counted(sum(({ result }) => result.hits))],
    ...(open === 0 ? [] : [['Rows not fully checked', counted(open)] satisfies [string, string]]),
  ];
}

const counted = (count: number) => count.toLocaleString('en');

const ruleKeys = ['edgeCode', 'jobSpec', 'shearRatio', 'holeToThickness'] as const;

/** What the drawing and the forces are checked against; a setting that cannot be read is told in its rows. */
function rules({ settings }: Ready['shop']): ReportData['rules'] {
  return ruleKeys
    .filter((key) => settings.bad[key] === undefined)
    .map((key) => [settingRows[key].name, String(settings.settings[key])]);
}

const pressSteps = new Set<RouteStep>(['shear', 'punch', 'notch', 'bend']);

/** What is sawn, drilled or finished elsewhere: its word stands for the rest of the row only. */
function elsewhere(rows: readonly ReportRow[]): ElsewhereRow[] {
  return rows.flatMap(({ mark, list, row, qty, result }) => {
    const steps = result.route.filter((step) => !pressSteps.has(step));
    return steps.length === 0 ? [] : [{ mark, list, row, qty, steps: steps.join(', ') }];
  });
}

/** Presses of the shop that still have invented values. */
export function starters({ tables }: Ready): string[] {
  const [headings = [], ...rows] = tables.presses.values;
  return headings.slice(2).flatMap((heading, at) => {
    const cell = (item: string) => rows.find((row) => nameKey(row[0]) === nameKey(item))?.[at + 2] ?? null;
    const name = String(heading ?? '');
    return isStarter(name, cell) ? [name] : [];
  });
}
