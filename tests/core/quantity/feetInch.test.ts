import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feetInchText, inchDenominators } from '../../../src/core/quantity/feetInch.js';
import { readLength } from '../../../src/core/quantity/readLength.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const inch = 25.4;
const text = (inches: number, denominator?: number) =>
  feetInchText({ lengthMm: inches * inch, ...(denominator === undefined ? {} : { denominator }) });

describe('feetInchText: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a length of %d', (lengthMm) => {
    expect(refusal(() => feetInchText({ lengthMm })).argument).toBe('Length');
  });

  it.each([0, 3, 12, 128, 2.5, -16, Number.NaN])('refuses a denominator of %d', (denominator) => {
    expect(refusal(() => text(30.5, denominator)).argument).toBe('Denominator');
  });
});

describe('feetInchText: limits', () => {
  it('carries a rounded fraction to the inch and the inch to the foot', () => {
    expect(text(11 + 30 / 32)).toBe(`0'-11 15/16"`);
    expect(text(11 + 31 / 32)).toBe(`1'-0"`);
    expect(text(11 + 31 / 32, 32)).toBe(`0'-11 31/32"`);
    expect(text(35.9999)).toBe(`3'-0"`);
  });

  it('refuses what rounds to nothing', () => {
    expect(text(1 / 4, 2)).toBe(`0'-0 1/2"`);
    expect(refusal(() => text(1 / 8, 2)).argument).toBe('Denominator');
  });
});

describe('feetInchText: values', () => {
  it.each([
    [30.5, undefined, `2'-6 1/2"`],
    [12, undefined, `1'-0"`],
    [0.0625, undefined, `0'-0 1/16"`],
    [12.375, undefined, `1'-0 3/8"`],
    [480, 2, `40'-0"`],
    [100.3, 64, `8'-4 19/64"`],
    [100.3, 1, `8'-4"`],
  ])('%d in to 1/%s: %s', (inches, denominator, expected) => {
    expect(text(inches, denominator)).toBe(expected);
  });

  it('rounds every exact half up, whatever it is counted in', () => {
    const halves = fc.integer({ min: 0, max: 50_000 });
    fc.assert(
      fc.property(halves, fc.constantFrom(...inchDenominators), (whole, denominator) => {
        const lengthMm = ((whole + 0.5) / denominator) * inch;
        const up = feetInchText({ lengthMm: ((whole + 1) / denominator) * inch, denominator });
        expect(feetInchText({ lengthMm, denominator })).toBe(up);
      }),
    );
  });

  it('is read as a length again, within half a fraction', () => {
    const lengths = fc.double({ min: 1, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(lengths, fc.constantFrom(...inchDenominators), (lengthMm, denominator) => {
        if (Math.round((lengthMm / inch) * denominator) === 0) return;
        const written = feetInchText({ lengthMm, denominator });
        if (written.startsWith(`0'-0"`)) return;
        const read = readLength(written, 'Length', 'mm', 'distance');
        expect(Math.abs(read - lengthMm)).toBeLessThanOrEqual((inch / denominator / 2) * (1 + 1e-9));
      }),
    );
  });

  it('shows its working', () => {
    const working = new Working();
    expect(feetInchText({ lengthMm: 30.5 * inch }, working)).toBe(working.steps.at(-1)?.result.value);
    expect(working.steps).toHaveLength(1);
  });
});
