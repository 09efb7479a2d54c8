import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import { bendVee } from '../../../src/core/press/bendVee.js';
import { leastBendRadius } from '../../../src/core/tooling/leastBendRadius.js';
import { Working } from '../../../src/core/working/working.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

function press(openings: PressCells[string]) {
  const [found] = shopWith({ 'Bend V openings': openings }).presses;
  if (!found) throw new Error('the sample shop has no press');
  return found;
}
const free = press('none');
const job = (grade: string, thicknessMm: number, galvanized?: boolean) => ({
  grade: findGrade(grade, 'Grade'),
  thicknessMm,
  veeRatio: 8,
  ...(galvanized === undefined ? {} : { galvanized }),
});

describe('bendVee: the opening that is wanted', () => {
  // Least inside radius: S355 of 8 mm by EN 10025-2, 16 mm; A514 above 1 in by ASTM A6, 4.5 t; galvanized, 3 t.
  it.each([
    ['A36', 10, undefined, 90],
    ['S355', 8, undefined, 96],
    ['A514', 30, undefined, 810],
    ['A36', 10, true, 180],
    ['A36', 10, false, 90],
    // No table has the grade, so only the ratio and the hot-dip galvanizing count.
    ['A992', 10, undefined, 80],
    ['A992', 10, true, 180],
  ] as const)('%s of %d mm, galvanized %s: %d mm', (grade, thicknessMm, galvanized, veeMm) => {
    expect(bendVee(free, job(grade, thicknessMm, galvanized)).veeMm).toBeCloseTo(veeMm, 9);
  });

  it('goes by the ratio where that is wider', () => {
    expect(bendVee(free, { ...job('A36', 10), veeRatio: 12 }).veeMm).toBeCloseTo(120, 9);
  });

  it('never gives an inside radius under the least that is known', () => {
    const grades = fc.constantFrom('Mild', 'A36', 'A572-50', 'A514', 'S235', 'S355');
    const thickness = fc.double({ min: 1.1, max: 30, noNaN: true });
    fc.assert(
      fc.property(grades, thickness, fc.boolean(), (grade, thicknessMm, galvanized) => {
        const given = job(grade, thicknessMm, galvanized);
        const least = leastBendRadius(given);
        const { insideRadiusMm = 0 } = bendVee(free, given);
        expect(least.known && insideRadiusMm >= least.leastMm * (1 - 1e-9)).toBe(true);
      }),
    );
  });
});

describe('bendVee: what is on hand', () => {
  it('is the smallest that is wide enough, with the inside radius it makes', () => {
    expect(bendVee(press('60 mm, 90 mm, 120 mm'), job('A36', 10))).toMatchObject({
      veeMm: 90,
      insideRadiusMm: 15,
      finding: { rule: 'vee opening', outcome: 'held', exact: false, onHandMm: [60, 90, 120] },
    });
  });

  it('is no tool where none is wide enough for the radius, though one is for the ratio', () => {
    const { veeMm, finding } = bendVee(press('80 mm, 85 mm'), job('A36', 10));
    expect(veeMm).toBeUndefined();
    expect(finding).toMatchObject({ outcome: 'failed', verdict: 'No tool', exact: false });
  });

  it('is taken as asked for, however sharp the bend', () => {
    expect(bendVee(press('40 mm, 60 mm'), { ...job('A36', 10), veeMm: 40 })).toMatchObject({
      veeMm: 40,
      finding: { outcome: 'held', exact: true, wantedMm: 40 },
    });
  });

  it('is not known of a blank cell, and any opening may be had without a limit', () => {
    expect(bendVee(press(null), job('A36', 10))).toMatchObject({
      veeMm: 90,
      finding: { rule: 'blank item', item: 'bendVeeOpenings' },
    });
    expect(bendVee(free, job('A36', 10)).finding).toMatchObject({ outcome: 'held', onHandMm: [] });
  });

  it('names the radius in its step where it counts', () => {
    const formulaOf = (grade: string) => {
      const working = new Working();
      bendVee(free, job(grade, 10), working);
      return working.steps[0]?.formula;
    };
    expect(formulaOf('A36')).toBe('V ≥ k · t and V ≥ 6 · r0, of those on hand');
    expect(formulaOf('A992')).toBe('V ≥ k · t, of those on hand');
  });
});
