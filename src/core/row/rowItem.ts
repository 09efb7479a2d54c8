import { refuse } from '../inputError.js';
import { quoted } from '../quantity/cellValue.js';
import { nameKey } from '../shop/table.js';

/** What a row check can show, with the heading each has in a list. */
export const checkItems = [
  { item: 'verdict', heading: 'Verdict', meaning: 'one word for the row' },
  { item: 'use', heading: 'Share of rating', meaning: 'the hardest operation over the rating, 1 is full' },
  { item: 'governs', heading: 'Governs', meaning: 'what decides the verdict' },
  {
    item: 'open',
    heading: 'Open',
    meaning: 'what is not checked for certain, and the cells that would settle it',
  },
  { item: 'note', heading: 'Note', meaning: 'every failure, worst first, and what was understood' },
  { item: 'force', heading: 'Force', meaning: 'of the hardest operation, US ton or kN' },
  {
    item: 'route',
    heading: 'Route',
    meaning: 'the order of work: saw, burn, shear, punch, ream, notch, bend, drill, tap, countersink',
  },
  {
    item: 'hits',
    heading: 'Hits',
    meaning: 'holes the press punches in all pieces of the row; holes to be drilled are not counted',
  },
  { item: 'mass', heading: 'Mass', meaning: 'of the whole row, lb or kg' },
  {
    item: 'press',
    heading: 'Press chosen',
    meaning: 'the press the result of the row stands for, also where the row names none',
  },
  { item: 'long', heading: 'Long', meaning: 'length of a piece between its long points, in or mm' },
  { item: 'short', heading: 'Short', meaning: 'shorter edge of a piece with its miters, in or mm' },
  {
    item: 'hand',
    heading: 'Hand',
    meaning:
      'of the miters of an angle: left, right or both; none where a piece turned over has the other hand',
  },
] as const;

/** What it can show of time and cost. */
export const workItems = [
  { item: 'minutes', heading: 'Minutes', meaning: 'on the press, of the whole row' },
  {
    item: 'cost',
    heading: 'Cost',
    meaning: 'press and, where its price is given, material, of the whole row',
  },
  { item: 'price', heading: 'Price', meaning: 'the cost with the markup or margin of the shop' },
  { item: 'breaks', heading: 'Price each', meaning: 'of one piece, at the quantity breaks of the shop' },
  {
    item: 'basis',
    heading: 'Time and cost',
    meaning: 'what minutes and cost stand on: set-up and run, invented press and times, what is not in them',
  },
] as const;

export const rowItems = [...checkItems, ...workItems];

const ownHeadings = new Set(
  rowItems.flatMap(({ heading }) => [nameKey(heading), `check ${nameKey(heading)}`]),
);

/** Whether a heading is that of a check column. */
export const isOwnHeading = (heading: string): boolean => ownHeadings.has(nameKey(heading));

export type CheckItem = (typeof checkItems)[number]['item'];
export type WorkItem = (typeof workItems)[number]['item'];
export type RowItem = CheckItem | WorkItem;

export function isWorkItem(item: RowItem): item is WorkItem {
  return workItems.some((each) => each.item === item);
}

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
