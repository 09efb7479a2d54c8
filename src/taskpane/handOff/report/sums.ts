import { formatMass } from '../../../core/quantity/formatMass.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { verdictKind } from '../../../core/check/verdict.js';
import { nameKey } from '../../../core/shop/table.js';
import { namedMarks } from './marks.js';
import type { ReportRow } from './lists.js';

/** What a press has to do. */
export interface PressSum {
  press: string;
  rows: number;
  pieces: number;
  hits: number;
  mass: string;
  failing: number;
  marks: string;
}

/** How much there is of a section in a grade, or of a grade. */
export interface MassSum {
  section: string;
  grade: string;
  pieces: number;
  mass: string;
}

/** The rows of each press in the order of the shop; then those that no press was tried for. */
export function byPress(
  rows: readonly ReportRow[],
  presses: readonly string[],
  unit: LengthUnit,
): PressSum[] {
  const groups = groupedBy(rows, ({ result }) => nameKey(result.press ?? null));
  const order = presses.map((name) => nameKey(name));
  const at = ([key]: [string, ReportRow[]]) => (order.includes(key) ? order.indexOf(key) : order.length);
  return [...groups]
    .sort((a, b) => at(a) - at(b))
    .map(([, own]) => ({
      press: own[0]?.result.press ?? 'No press',
      rows: own.length,
      pieces: sum(own, ({ qty }) => qty),
      hits: sum(own, ({ result }) => result.hits ?? 0),
      mass: massOf(own, unit),
      failing: own.filter(({ result }) => verdictKind(result.verdict) === 'fails').length,
      marks: namedMarks(own.map(({ mark }) => mark)),
    }));
}

/** Pieces and mass of each section in each grade, the heaviest first. */
export function bySection(rows: readonly ReportRow[], unit: LengthUnit): MassSum[] {
  return massSums(rows, unit, ({ section, grade }) => [section, grade]);
}

/** Pieces and mass of each grade, the heaviest first. */
export function byGrade(rows: readonly ReportRow[], unit: LengthUnit): MassSum[] {
  return massSums(rows, unit, ({ grade }) => ['', grade]);
}

function massSums(
  rows: readonly ReportRow[],
  unit: LengthUnit,
  named: (row: ReportRow) => [section: string, grade: string],
): MassSum[] {
  const known = rows.filter((row) => named(row).some((name) => name !== ''));
  const heavy = (own: readonly ReportRow[]) => sum(own, ({ result }) => result.massKg ?? 0);
  return [...groupedBy(known, (row) => JSON.stringify(named(row))).values()]
    .sort((a, b) => heavy(b) - heavy(a))
    .map((own) => {
      const [section, grade] = named(own[0] as ReportRow);
      return { section, grade, pieces: sum(own, ({ qty }) => qty), mass: massOf(own, unit) };
    });
}

/** The mass of rows; says so where that of some is not known. */
function massOf(rows: readonly ReportRow[], unit: LengthUnit): string {
  const weighed = rows.filter(({ result }) => result.massKg !== undefined);
  if (weighed.length === 0) return 'not known';
  const mass = formatMass(
    sum(weighed, ({ result }) => result.massKg ?? 0),
    unit,
  );
  const missing = rows.length - weighed.length;
  return missing === 0 ? mass : `${mass}, without ${missing} ${missing === 1 ? 'row' : 'rows'}`;
}

function sum<Item>(items: readonly Item[], of: (item: Item) => number): number {
  return items.reduce((total, item) => total + of(item), 0);
}

function groupedBy<Item>(items: readonly Item[], keyOf: (item: Item) => string): Map<string, Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const own = groups.get(keyOf(item));
    if (own) own.push(item);
    else groups.set(keyOf(item), [item]);
  }
  return groups;
}
