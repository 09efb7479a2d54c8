import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { nameKey } from '../../../core/shop/table.js';
import type { ShopTable } from '../../shared/shopState.js';
import { columnAt } from '../sheet/tableCells.js';
import { itemOf, problemOf, unitOf } from './pressFields.js';
import { nameProblem } from './pressName.js';

/** What a new press is asked first. */
export interface NewPressAnswers {
  name: string;
  force: string;
  forceUnit: string;
  throat: string;
  largestHole: string;
  thickness: string;
  /** Further values, by item, where a part needs them. */
  more?: Readonly<Partial<Record<PressItemKey, string>>>;
}

/** What is wrong with answers, a sentence each. */
export type AnswerProblems = Partial<Record<Exclude<keyof NewPressAnswers, 'more'>, string>>;

export const forceUnits = ['US ton', 'tonne', 'kN'] as const;

/** Why an answer cannot be taken, by answer. A blank answer other than the name is allowed: not known yet. */
export function answerProblems(answers: NewPressAnswers, table: ShopTable, unit: LengthUnit): AnswerProblems {
  const problem = (text: string, key: PressItemKey) =>
    problemOf(text, itemOf(key), table, answers.name.trim(), unit);
  const found = {
    name: nameProblem(answers.name, table),
    force: problem(forceText(answers, table), 'punchForce'),
    throat: problem(answers.throat, 'punchThroat'),
    largestHole: problem(answers.largestHole, 'punchLargestHole'),
    thickness: problem(answers.thickness, 'punchLargestHoleThickness'),
  };
  return Object.fromEntries(Object.entries(found).filter(([, message]) => message !== undefined));
}

/** What is wrong with the further values, by item. */
export function moreProblems(
  { name, more = {} }: NewPressAnswers,
  table: ShopTable,
  unit: LengthUnit,
): Partial<Record<PressItemKey, string>> {
  const found = Object.entries(more).flatMap(([key, text]) => {
    const problem = problemOf(text, itemOf(key as PressItemKey), table, name.trim(), unit);
    return problem === undefined ? [] : [[key, problem]];
  });
  return Object.fromEntries(found) as Partial<Record<PressItemKey, string>>;
}

/** The force with its unit, where it is another than the one of the table's Unit column. */
function forceText({ force, forceUnit }: NewPressAnswers, table: ShopTable): string {
  const typed = force.trim();
  const bare = /^[\d.,]+$/.test(typed);
  return bare && nameKey(unitOf(table, itemOf('punchForce'))) !== nameKey(forceUnit)
    ? `${typed} ${forceUnit}`
    : typed;
}

/** The cells of the new press below its name, one for each row of the table. */
export function newPressCells(answers: NewPressAnswers, table: ShopTable): CellValue[] {
  const byKey: Partial<Record<PressItemKey, string>> = {
    punch: 'yes',
    punchForce: forceText(answers, table),
    punchThroat: answers.throat.trim(),
    punchLargestHole: answers.largestHole.trim(),
    punchLargestHoleThickness: answers.thickness.trim(),
    ...answers.more,
  };
  const byName = new Map(
    Object.entries(byKey).map(([key, text]) => [nameKey(itemOf(key as PressItemKey).name), text]),
  );
  const itemColumn = columnAt(table, 'Item');
  return table.values.slice(1).map((row) => byName.get(nameKey(row[itemColumn])) || null);
}

/** No answer yet; the force is in the unit of the table. */
export function noAnswers(table: ShopTable): NewPressAnswers {
  const forceUnit = String(unitOf(table, itemOf('punchForce')) ?? forceUnits[0]);
  return { name: '', force: '', forceUnit, throat: '', largestHole: '', thickness: '' };
}

/** The cells of another press, one for each row of the table. */
export function copiedCells(table: ShopTable, press: string): CellValue[] {
  const column = columnAt(table, press);
  return table.values.slice(1).map((row) => row[column] ?? null);
}
