import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import {
  type EdgeCode,
  edgeCodes,
  edgeKinds,
  leastEdgeDistanceMm,
} from '../../../src/core/rule/edgeDistance.js';
import { type HoleEdgeInput, leastHoleEdge } from '../../../src/core/rule/holeEdge.js';
import type { Hole } from '../../../src/core/tooling/hole.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const round = (diameterMm: number): Hole => ({ shape: 'round', diameterMm });
const slot = (widthMm: number, lengthMm: number): Hole => ({ shape: 'slot', widthMm, lengthMm });
const input = (size: string | undefined, hole: Hole, code: EdgeCode): HoleEdgeInput => ({
  ...(size === undefined ? {} : { bolt: readBolt(size, 'Bolt', 'mm') }),
  hole,
  edge: 'rolled',
  code,
});
const least = (...args: Parameters<typeof input>) => leastHoleEdge(input(...args));

describe('leastHoleEdge: arguments', () => {
  it('refuses sizes that are not above zero', () => {
    expect(refusal(() => least('M20', round(0), 'EN')).argument).toBe('Hole');
    const bolt = { diameterMm: Number.NaN, system: 'mm', name: 'M' } as const;
    // EN does not need the bolt, and refuses a wrong one all the same.
    for (const code of ['AS', 'EN'] as const) {
      const wrong = { ...input(undefined, round(22), code), bolt };
      expect(refusal(() => leastHoleEdge(wrong)).argument).toBe('Bolt');
    }
  });
});

describe('leastHoleEdge: what is not known', () => {
  it.each(['AISC', 'AISC 360-22', 'CSA', 'AS'] as const)('%s needs a bolt', (code) => {
    expect(least(undefined, round(22), code)).toEqual({ known: false, why: 'no bolt' });
  });

  it('names the codes that know a bolt the table does not have', () => {
    expect(least('M12', round(13), 'AISC')).toEqual({
      known: false,
      why: 'bolt not in the table',
      otherCodes: ['EN', 'AS'],
    });
    const inch = least('3/4', round(20.6375), 'CSA');
    expect(inch).toMatchObject({
      why: 'bolt not in the table',
      otherCodes: ['AISC', 'AISC 360-22', 'EN', 'AS'],
    });
  });

  it.each(['CSA', 'AS'] as const)(
    '%s: oversize holes and slots, which need no less than a standard hole',
    (code) => {
      const standard = least('M20', round(22), code);
      const failsUnderMm = standard.known ? standard.leastMm : Number.NaN;
      expect(least('M20', round(22.1), code)).toMatchObject({
        known: false,
        why: 'oversize hole',
        failsUnderMm,
      });
      expect(least('M20', slot(22, 26), code)).toMatchObject({ known: false, why: 'slot', failsUnderMm });
    },
  );

  it('a square needs something between the round hole in it and the one around it', () => {
    const square = least('M20', { shape: 'square', sideMm: 22 }, 'AISC');
    expect(square).toMatchObject({ known: false, why: 'shape of the hole', failsUnderMm: 26 });
    const around = least('M20', round(22 * Math.SQRT2), 'AISC');
    expect(square).toHaveProperty('holdsFromMm', around.known ? around.leastMm : Number.NaN);
    expect(least('M20', { shape: 'rectangle', widthMm: 22, lengthMm: 50 }, 'AS')).not.toHaveProperty(
      'holdsFromMm',
    );
    expect(least(undefined, { shape: 'hexagon', acrossFlatsMm: 22 }, 'CSA')).toMatchObject({
      why: 'no bolt',
    });
  });
});

describe('leastHoleEdge: limits', () => {
  it('under EN goes by the hole in the part, whatever the bolt', () => {
    for (const size of ['M20', 'M24', '3/4', undefined]) {
      expect(least(size, round(30), 'EN')).toMatchObject({ leastMm: 36, measuredFrom: 'center' });
      expect(least(size, slot(22, 50), 'EN')).toMatchObject({
        leastMm: 33,
        measuredFrom: 'end radius center',
      });
    }
  });

  it('takes a slot that is as long as wide for the round hole it is', () => {
    for (const code of edgeCodes)
      expect(least('M20', slot(22, 22), code)).toEqual(least('M20', round(22), code));
  });

  it('takes an oblique edge, and one of which nothing is known, as lying across the slot', () => {
    const long = input('M20', slot(22, 50), 'AISC');
    const across = leastHoleEdge({ ...long, slotDirection: 'towards edge' });
    expect(leastHoleEdge({ ...long, slotDirection: 'oblique' })).toEqual(across);
    expect(leastHoleEdge(long)).toEqual(across);
    expect(leastHoleEdge({ ...long, slotDirection: 'along edge' })).toMatchObject({ leastMm: 26 });
    expect(across).toMatchObject({ leastMm: 41 });
  });

  it('says that a hole is larger than the code knows', () => {
    expect(least('M20', round(33), 'AISC')).toMatchObject({
      leastMm: 32.5,
      beyondTable: 'larger than oversize',
    });
    expect(least('M20', slot(22, 60), 'AISC')).toMatchObject({
      leastMm: 46,
      beyondTable: 'longer than a long slot',
    });
  });
});

describe('leastHoleEdge: values', () => {
  it('of a standard hole is what EDGEMIN gives, for every code, edge and bolt', () => {
    for (const code of edgeCodes.filter((each) => each !== 'EN')) {
      for (const edge of edgeKinds) {
        for (const [size, hole] of [
          ['M16', 18],
          ['M20', 22],
          ['M27', 30],
          ['M36', 39],
        ] as const) {
          const bolt = readBolt(size, 'Bolt', 'mm');
          const leastMm = leastEdgeDistanceMm({ bolt, edge, code, fit: 'standard' });
          expect(leastHoleEdge({ bolt, hole: round(hole), edge, code })).toMatchObject({
            known: true,
            leastMm,
          });
        }
      }
    }
  });

  it('never falls as a round hole grows', () => {
    const size = fc.double({ min: 5, max: 80, noNaN: true });
    const codes = fc.constantFrom<EdgeCode>('AISC', 'AISC 360-22', 'EN');
    fc.assert(
      fc.property(
        size,
        size,
        codes,
        fc.constantFrom('M16', 'M20', 'M30', '3/4', '1 in'),
        (diameterMm, more, code, name) => {
          const smaller = least(name, round(diameterMm), code);
          const larger = least(name, round(diameterMm + more), code);
          if (!smaller.known || !larger.known) throw new Error('not known');
          expect(larger.leastMm).toBeGreaterThanOrEqual(smaller.leastMm);
        },
      ),
    );
  });

  it('names the withdrawn edition at sheared edges and the increment table where it is used', () => {
    const sheared = leastHoleEdge({ ...input('3/4', round(20.6), 'AISC'), edge: 'sheared' });
    expect(sheared.source).toBe('AISC 360-05 Table J3.4, at sheared edges (withdrawn in 2010)');
    expect(least('M20', round(24), 'AISC').source).toBe('AISC 360-22 Table J3.4M; AISC 360-22 Table J3.5M');
  });

  it.each([
    ['3/4', 'rolled', 'AISC', 'AISC 360-22 Table J3.4'],
    ['M20', 'machine cut', 'AISC', 'AISC 360-22 Table J3.4M'],
    ['M20', 'sheared', 'AISC', 'AISC 360-05 Table J3.4M, at sheared edges (withdrawn in 2010)'],
    ['3/4', 'sheared connection end', 'AISC', 'AISC 360-05 Table J3.4, at sheared edges (withdrawn in 2010)'],
    ['M20', 'sheared', 'AISC 360-22', 'AISC 360-22 Table J3.4M'],
    ['M20', 'sheared', 'EN', 'EN 1993-1-8 Table 3.3, e1 and e2'],
    ['M20', 'sheared', 'CSA', 'CSA S16, minimum edge distance (from memory)'],
    ['M20', 'sheared', 'AS', 'AS 4100, minimum edge distance (from memory)'],
  ] as const)('of a small hole for %s at an edge, %s, by %s are from %s', (size, edge, code, source) => {
    expect(leastHoleEdge({ ...input(size, round(20), code), edge }).source).toBe(source);
  });

  it('names what they are measured from in their working', () => {
    const last = (hole: Hole, code: EdgeCode) => {
      const working = new Working();
      leastHoleEdge(input('M20', hole, code), working);
      const { formula, values, result } = working.steps.at(-1) ?? {
        formula: '',
        values: [],
        result: undefined,
      };
      return [
        formula,
        ...values.map(({ symbol, meaning, value }) => [symbol, meaning, value]),
        result?.meaning,
      ];
    };
    expect(last(round(26), 'EN')).toEqual([
      'e = 1.2 · d0',
      ['d0', 'hole in the part', 26],
      'least distance, center to edge',
    ]);
    expect(last(slot(22, 50), 'EN')).toEqual([
      'e = 1.5 · d0',
      ['d0', 'width of the slot', 22],
      'least distance, end radius center to edge',
    ]);
    expect(last(slot(22, 50), 'AISC')).toEqual([
      'e = e0 + C2',
      ['e0', 'least distance for a standard hole', 26],
      ['C2', 'increment for the hole', 15],
      'least distance, center to edge',
    ]);
  });

  it('shows its working under every code, and gives the same with and without it', () => {
    for (const code of edgeCodes) {
      for (const hole of [round(22), slot(22, 50)]) {
        const working = new Working();
        const shown = leastHoleEdge(input('M20', hole, code), working);
        expect(leastHoleEdge(input('M20', hole, code))).toEqual(shown);
        const last = working.steps.at(-1)?.result.value;
        expect(last).toBe(shown.known ? shown.leastMm : shown.failsUnderMm);
      }
    }
  });
});
