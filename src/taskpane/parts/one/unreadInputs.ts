import type { RowResult } from '../../../core/row/rowResult.js';

/** What cannot be read of a part, whichever press it is held against: the same in every result. */
export function unreadInputs(results: readonly RowResult[]): string[] {
  const [first, ...others] = results.map((result) =>
    result.blank
      ? []
      : result.findings.flatMap(({ verdict, note, ofPressCell }) =>
          verdict === 'Check input' && !ofPressCell && note !== '' ? note : [],
        ),
  );
  const common = (first ?? []).filter((note) => others.every((notes) => notes.includes(note)));
  return [...new Set(common)];
}

export function asSentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
