import { refuse } from '../inputError.js';
import { quoted } from '../quantity/cellValue.js';
import { nameKey } from '../shop/table.js';
import type { NamedValue, QuantityKind } from '../working/working.js';
import type { RowResult } from './rowResult.js';

/** What a row check can show, with the heading each has in a list. */
export const rowItems = [
  { item: 'verdict', heading: 'Verdict', meaning: 'one word for the row' },
  { item: 'use', heading: 'Share of rating', meaning: 'the hardest operation over the rating, 1 is full' },
  { item: 'governs', heading: 'Governs', meaning: 'what decides the verdict' },
  { item: 'note', heading: 'Note', meaning: 'every failure, worst first, and what was understood' },
  { item: 'force', heading: 'Force', meaning: 'of the hardest operation, US ton or kN' },
  {
    item: 'route',
    heading: 'Route',
    meaning: 'the order of work: saw, burn, shear, punch, ream, notch, bend, drill',
  },
  {
    item: 'hits',
    heading: 'Hits',
    meaning: 'holes the press punches in all pieces of the row; holes to be drilled are not counted',
  },
  { item: 'mass', heading: 'Mass', meaning: 'of the whole row, lb or kg' },
] as const;

export type RowItem = (typeof rowItems)[number]['item'];

/** The items shown where none are asked for. */
export const defaultRowItems: readonly RowItem[] = ['verdict', 'use', 'note'];

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

/** One item of a row, numbers in the core's unit; empty text where there is nothing to show, never a zero. */
export function rowItemQuantity(row: RowResult, item: RowItem): Pick<NamedValue, 'kind' | 'value'> {
  if (row.blank) return { kind: 'text', value: '' };
  const quantity = (kind: QuantityKind, value: number | undefined) =>
    value === undefined ? { kind: 'text' as const, value: '' } : { kind, value };
  switch (item) {
    case 'use':
      return quantity('ratio', row.use);
    case 'force':
      return quantity('force', row.forceN);
    case 'mass':
      return quantity('mass', row.massKg);
    case 'hits':
      return quantity('count', row.hits);
    default:
      return { kind: 'text', value: row[item] };
  }
}
