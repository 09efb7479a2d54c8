import { refuse } from '../inputError.js';
import { quoted } from '../quantity/cellValue.js';
import { kilogramPerPound, type LengthUnit, newtonPerKilonewton, newtonPerUsTon } from '../quantity/units.js';
import { nameKey } from '../shop/table.js';
import type { RowResult } from './rowResult.js';

/** What a row check can show, with the heading each has in a list. */
export const rowItems = [
  { item: 'verdict', heading: 'Verdict', meaning: 'one word for the row' },
  { item: 'use', heading: 'Share of rating', meaning: 'the hardest operation over the rating, 1 is full' },
  { item: 'governs', heading: 'Governs', meaning: 'what decides the verdict' },
  { item: 'note', heading: 'Note', meaning: 'every failure, worst first, and what was understood' },
  { item: 'force', heading: 'Force', meaning: 'of the hardest operation, US ton or kN' },
  { item: 'hits', heading: 'Hits', meaning: 'punch hits of the whole row' },
  { item: 'mass', heading: 'Mass', meaning: 'of the whole row, lb or kg' },
] as const;

export type RowItem = (typeof rowItems)[number]['item'];

/** The items shown where none are asked for. */
export const defaultRowItems: readonly RowItem[] = ['verdict', 'use', 'note'];

const force: Record<LengthUnit, number> = { in: newtonPerUsTon, mm: newtonPerKilonewton };
const mass: Record<LengthUnit, number> = { in: kilogramPerPound, mm: 1 };

/** Items from text such as `verdict, use`, in that order. Throws for a word that is no item. */
export function readRowItems(text: string, argument: string): RowItem[] {
  return text.split(/[,;]/).map((word) => {
    const found = rowItems.find(({ item }) => item === nameKey(word));
    const names = rowItems.map(({ item }) => item).join(', ');
    return (
      found?.item ??
      refuse(argument, text, `${quoted(word)} is not an item.`, `Write ${names}, or several with commas.`)
    );
  });
}

/** One item of a row as the sheet shows it; empty text where there is nothing to show, never a zero. */
export function rowItemValue(row: RowResult, item: RowItem, unit: LengthUnit): string | number {
  if (row.blank) return '';
  switch (item) {
    case 'use':
      return row.use ?? '';
    case 'force':
      return row.forceN === undefined ? '' : row.forceN / force[unit];
    case 'mass':
      return row.massKg === undefined ? '' : row.massKg / mass[unit];
    default:
      return row[item];
  }
}
