import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/core/inputError.js';
import { allNotations } from '../../../src/core/notation/allNotations.js';
import { refused } from '../../../src/core/notation/notation.js';
import { readingOf } from './readingOf.js';
import type { LengthUnit } from '../../../src/core/quantity/units.js';

function reading(kind: (typeof allNotations)[number]['kind'], text: string, unit: LengthUnit): string {
  try {
    return readingOf(kind, text, unit);
  } catch (error) {
    if (error instanceof InputError) return refused;
    throw error;
  }
}

describe('the table of notations', () => {
  it('has at least 250 lines, each once', () => {
    expect(allNotations.length).toBeGreaterThanOrEqual(250);
    expect(new Set(allNotations.map(({ kind, text }) => `${kind} ${text}`)).size).toBe(allNotations.length);
  });

  it.each(allNotations)('$kind $text is $inInches in an inch shop, $inMm in a mm shop', (line) => {
    expect(reading(line.kind, line.text, 'in')).toBe(line.inInches);
    expect(reading(line.kind, line.text, 'mm')).toBe(line.inMm);
  });
});

const fractions: Record<string, string> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
};
const oneOf = <T>(...values: T[]) => fc.constantFrom(...values);

interface Spelling {
  times: string;
  space: string;
  inchMark: string;
  footMark: string;
  diameter: string;
  dash: string;
  upper: boolean;
  unicodeFractions: boolean;
  around: string;
  spacedTimes: boolean;
}

const spelling: fc.Arbitrary<Spelling> = fc.record({
  times: oneOf('x', 'X', '×', '*', '✕'),
  space: oneOf(' ', '  ', '\u00A0', ' \u2009'),
  inchMark: oneOf('"', '″', '”', "''"),
  footMark: oneOf("'", '′', '’'),
  diameter: oneOf('Ø', 'ø', '⌀', 'φ'),
  dash: oneOf('-', '–', '−', '‐'),
  upper: fc.boolean(),
  unicodeFractions: fc.boolean(),
  around: oneOf('', ' ', '\u200B', '\uFEFF', '\u200E', '\n'),
  spacedTimes: fc.boolean(),
});

/** The same text in another spelling: case, spaces, signs, marks and fraction characters. */
function respelt(text: string, to: Spelling): string {
  const times = to.spacedTimes ? ` ${to.times} ` : to.times;
  const cased = to.upper ? text.toUpperCase() : text.toLowerCase();
  const marked = cased
    .replace(/(?<=[\d"'.] ?|mm ?)x(?= ?[\dø])/gi, times)
    .replaceAll('"', to.inchMark)
    .replaceAll("'", to.footMark)
    .replace(/ø/gi, to.diameter)
    .replaceAll('-', to.dash)
    .replace(/(?<![\d/])(\d\/\d)(?![\d/])/g, (all) => (to.unicodeFractions ? (fractions[all] ?? all) : all))
    .replaceAll(' ', to.space);
  return `${to.around}${marked}${to.around}`;
}

describe('spaces, case, signs between sizes, marks, dashes and fraction characters', () => {
  it.each(allNotations)('change nothing of $kind $text', ({ kind, text, inInches, inMm }) => {
    const plain = kind === 'grade';
    fc.assert(
      fc.property(spelling, (to) => {
        const written = plain
          ? respelt(text, { ...to, times: 'x', spacedTimes: false, inchMark: '"', footMark: "'" })
          : respelt(text, to);
        // A strength that is typed is named as it was typed.
        const named = (name: string) => (/^(?:tensile|shear)/.test(text) ? name.toLowerCase() : name);
        expect(named(reading(kind, written, 'in').replace(/\s+/g, ' '))).toBe(named(inInches));
        expect(named(reading(kind, written, 'mm').replace(/\s+/g, ' '))).toBe(named(inMm));
      }),
      { numRuns: 40 },
    );
  });
});
