import { defaultRowItems, type RowItem, rowItems } from '../../../core/row/rowItem.js';
import { checkHeadings } from '../../shared/checkedLists.js';

/** What else a list can be given beside its verdict, share and note. */
export const furtherItems = rowItems.filter(({ item }) => !defaultRowItems.includes(item));

/** The items of a list: those that every list has, then the chosen ones in their usual order. */
export function itemsWith(chosen: readonly RowItem[]): RowItem[] {
  return [...defaultRowItems, ...furtherItems.flatMap(({ item }) => (chosen.includes(item) ? item : []))];
}

/** The heading of a new check column. The user's own column Note stays; ours is then called otherwise. */
export function checkHeading(item: RowItem, taken: readonly string[]): string {
  const heading = checkHeadings[item];
  const isTaken = taken.some((each) => each.trim().toLowerCase() === heading.toLowerCase());
  return isTaken ? `Check ${heading.toLowerCase()}` : heading;
}

const formats: Partial<Record<RowItem, string>> = {
  use: '0%',
  force: '0.0',
  mass: '0.0',
  long: '0.00',
  short: '0.00',
  minutes: '0.0',
  cost: '0.00',
  price: '0.00',
};

/** The number format of a new check column. */
export function formatOf(item: RowItem): string {
  return formats[item] ?? 'General';
}

const sentenceWidth = 60;
const numberWidth = 11;
const widths: Partial<Record<RowItem, number>> = {
  verdict: 16,
  use: 15,
  governs: 26,
  open: sentenceWidth,
  note: sentenceWidth,
  basis: sentenceWidth,
  route: 20,
  press: 15,
  breaks: 26,
};

/** The width of a new check column in characters: a verdict is one word or three, a note is whole sentences. */
export function widthOf(item: RowItem): number {
  return widths[item] ?? numberWidth;
}
