// What the workings of the rules print, worked out by a general library where it is a formula.
import { beforeAll, describe, expect, it } from 'vitest';
import { angleGageMm } from '../../../src/core/rule/angleGage.js';
import { boltHole, type HoleFit } from '../../../src/core/rule/boltHole.js';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import { edgeCodes, edgeFits, edgeKinds, leastEdgeDistanceMm } from '../../../src/core/rule/edgeDistance.js';
import { edgeIncrement } from '../../../src/core/rule/edgeIncrement.js';
import { greatestEdgeDistanceMm } from '../../../src/core/rule/greatestEdge.js';
import { leastHoleEdge } from '../../../src/core/rule/holeEdge.js';
import { leastHoleSpacing } from '../../../src/core/rule/holeSpacing.js';
import { leastHoleToBendMm } from '../../../src/core/rule/holeToBend.js';
import { leastPieceMm } from '../../../src/core/rule/leastPiece.js';
import { leastStripWidthMm } from '../../../src/core/rule/leastStrip.js';
import { leastPitchMm } from '../../../src/core/rule/pitch.js';
import { leastWebMm } from '../../../src/core/rule/pressWeb.js';
import { Working } from '../../../src/core/working/working.js';
import { expectStep, openFormulaReferee } from '../../support/formulaReferee.js';

beforeAll(openFormulaReferee);

const bolts = ['M24', 'M42', '7/8'].map((size) => readBolt(size, 'Bolt', 'mm'));

/** Every step says what it goes by. Returns the formulas. */
function expectSteps(calculate: (working: Working) => unknown): string[] {
  const working = new Working();
  calculate(working);
  for (const step of working.steps) expectStep(step);
  return working.steps.map(({ formula }) => formula);
}

describe('steps of the rules', () => {
  it('that go by thickness', () => {
    const formulas = [3, 30].flatMap((thicknessMm) => [
      ...expectSteps((working) => leastPieceMm({ thicknessMm }, working)),
      ...expectSteps((working) => leastStripWidthMm({ thicknessMm }, working)),
      ...expectSteps((working) => leastWebMm({ thicknessMm, holeDimensionMm: 22 }, working)),
      ...expectSteps((working) => leastHoleToBendMm({ thicknessMm, insideRadiusMm: 5 }, working)),
      ...edgeCodes.flatMap((code) =>
        (['in', 'mm'] as const).flatMap((system) =>
          expectSteps((working) => greatestEdgeDistanceMm({ thicknessMm, code, system }, working)),
        ),
      ),
    ]);
    expect(formulas).toEqual(formulas.filter((formula) => formula.includes(' = ')));
    expect(new Set(formulas).size).toBe(7);
  });

  it('of edge distances, by every code, for every edge and fit that the code has', () => {
    for (const bolt of bolts)
      for (const code of edgeCodes)
        for (const edge of edgeKinds)
          for (const fit of edgeFits) {
            const plain = code === 'CSA' || code === 'AS';
            if ((plain && fit !== 'standard') || (bolt.system === 'in' && (code === 'EN' || code === 'CSA')))
              continue;
            const formulas = expectSteps((working) =>
              leastEdgeDistanceMm({ bolt, code, edge, fit }, working),
            );
            const withFit = code.startsWith('AISC') && fit !== 'standard';
            expect(formulas).toHaveLength(withFit || code === 'EN' ? 2 : 1);
          }
  });

  it('of holes and slots in a part, to edges and to each other', () => {
    const holes = [
      { shape: 'round', diameterMm: 26 },
      { shape: 'round', diameterMm: 40 },
      { shape: 'slot', widthMm: 26, lengthMm: 60 },
    ] as const;
    const bolt = readBolt('M24', 'Bolt', 'mm');
    for (const hole of holes)
      for (const code of edgeCodes) {
        const edge = expectSteps((working) =>
          leastHoleEdge({ bolt, hole, edge: 'rolled', code, slotDirection: 'towards edge' }, working),
        );
        for (const direction of ['along', 'across', 'oblique'] as const) {
          const pair = { hole, bolt };
          const spacing = expectSteps((working) =>
            leastHoleSpacing({ holes: [pair, pair], direction, code }, working),
          );
          expect(spacing).toHaveLength(code.startsWith('AISC') ? 2 : 1);
        }
        if (code === 'EN') expect(edge).toHaveLength(1);
      }
  });

  it('of pitches, holes for bolts, gages and increments', () => {
    for (const bolt of bolts) {
      for (const code of edgeCodes)
        if (code !== 'EN' || bolt.system === 'mm')
          expectSteps((working) => leastPitchMm({ bolt, code }, working));
      for (const fit of ['standard', 'oversize', 'short slot', 'long slot'] satisfies HoleFit[])
        expect(expectSteps((working) => boltHole({ bolt, fit, code: 'AISC' }, working))).toEqual(
          fit.endsWith('slot') ? ['l by table', 'dh by table'] : ['dh by table'],
        );
    }
    expect(expectSteps((working) => angleGageMm({ legMm: 100, line: 'usual' }, working))).toEqual([
      'g by table',
    ]);
    const bolt = readBolt('M20', 'Bolt', 'mm');
    const increment = (lengthTowardsMm?: number) => {
      const working = new Working();
      edgeIncrement(
        { bolt, widthMm: 24, ...(lengthTowardsMm === undefined ? {} : { lengthTowardsMm }) },
        working,
      );
      for (const step of working.steps) expectStep(step);
      return working.steps[0]?.values.map(({ symbol, value }) => [symbol, value]);
    };
    expect(increment()).toEqual([
      ['w', 24],
      ['', 'M20'],
    ]);
    expect(increment(60)).toEqual([
      ['w', 24],
      ['l', 60],
      ['', 'M20'],
    ]);
  });
});
