import { refuseUnknown } from '../inputError.js';
import { didYouMean } from '../nearNames.js';
import { quoted } from '../quantity/cellValue.js';
import { channels } from './channelTable.js';
import { readTrailingLength, type SectionSource } from './dimension.js';
import type { SectionText } from './section.js';
import { tableNumber } from './tableNumber.js';

const byName = new Map(channels.map((channel) => [channel.name, channel]));
/** Older and shorter spellings of names in the table. */
const otherNames = new Map<string, string>([['C8X13.7', 'C8X13.75']]);

/** `C8X11.5`, `UPN 100`, found by name whatever the unit; a length may trail. */
export function readChannel(word: string, parts: string[], source: SectionSource): SectionText {
  const family = word.toUpperCase();
  const nameParts = family === 'C' || family === 'MC' ? 2 : 1;
  const name = family + parts.slice(0, nameParts).map(tableNumber).join('X');
  const section = byName.get(otherNames.get(name) ?? name) ?? unknownChannel(name, source);
  const [trailing, ...more] = parts.slice(nameParts);
  if (more.length > 0) return unknownChannel(name, source);
  return trailing === undefined ? { section } : { section, lengthMm: readTrailingLength(trailing, source) };
}

function unknownChannel(name: string, source: SectionSource): never {
  const hint = didYouMean(name, [...byName.keys()]) ?? 'Write a name such as C8X11.5 or UPN100.';
  const problem = `${quoted(source.text)} is not a channel in the table.`;
  return refuseUnknown(source.argument, source.text, problem, hint);
}
