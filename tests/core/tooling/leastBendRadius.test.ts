import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import { type BendRadiusInput, leastBendRadius } from '../../../src/core/tooling/leastBendRadius.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const known = ['Mild', 'A36', 'A529-50', 'A572-50', 'A588', 'A514', 'S235', 'S275', 'S355'];
const least = (name: string, thicknessMm: number, how: Partial<BendRadiusInput> = {}) =>
  leastBendRadius({ grade: findGrade(name, 'Grade'), thicknessMm, ...how });

describe('leastBendRadius: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a thickness of %d', (thicknessMm) => {
    expect(refusal(() => least('A36', thicknessMm)).argument).toBe('Thickness');
  });
});

describe('leastBendRadius: limits', () => {
  it.each([
    ['A572-50', 25.4, 1.5],
    ['A572-50', 26, 2],
    ['A572-50', 50.8, 2],
    ['A572-50', 51, 2.5],
    ['A36', 50.8, 1.5],
    ['A36', 51, 2],
    ['A514', 20, 1.75],
    ['A514', 20.1, 2.25],
    ['A514', 26, 4.5],
    ['A514', 60, 5.5],
  ])('%s %d mm thick takes %d t', (name, thicknessMm, multiple) => {
    const found = least(name, thicknessMm);
    expect(found.known && found.leastMm / thicknessMm).toBeCloseTo(multiple, 9);
  });

  it.each([
    ['S355', 8, 16],
    ['S355', 8.1, 20],
    ['S235', 30, 60],
    ['S235', 1.1, 1.6],
  ])('%s %d mm thick takes %d mm', (name, thicknessMm, leastMm) => {
    expect(least(name, thicknessMm)).toMatchObject({ known: true, leastMm });
  });

  it('knows nothing of thicknesses and grades the tables do not have', () => {
    expect(least('S235', 1)).toEqual({ known: false, why: 'thickness' });
    expect(least('S355', 30.1)).toEqual({ known: false, why: 'thickness' });
    for (const name of ['304', '6061-T6', 'A992', '350W', 'S460']) {
      expect(least(name, 10)).toEqual({ known: false, why: 'grade' });
    }
  });

  it('is at least 3 t for galvanized steel, which is certain of steels that stand in no table too', () => {
    expect(least('A36', 10, { galvanized: true })).toMatchObject({ known: true, leastMm: 30 });
    expect(least('A514', 30, { galvanized: true })).toMatchObject({ leastMm: 135 });
    expect(least('350W', 10, { galvanized: true })).toEqual({ known: false, why: 'grade', failsUnderMm: 30 });
    expect(least('6061-T6', 10, { galvanized: true })).toEqual({ known: false, why: 'grade' });
  });
});

describe('leastBendRadius: values', () => {
  it('never falls along the rolling direction, galvanized, or in thicker material', () => {
    const thickness = fc.double({ min: 1.01, max: 28, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...known),
        thickness,
        fc.double({ min: 0, max: 2, noNaN: true }),
        (name, t, more) => {
          const of = (thicknessMm: number, how: Partial<BendRadiusInput> = {}) => {
            const found = least(name, thicknessMm, how);
            return found.known ? found.leastMm : Number.NaN;
          };
          expect(of(t, { alongRolling: true })).toBeGreaterThanOrEqual(of(t));
          expect(of(t, { galvanized: true })).toBeGreaterThanOrEqual(of(t));
          expect(of(t + more)).toBeGreaterThanOrEqual(of(t));
        },
      ),
    );
  });

  it('shows its working, and gives the same with and without it', () => {
    for (const name of known) {
      for (const galvanized of [false, true]) {
        const working = new Working();
        const input = { grade: findGrade(name, 'Grade'), thicknessMm: 10, galvanized };
        const shown = leastBendRadius(input, working);
        expect(leastBendRadius(input)).toEqual(shown);
        expect(working.steps.at(-1)).toMatchObject(
          shown.known ? { result: { value: shown.leastMm }, source: shown.source } : {},
        );
      }
    }
  });
});
