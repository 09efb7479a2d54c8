import { refuse } from '../inputError.js';
import { type CellValue, quoted } from '../quantity/cellValue.js';
import { readLength } from '../quantity/readLength.js';
import { readMass } from '../quantity/readMass.js';
import { readNumber } from '../quantity/readNumber.js';
import type { LengthUnit } from '../quantity/units.js';

/** What one lift takes of everything up to a mass and a length. */
export interface HandlingClass {
  /** Infinity where the class has no bound. */
  massKg: number;
  lengthMm: number;
  seconds: number;
}

const noBound = Number.POSITIVE_INFINITY;
const massFirst = /^[\d.,]+\s?(?:kg|lb)(?=\s|$)/i;

/**
 * Handling classes such as `50 lb 10 ft: 15; 500 lb 20 ft: 60; more: 240`: the greatest mass, the greatest length
 * where it counts, and the seconds of a lift. The last one is for all that is more.
 */
export function readHandlingClasses(cell: CellValue, argument: string, unit: LengthUnit): HandlingClass[] {
  const allowed = 'Write classes such as 50 lb 10 ft: 15; 500 lb 20 ft: 60; more: 240 (seconds of a lift).';
  const wrong = (problem: string) => refuse(argument, String(cell), problem, allowed);
  const classes = String(cell)
    .split(';')
    .map((text) => {
      const [what = '', seconds = ''] = text.split(':').map((part) => part.trim());
      const more = what.toLowerCase() === 'more';
      const mass = massFirst.exec(what)?.[0];
      if (!more && mass === undefined) return wrong(`${quoted(text.trim())} is not a class.`);
      const length = what.slice(mass?.length).trim();
      const time = readNumber(seconds, argument, allowed);
      if (time < 0 || time > 36000) return wrong(`${quoted(seconds)} is out of range.`);
      return {
        massKg: mass === undefined ? noBound : readMass(mass, argument, unit),
        lengthMm: more || length === '' ? noBound : readLength(length, argument, unit, 'distance'),
        seconds: time,
      };
    });
  const last = classes.at(-1);
  if (last?.massKg !== noBound || last.lengthMm !== noBound)
    return wrong(`${quoted(cell)} has no class for more.`);
  return classes;
}

/**
 * Seconds of a lift: of the first class that takes both the mass and the length.
 * Source: common practice, no source.
 */
export function handlingSeconds(
  classes: readonly HandlingClass[],
  { massKg, lengthMm }: { massKg: number; lengthMm: number },
): number {
  const takes = (each: HandlingClass) => massKg <= each.massKg && lengthMm <= each.lengthMm;
  return classes.find(takes)?.seconds ?? 0;
}
