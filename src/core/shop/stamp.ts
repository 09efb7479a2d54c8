import type { LengthUnit } from '../quantity/units.js';

/** The edition of the rules; raised only when the result of an unchanged workbook changes. */
export const rulesEdition = 1;

interface StampParts {
  unit: LengthUnit;
  pressCount: number;
  incomplete: readonly string[];
  /** Settings, grades and tools that could not be read. */
  unreadable: number;
  unknownRows: number;
  hash: string;
}

/** The text of the shop cell: `in · 3 presses · rules 1 · 7K7Q-29MX-DT4P`. */
export function stampText({
  unit,
  pressCount,
  incomplete,
  unreadable,
  unknownRows,
  hash,
}: StampParts): string {
  const parts: string[] = [unit, counted(pressCount, 'press', 'presses')];
  if (incomplete.length > 0) parts.push(`${incomplete.join(', ')} incomplete`);
  if (unreadable > 0) parts.push(counted(unreadable, 'entry unreadable', 'entries unreadable'));
  if (unknownRows > 0) parts.push(counted(unknownRows, 'row not used', 'rows not used'));
  return [...parts, `rules ${rulesEdition}`, hash].join(' · ');
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** The hash and the edition a stamp carries; undefined where the text is no stamp. */
export function readStamp(text: string): { hash: string; edition: number } | undefined {
  const match = /rules (\d{1,4}) · ([A-HJ-NP-Z2-9]{4}-[A-HJ-NP-Z2-9]{4}-[A-HJ-NP-Z2-9]{4})$/.exec(
    text.trim(),
  );
  return match?.[1] && match[2] ? { edition: Number(match[1]), hash: match[2] } : undefined;
}
