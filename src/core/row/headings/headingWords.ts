import { dutchHeadings } from './dutchHeadings.js';
import { germanHeadings } from './germanHeadings.js';
import { groupFields, type GroupField, type RowField, rowFields } from './heading.js';
import { romanceHeadings } from './romanceHeadings.js';

/**
 * What German, Dutch, French and Spanish lists call the columns, besides the English names: common practice, no source.
 * A word that may mean two of them is not here.
 */
export const foreignHeadings: Partial<Record<RowField | GroupField, readonly string[]>> = Object.fromEntries(
  [...rowFields, ...groupFields].flatMap(({ key }) => {
    const words = [germanHeadings, dutchHeadings, romanceHeadings].flatMap(
      (of) => of[key]?.split(', ') ?? [],
    );
    return words.length === 0 ? [] : [[key, [...new Set(words)]]];
  }),
);

/**
 * Symbols of EN 1993-1-8, Figure 3.1, and of its clauses: along the force the end and the pitch, across it the edge. What
 * p2 is, the section says: on a plate it lies across, on an angle it is the second space of the line.
 */
export const symbols: Readonly<Record<string, RowField | GroupField>> = {
  e1: 'end',
  e2: 'edge',
  p1: 'pitch',
  d0: 'hole',
};

/** Letters that mean something beside such symbols only. */
export const lettersBesideSymbols: Readonly<Record<string, RowField | GroupField>> = {
  n: 'holes',
  w: 'gage',
  w1: 'gage',
  p: 'pitch',
  d: 'bolt',
};

/** Letters of a plate's two sizes, which mean them together. */
export const plateLetters = { t: 'thickness', b: 'width', w: 'width' } as const;

/** The words and symbols besides the English ones that name a column. */
export function otherHeadings(field: RowField | GroupField): string[] {
  const letters = Object.entries({ ...symbols, ...lettersBesideSymbols, ...plateLetters });
  return [
    ...(foreignHeadings[field] ?? []),
    ...letters.filter(([, each]) => each === field).map(([letter]) => letter),
  ];
}
