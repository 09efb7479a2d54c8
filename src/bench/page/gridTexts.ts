/** What the grid says in words that do not fit this page, and what is said instead; nothing where it is no news. */
const others: readonly (readonly [begins: string, instead: string | undefined])[] = [
  // Frozen columns take most of a narrow page, which can be seen.
  ['The current window is too small to display this sheet', undefined],
  [
    'The window is too small to display multiple side panels',
    'There is no room for one more panel: close one first.',
  ],
  ['This sheet is locked', 'The sheet is protected: its cells cannot be changed.'],
  [
    'You copied content from a different version of the application',
    'It was copied in another grid: only its text is pasted.',
  ],
  [
    'This operation is not possible due to a merge',
    'Merged cells are in the way: unmerge them, then try again.',
  ],
  [
    'Merged cells are preventing this operation',
    'Merged cells are in the way: unmerge them, then try again.',
  ],
  ["You can't merge cells inside of an existing filter", 'Cells of a table cannot be merged.'],
  ['An unexpected error occurred', 'The formula could not be calculated on this page.'],
];

/** A sentence of the grid as this page says it; undefined for one that is not said. */
export function pageWords(text: unknown): string | undefined {
  const sentence = String(text);
  const known = others.find(([begins]) => sentence.startsWith(begins));
  return known ? known[1] : sentence;
}
