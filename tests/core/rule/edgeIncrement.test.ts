import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import { edgeIncrement } from '../../../src/core/rule/edgeIncrement.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const inch = 25.4;
const bolts = ['1/2', '3/4', '1', '1-1/8', '1-1/2', 'M16', 'M20', 'M24', 'M36', 'M42'];
const bolt = (size: string) => readBolt(size, 'Bolt', 'in');
const ofRound = (size: string, widthIn: number) =>
  edgeIncrement({ bolt: bolt(size), widthMm: widthIn * inch });
const ofSlot = (size: string, widthIn: number, lengthIn: number) =>
  edgeIncrement({ bolt: bolt(size), widthMm: widthIn * inch, lengthTowardsMm: lengthIn * inch });

describe('edgeIncrement: arguments', () => {
  it('refuses a width that is not above zero, and a bolt the table does not have', () => {
    expect(refusal(() => ofRound('3/4', 0)).argument).toBe('Hole');
    expect(refusal(() => ofRound('13/16', 7 / 8)).code).toBe('unknown');
  });
});

describe('edgeIncrement: limits', () => {
  it('adds nothing up to the standard hole, C2 up to the oversize one, and half of the excess above', () => {
    expect(ofRound('3/4', 13 / 16).incrementMm).toBe(0);
    expect(ofRound('3/4', 27 / 32).incrementMm).toBeCloseTo(inch / 16, 9);
    expect(ofRound('3/4', 15 / 16)).toEqual({ incrementMm: inch / 16, source: 'AISC 360-22 Table J3.5' });
    const larger = ofRound('3/4', 1 + 5 / 16);
    expect(larger.incrementMm).toBeCloseTo(inch * (1 / 16 + 3 / 16), 9);
    expect(larger.beyondTable).toBe('larger than oversize');
  });

  it('adds C2 of the short slot up to its length, and from there what the footnote permits', () => {
    expect(ofSlot('3/4', 13 / 16, 7 / 8).incrementMm).toBeCloseTo(inch / 8, 9);
    expect(ofSlot('3/4', 13 / 16, 1).incrementMm).toBeCloseTo(inch / 8, 9);
    expect(ofSlot('3/4', 13 / 16, 1.5).incrementMm).toBeCloseTo((inch * 3) / 8, 9);
    expect(ofSlot('3/4', 13 / 16, 1.875).incrementMm).toBeCloseTo((inch * 9) / 16, 9);
    expect(ofSlot('3/4', 13 / 16, 1.875)).not.toHaveProperty('beyondTable');
    const longer = ofSlot('3/4', 13 / 16, 2.875);
    expect(longer.incrementMm).toBeCloseTo(inch * (9 / 16 + 1 / 2), 9);
    expect(longer.beyondTable).toBe('longer than a long slot');
  });

  it('adds the increment of an oversize hole for a slot that is wider than the standard hole', () => {
    expect(ofSlot('7/8', 1 + 5 / 16, 1 + 5 / 16).incrementMm).toBeGreaterThan(ofRound('7/8', 1).incrementMm);
  });
});

describe('edgeIncrement: values', () => {
  it('never falls as the hole or the slot grows', () => {
    const size = fc.double({ min: 1, max: 150, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...bolts), size, size, size, (name, widthMm, more, lengthMm) => {
        const of = (width: number, length?: number) =>
          edgeIncrement({
            bolt: bolt(name),
            widthMm: width,
            ...(length === undefined ? {} : { lengthTowardsMm: length }),
          }).incrementMm;
        expect(of(widthMm + more)).toBeGreaterThanOrEqual(of(widthMm));
        const length = widthMm + lengthMm;
        expect(of(widthMm, length)).toBeGreaterThanOrEqual(of(widthMm));
        expect(of(widthMm, length + more)).toBeGreaterThanOrEqual(of(widthMm, length));
      }),
    );
  });

  it('shows its working', () => {
    const working = new Working();
    const { incrementMm } = edgeIncrement({ bolt: bolt('M20'), widthMm: 24 }, working);
    expect(working.steps.map(({ result }) => result.value)).toEqual([incrementMm]);
    expect(working.steps[0]?.source).toBe('AISC 360-22 Table J3.5M');
  });

  it('a slot needs no less than a round hole of its width, however short it is', () => {
    const size = fc.double({ min: 20, max: 80, noNaN: true });
    fc.assert(
      fc.property(size, size, (widthMm, moreMm) => {
        const m20 = readBolt('M20', 'Bolt', 'mm');
        const asRound = edgeIncrement({ bolt: m20, widthMm }).incrementMm;
        const slotted = edgeIncrement({ bolt: m20, widthMm, lengthTowardsMm: widthMm + moreMm / 100 });
        expect(slotted.incrementMm).toBeGreaterThanOrEqual(asRound);
      }),
    );
  });
});
