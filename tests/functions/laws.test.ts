// Laws that hold whatever the numbers are: each over thousands of random calls of the functions as the sheet has them.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readShop } from '../../src/core/shop/readShop.js';
import { bayA, pressTable } from '../support/sampleShop.js';
import { inchText } from '../support/inches.js';
import { SheetRuntime } from '../support/sheetRuntime.js';

const runs = { numRuns: 3000, seed: 7 };
const close = 1e-9;
/** NIST SP 811, Appendix B.8 and B.9: exact by definition. */
const newtonPerUsTon = 2000 * 4.448_221_615_260_5;
const kilogramPerPound = 0.453_592_37;

/** A press without size limits, so that only the force decides its share. */
const open = {
  ...bayA,
  'Punch largest hole': 'none',
  'Punch largest hole thickness': 'none',
  'Punch stroke': 'none',
};
const shop = readShop({ presses: pressTable({ 'Bay A': open, 'Bay B': { ...open, 'Punch force': 30 } }) });
const sheet = new SheetRuntime(shop);
const number = (name: string, ...inputs: (string | number | null)[]) => sheet.number(name, ...inputs);

const grade = fc.constantFrom('A36', 'A572-50', 'S355', 'Mild', 'A514', '304', '6061-T6');
const sixteenths = (least: number, greatest: number) => fc.integer({ min: least, max: greatest });
const inch = (parts: number) => parts / 16;
const expectClose = (a: number, b: number) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(close * Math.abs(b));

describe('laws of the functions', () => {
  it('punching force grows with size, thickness and strength', () => {
    fc.assert(
      fc.property(
        sixteenths(2, 40),
        sixteenths(2, 24),
        fc.integer({ min: 100, max: 900 }),
        sixteenths(1, 8),
        (hole, t, tau, more) => {
          const force = (d: number, thickness: number, strength: number) =>
            number('PUNCHFORCE', inch(d), inch(thickness), `shear ${strength} MPa`);
          const base = force(hole, t, tau);
          expect(force(hole + more, t, tau)).toBeGreaterThan(base);
          expect(force(hole, t + more, tau)).toBeGreaterThan(base);
          expect(force(hole, t, tau + more)).toBeGreaterThan(base);
        },
      ),
      runs,
    );
  });

  it('shearing force grows with width, thickness and strength, and never with the rake', () => {
    fc.assert(
      fc.property(
        sixteenths(16, 160),
        sixteenths(2, 14),
        fc.integer({ min: 100, max: 900 }),
        fc.integer({ min: 0, max: 12 }),
        (w, t, tau, rake) => {
          const force = (width: number, thickness: number, strength: number, angle: number) =>
            number(
              'SHEARFORCE',
              `FB ${inchText(thickness)}x${inchText(width)}`,
              `shear ${strength} MPa`,
              'in',
              angle,
            );
          const base = force(w, t, tau, rake);
          expect(force(w + 16, t, tau, rake)).toBeGreaterThanOrEqual(base * (1 - close));
          expect(force(w + 16, t + 1, tau, rake)).toBeGreaterThan(base);
          expect(force(w, t, tau + 10, rake)).toBeGreaterThan(base);
          expect(force(w, t, tau, rake + 1)).toBeLessThanOrEqual(base * (1 + close));
        },
      ),
      runs,
    );
  });

  it('the unit of the shop changes only the unit of the result', () => {
    fc.assert(
      fc.property(sixteenths(4, 40), sixteenths(2, 24), grade, (hole, t, name) => {
        const texts = [`Ø${inchText(hole)}"`, `${inchText(t)}"`, name] as const;
        expectClose(
          number('PUNCHFORCE', ...texts, 'mm') * 1000,
          number('PUNCHFORCE', ...texts, 'in') * newtonPerUsTon,
        );
        expectClose(number('HOLEMIN', texts[1], name, 'mm'), number('HOLEMIN', texts[1], name, 'in') * 25.4);
        expectClose(
          number('SECTIONMASS', `PL${inchText(t)}"X6"`, `${hole}"`, 'mm'),
          number('SECTIONMASS', `PL${inchText(t)}"X6"`, `${hole}"`, 'in') * kilogramPerPound,
        );
      }),
      runs,
    );
  });

  it('a fraction as text, a decimal as text and a number are the same', () => {
    fc.assert(
      fc.property(sixteenths(4, 40), sixteenths(2, 24), grade, (hole, t, name) => {
        const byNumber = number('PUNCHFORCE', inch(hole), inch(t), name);
        expect(number('PUNCHFORCE', `Ø${inchText(hole)}`, inchText(t), name)).toBe(byNumber);
        expect(number('PUNCHFORCE', `${inch(hole)}`, `${inch(t)}"`, name)).toBe(byNumber);
        expectClose(number('PUNCHFORCE', `${inch(hole) * 25.4} mm`, `${inch(t) * 25.4} mm`, name), byNumber);
      }),
      runs,
    );
  });

  it('the smallest hole is never under the thickness', () => {
    fc.assert(
      fc.property(sixteenths(1, 32), grade, (t, name) => {
        expect(number('HOLEMIN', inch(t), name)).toBeGreaterThanOrEqual(inch(t));
      }),
      runs,
    );
  });

  it('a sheared edge never needs less than a rolled one, an oversize hole never less than a standard one', () => {
    const bolt = fc.constantFrom(
      '1/2',
      '5/8',
      '3/4',
      '7/8',
      '1',
      '1-1/8',
      '1-1/4',
      'M16',
      'M20',
      'M24',
      'M30',
      'M36',
    );
    const code = fc.constantFrom('AISC', 'AISC 360-22', 'EN', 'AS');
    fc.assert(
      fc.property(bolt, code, (size, name) => {
        // EN holes are in its metric table only.
        fc.pre(name !== 'EN' || size.startsWith('M'));
        const edge = (kind: string) => number('EDGEMIN', size, 'in', kind, name);
        expect(edge('sheared')).toBeGreaterThanOrEqual(edge('machine cut'));
        expect(edge('machine cut')).toBeGreaterThanOrEqual(edge('rolled'));
        if (name === 'AS') return;
        const fitted = (fit: string) => number('EDGEMIN', size, 'in', 'rolled', name, fit);
        expect(fitted('oversize')).toBeGreaterThanOrEqual(fitted('standard'));
      }),
      runs,
    );
  });

  it('the share of a rating is linear in the force, and twice as large on half the press', () => {
    fc.assert(
      fc.property(sixteenths(8, 20), sixteenths(2, 8), grade, (hole, t, name) => {
        const share = (press: string) => sheet.call('PUNCHUSE', press, inch(hole), inch(t), name, shop.stamp);
        const whole = share('Bay A');
        fc.pre(typeof whole === 'number');
        expectClose(whole as number, number('PUNCHFORCE', inch(hole), inch(t), name, shop.stamp) / 60);
        expectClose(share('Bay B') as number, 2 * (whole as number));
      }),
      runs,
    );
  });
});
