// What the workings of the forces print, worked out by a general library.
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { bendForceN } from '../../../src/core/force/bend.js';
import { cornerClipForceN } from '../../../src/core/force/cornerClip.js';
import { flatBarShearForceN } from '../../../src/core/force/flatBarShear.js';
import { notchForceN } from '../../../src/core/force/notch.js';
import { notchBites } from '../../../src/core/force/notchBites.js';
import { notchPlaces } from '../../../src/core/force/notchCutLength.js';
import { punchForceN } from '../../../src/core/force/punch.js';
import { sectionShearForceN } from '../../../src/core/force/sectionShear.js';
import { strippingForceN } from '../../../src/core/force/strip.js';
import { Working } from '../../../src/core/working/working.js';
import { expectFormula, openFormulaReferee } from '../../support/formulaReferee.js';

beforeAll(openFormulaReferee);

const size = fc.double({ min: 1, max: 300, noNaN: true });
const angle = (greatest: number) =>
  fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: greatest, noNaN: true }));
const strength = { thicknessMm: 10, shearStrengthMPa: 345 };

function steps(calculate: (working: Working) => unknown) {
  const working = new Working();
  calculate(working);
  return working.steps;
}

describe('formulas of the forces give their results', () => {
  it('bending', () => {
    const input = { tensileMPa: 500, lengthMm: 300, thicknessMm: 6, veeMm: 60 };
    expectFormula(steps((working) => bendForceN(input, working))[0]);
  });

  it('corner clip', () => {
    const shown = steps((working) => cornerClipForceN({ ...strength, alongMm: 20, acrossMm: 35 }, working));
    expect(shown.map((step) => expectFormula(step).title)).toEqual([
      'Cut of the corner clip',
      'Force of the corner clip',
    ]);
  });

  it('shear of a flat bar, narrow or wide, with and without rake', () => {
    fc.assert(
      fc.property(size, size, angle(0.5), (widthMm, thicknessMm, rakeRad) => {
        const input = { ...strength, widthMm, thicknessMm, rakeRad };
        const [step] = steps((working) => flatBarShearForceN(input, working));
        const wide = widthMm * Math.tan(rakeRad) >= thicknessMm;
        // The whole table of values is shown for every bar, used or not.
        expectFormula(step, [...(wide ? ['w'] : []), ...(rakeRad === 0 ? ['φ'] : [])]);
      }),
    );
  });

  it('shear of a bar as wide as the engaged length is that of a wide one', () => {
    const rakeRad = 0.1;
    const input = { widthMm: 1, thicknessMm: Math.tan(rakeRad), shearStrengthMPa: 345, rakeRad };
    const [step] = steps((working) => flatBarShearForceN(input, working));
    expect(expectFormula(step, ['w']).formula).toContain('t²');
  });

  it.each(notchPlaces)('notch at the place %s', (where) => {
    const shown = steps((working) => notchForceN({ ...strength, widthMm: 50, depthMm: 20, where }, working));
    for (const step of shown) expectFormula(step);
    expect(shown[0]?.title).toBe(where === 'vee' ? 'Flanks of the vee notch' : `Cut of the ${where} notch`);
  });

  it('bites of a notch; a tool without a limit has no size to show', () => {
    const notch = { ...strength, widthMm: 100, depthMm: 80, where: 'edge' } as const;
    const bites = (toolWidthMm: number, toolDepthMm: number) =>
      steps((working) => notchBites({ ...notch, toolWidthMm, toolDepthMm }, working))[0];
    expect(expectFormula(bites(60, 50)).result.value).toBe(4);
    expect(bites(Infinity, 50)?.values.map(({ symbol }) => symbol)).toEqual(['w', 'd', 'dt']);
    expect(bites(60, Infinity)?.values.map(({ symbol }) => symbol)).toEqual(['w', 'wt', 'd']);
  });

  it('punching of one hole and several, with a flat punch and one with shear', () => {
    for (const count of [1, 3])
      for (const punchShearMm of [0, 2, 3.8, 5, 9]) {
        const input = { ...strength, cutPerimeterMm: 80, count, punchShearMm };
        const shown = steps((working) => punchForceN(input, working));
        expect(shown).toHaveLength(punchShearMm === 0 ? 1 : 2);
        for (const step of shown) expectFormula(step);
        expect(shown.at(-1)?.formula).toBe(
          `F = ${count === 1 ? '' : 'n · '}p · t · τ${punchShearMm > 3.8 ? ' · c' : ''}`,
        );
      }
  });

  it('shear on the punch brings the caution that the stroke grows', () => {
    const input = { ...strength, cutPerimeterMm: 80, punchShearMm: 5 };
    const [ground, force] = steps((working) => punchForceN(input, working));
    expect(ground?.cautions).toEqual([expect.stringContaining('stroke')]);
    expect(force?.cautions).toBeUndefined();
  });

  it('shear of a section, square and mitered', () => {
    fc.assert(
      fc.property(size, angle(1.3), (areaMm2, miterRad) => {
        const input = { areaMm2, shearStrengthMPa: 345, miterRad };
        const [step] = steps((working) => sectionShearForceN(input, working));
        expect(expectFormula(step).formula.includes('θ')).toBe(miterRad !== 0);
      }),
    );
  });

  it('stripping', () => {
    const input = { punchForceN: 200_000, strippingShare: 0.15 };
    expectFormula(steps((working) => strippingForceN(input, working))[0]);
  });
});
