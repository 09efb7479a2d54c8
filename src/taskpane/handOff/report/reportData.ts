import { type Verdict, type VerdictKind, verdictKind, verdicts } from '../../../core/check/verdict.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import { isBlank } from '../../../core/quantity/cellValue.js';
import { formatMass } from '../../../core/quantity/formatMass.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { isFullyChecked } from '../../../core/row/isFullyChecked.js';
import type { RouteStep } from '../../../core/row/route.js';
import { assumptionWords } from '../../../core/say/assumptionWords.js';
import { reasonOf } from '../../../core/say/reasonOf.js';
import { settingRows } from '../../../core/shop/settings.js';
import { nameKey } from '../../../core/shop/table.js';
import { failGroups } from '../../parts/list/failGroups.js';
import type { ShopState } from '../../shared/shopState.js';
import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import { itemOf } from '../../shop/press/pressFields.js';
import { isStarter } from '../../shop/sheet/starter.js';
import { percentText } from '../../../core/quantity/percentText.js';
import type { ReportRow } from './lists.js';

export interface ReportedRow {
  mark: string;
  list: string;
  /** Row of the sheet, from 1. */
  row: number;
  verdict: Verdict;
  /** Share of the rating as text; blank where none could be computed. */
  use: string;
  reason: string;
}

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

/** What a report says, as text. */
export interface ReportData {
  title: string;
  /** The lists that were checked, by name. */
  lists: string;
  date: string;
  stamp: string;
  /** The sheet was calculated with another shop than the report. */
  otherStamp?: string;
  totals: [label: string, value: string][];
  counts: { verdict: Verdict; rows: number; pieces: number }[];
  failing: ReportedRow[];
  /** Rows that are not fully checked: something is missing, cannot be read, or is open. */
  unknown: ReportedRow[];
  /** Both by reason, the most frequent first. */
  reasons: Reason[];
  assumptions: string[];
  /** The rules of the shop that the rows are checked against, by the name of the setting. */
  rules: [setting: string, value: string][];
  /** Rows with work that no press does, with its steps. */
  elsewhere: ElsewhereRow[];
  /** Presses that still have the invented values they came with. */
  starters: string[];
  presses: CellValue[][];
}

/** What a shop pays is nobody else's business; a report is handed round. */
const costItems = new Set(['hourlyRate', 'crew'].map((key) => nameKey(itemOf(key as PressItemKey).name)));

type Ready = Extract<ShopState, { kind: 'ready' }>;

/** The report of checked rows. The date comes from outside, so that the same rows give the same report. */
export function reportData(rows: readonly ReportRow[], state: Ready, date: string): ReportData {
  const { shop, shown } = state;
  return {
    title: 'Press check of the parts',
    lists: [...new Set(rows.map(({ list }) => list))].join(', '),
    date,
    stamp: shop.stamp,
    ...(shown === shop.stamp ? {} : { otherStamp: shown }),
    totals: totals(rows, shop.unit),
    counts: verdicts
      .map((verdict) => {
        const own = rows.filter(({ result }) => result.verdict === verdict);
        return { verdict, rows: own.length, pieces: own.reduce((sum, { qty }) => sum + qty, 0) };
      })
      .filter((count) => count.rows > 0),
    failing: reported(rows, ['fails'], shop.unit),
    unknown: reported(rows, ['unknown', 'open'], shop.unit),
    reasons: failGroups(
      rows.map(({ result }) => result),
      shop.unit,
    ).map(({ verdict, rows: own, reason }) => ({
      verdict,
      rows: own.length,
      reason: sentence(reason),
    })),
    assumptions: assumptions(rows, state),
    rules: rules(shop),
    elsewhere: elsewhere(rows),
    starters: starters(state),
    presses: state.tables.presses.values.filter(([item]) => !costItems.has(nameKey(item))),
  };
}

/** The rows of some kinds, the worst verdict first. */
function reported(
  rows: readonly ReportRow[],
  kinds: readonly VerdictKind[],
  unit: LengthUnit,
): ReportedRow[] {
  return rows
    .filter(({ result }) => kinds.includes(verdictKind(result.verdict)))
    .sort((a, b) => verdicts.indexOf(a.result.verdict) - verdicts.indexOf(b.result.verdict))
    .map(({ mark, list, row, result }) => ({
      mark,
      list,
      row,
      verdict: result.verdict,
      use: result.use === undefined ? '' : percentText(result.use),
      reason: sentence(reasonOf(result, unit)),
    }));
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
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
    ['Rows', String(rows.length)],
    ['Pieces', String(sum(({ qty }) => qty))],
    ['Mass', `${mass}${partly}`],
    ['Punch hits', String(sum(({ result }) => result.hits))],
    ...(open === 0 ? [] : [['Rows not fully checked', String(open)] satisfies [string, string]]),
  ];
}

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

/** What the rows assumed, most often first, and the shop's own rules. */
function assumptions(rows: readonly ReportRow[], { shop, tables }: Ready): string[] {
  const counted = new Map<string, number>();
  for (const { result } of rows) {
    const texts = result.readings.flatMap((reading) => assumptionWords(reading, shop.unit));
    for (const text of new Set(texts)) counted.set(text, (counted.get(text) ?? 0) + 1);
  }
  const ofRows = [...counted]
    .sort((a, b) => b[1] - a[1])
    .map(([text, count]) => `${sentence(text)} (${count} ${count === 1 ? 'row' : 'rows'})`);
  const given = new Set(
    (tables.settings?.values ?? []).filter((row) => !isBlank(row[1])).map(([name]) => nameKey(name)),
  );
  const usual = Object.values(settingRows)
    .map(({ name }) => name)
    .filter((name) => !given.has(nameKey(name)));
  return [
    ...(shop.tools ? [] : ['The shop has no list of tools, so tools were not checked.']),
    ...(usual.length > 0 ? [`Usual values for: ${usual.join(', ')}.`] : []),
    ...ofRows,
  ];
}

function starters({ tables }: Ready): string[] {
  const [headings = [], ...rows] = tables.presses.values;
  return headings.slice(2).flatMap((heading, at) => {
    const cell = (item: string) => rows.find((row) => nameKey(row[0]) === nameKey(item))?.[at + 2] ?? null;
    const name = String(heading ?? '');
    return isStarter(name, cell) ? [name] : [];
  });
}
