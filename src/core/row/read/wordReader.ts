import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import { nameKey } from '../../shop/table.js';

/**
 * A reader of cells that hold one word of a few: every spelling of a value, the one to recommend first. Case, spaces,
 * hyphens and points make no difference.
 */
export function wordReader<Value extends string>(
  spellings: Record<Value, readonly string[]>,
  what: string,
  fix?: string,
): (value: CellValue, argument: string) => Value {
  const values = Object.keys(spellings) as Value[];
  const known = new Map(values.flatMap((value) => spellings[value].map((word) => [wordKey(word), value])));
  const allowed = fix ?? `Write ${values.map((value) => spellings[value][0]).join(', ')}.`;
  return (value, argument) =>
    known.get(wordKey(value)) ?? refuse(argument, String(value), `${quoted(value)} is not ${what}.`, allowed);
}

function wordKey(text: CellValue): string {
  return nameKey(text)
    .replace(/[-\u2010-\u2015.]/g, ' ')
    .replace(/ +/g, ' ')
    .trim();
}
