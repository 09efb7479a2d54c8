import { refuseUnknown } from '../inputError.js';
import { didYouMean } from '../nearNames.js';
import { quoted } from '../quantity/cellValue.js';
import { beams } from './beam/beamTable.js';
import { readTrailingLength, type SectionSource } from './dimension.js';
import type { AnySection, SectionText } from './section.js';
import { tableNumber } from './tableNumber.js';

const byName = new Map(beams.map((beam) => [beam.name, beam]));
const metricFamilies = new Set(['ipe', 'ipn', 'he', 'hea', 'heb', 'hem']);
const universalFamilies = new Set(['ub', 'uc']);

/** `W12X26`, `HEA160`, `HE 160 A`, `IPE 200`, `UB 203x133x25`, found by name whatever the unit; a length may trail. */
export function readBeam(word: string, parts: string[], source: SectionSource): SectionText<AnySection> {
  const isMetric = metricFamilies.has(word);
  const nameParts = isMetric ? 1 : universalFamilies.has(word) ? 3 : 2;
  const name = isMetric
    ? metricName(word, parts[0] ?? '')
    : word.toUpperCase() + parts.slice(0, nameParts).map(tableNumber).join('X');
  const section = byName.get(name) ?? unknownBeam(name, source);
  const [trailing, ...more] = parts.slice(nameParts);
  if (more.length > 0) return unknownBeam(name, source);
  return trailing === undefined ? { section } : { section, lengthMm: readTrailingLength(trailing, source) };
}

/** `HE 160 A` and `HEA 160` are one. */
function metricName(word: string, part: string): string {
  const [, number = part, series = ''] = /^(\d+) ?-?([abm])?$/.exec(part) ?? [];
  return `${word}${series}${number}`.toUpperCase();
}

function unknownBeam(name: string, source: SectionSource): never {
  const hint = didYouMean(name, [...byName.keys()]) ?? 'Write a name such as W12X26 or HEA160.';
  return refuseUnknown(
    source.argument,
    source.text,
    `${quoted(source.text)} is not a beam in the table.`,
    hint,
  );
}
