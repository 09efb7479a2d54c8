import { describe, expect, it } from 'vitest';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import {
  type EdgeCode,
  edgeCodes,
  type EdgeFit,
  edgeFits,
  type EdgeKind,
  edgeKinds,
  leastEdgeDistanceMm,
} from '../../../src/core/rule/edgeDistance.js';
import { refusal, refusalText } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const input = (size: string, code: EdgeCode, edge: EdgeKind = 'sheared', fit: EdgeFit = 'standard') => ({
  bolt: readBolt(size, 'Bolt', 'in'),
  edge,
  code,
  fit,
});
const least = (...args: Parameters<typeof input>) => leastEdgeDistanceMm(input(...args));

describe('leastEdgeDistanceMm: arguments', () => {
  it.each(['CSA', 'AS'] as const)('%s refuses every fit but standard', (code) => {
    for (const fit of edgeFits.filter((each) => each !== 'standard')) {
      expect(refusal(() => least('M20', code, 'rolled', fit))).toMatchObject({
        code: 'invalid',
        argument: 'Fit',
      });
    }
  });

  it.each([
    ['3/4', 'EN'],
    ['3/4', 'CSA'],
    ['M18', 'CSA'],
    ['M18', 'AISC'],
    ['13/16', 'AISC'],
    ['3/8', 'AISC 360-22'],
  ] as const)('refuses the size %s under %s', (size, code) => {
    expect(refusal(() => least(size, code))).toMatchObject({ code: 'unknown', argument: 'Bolt' });
  });

  it('refuses a diameter that is no number', () => {
    const bolt = { diameterMm: Number.NaN, system: 'mm', name: 'M' } as const;
    for (const code of edgeCodes) {
      expect(refusal(() => leastEdgeDistanceMm({ ...input('M20', code), bolt })).argument).toBe('Bolt');
    }
  });
});

describe('leastEdgeDistanceMm: limits', () => {
  it('takes the table to 1-1/4 in and M36, the factor above', () => {
    expect(least('1-1/4', 'AISC 360-22') / 25.4).toBeCloseTo(1.625, 9);
    expect(least('1-3/8', 'AISC 360-22') / 25.4).toBeCloseTo(1.25 * 1.375, 9);
    expect(least('1-3/8', 'AISC') / 25.4).toBeCloseTo(1.75 * 1.375, 9);
    expect(least('M36', 'CSA')).toBe(64);
    expect(least('M42', 'CSA')).toBeCloseTo(73.5, 9);
    expect(least('M42', 'CSA', 'rolled')).toBeCloseTo(52.5, 9);
  });

  it('lets only 7/8 and 1 in, M22 and M24, nearer to a sheared connection end', () => {
    const apart = (size: string) => least(size, 'AISC') - least(size, 'AISC', 'sheared connection end');
    for (const size of ['7/8', '1', 'M22', 'M24']) expect(apart(size), size).toBeGreaterThan(1);
    for (const size of ['3/4', '1-1/8', 'M20', 'M27']) expect(apart(size), size).toBe(0);
    for (const code of ['AISC 360-22', 'CSA', 'AS', 'EN'] as const) {
      expect(least('M22', code, 'sheared connection end')).toBe(least('M22', code));
    }
  });

  it('adds the increment of the fit at a connection end too', () => {
    const end = 'sheared connection end';
    const more = least('7/8', 'AISC', end, 'oversize') - least('7/8', 'AISC', end);
    expect(more / 25.4).toBeCloseTo(1 / 16, 9);
  });

  it.each([
    ['7/8', 'oversize', 1 / 16],
    ['1', 'oversize', 1 / 8],
    ['1', 'short slot', 1 / 8],
    ['1-1/8', 'short slot', 3 / 16],
    ['1', 'long slot', 3 / 4],
  ] as const)('adds for %s and the fit %s %d in', (size, fit, increment) => {
    const apart = least(size, 'AISC 360-22', 'rolled', fit) - least(size, 'AISC 360-22', 'rolled');
    expect(apart / 25.4).toBeCloseTo(increment, 9);
  });

  it.each([
    ['M22', 'oversize', 2],
    ['M24', 'oversize', 3],
    ['M24', 'short slot', 3],
    ['M27', 'short slot', 5],
    ['M20', 'long slot', 15],
  ] as const)('adds for %s and the fit %s %d mm', (size, fit, increment) => {
    expect(least(size, 'AISC', 'rolled', fit) - least(size, 'AISC', 'rolled')).toBeCloseTo(increment, 9);
  });

  it('adds nothing for a slot along the edge', () => {
    expect(least('3/4', 'AISC', 'sheared', 'long slot along')).toBe(least('3/4', 'AISC'));
    expect(least('3/4', 'AISC', 'sheared', 'short slot along')).toBe(least('3/4', 'AISC'));
  });
});

describe('leastEdgeDistanceMm: values', () => {
  it('makes a difference at sheared edges under AISC and none under AISC 360-22', () => {
    expect(least('3/4', 'AISC', 'sheared') / 25.4).toBeCloseTo(1.25, 9);
    expect(least('3/4', 'AISC', 'rolled') / 25.4).toBeCloseTo(1, 9);
    expect(least('3/4', 'AISC', 'machine cut') / 25.4).toBeCloseTo(1, 9);
    for (const edge of edgeKinds) expect(least('3/4', 'AISC 360-22', edge) / 25.4).toBeCloseTo(1, 9);
  });

  it('names the withdrawn edition in its working', () => {
    const [step] = expectWorking((working) => leastEdgeDistanceMm(input('7/8', 'AISC'), working));
    expect(step?.source).toContain('AISC 360-05');
    expect(step?.source).toContain('withdrawn in 2010');
    expect(step?.cautions?.join(' ')).toContain('beam connection angles');
  });

  it('speaks of connection ends only to the bolts that may be nearer there', () => {
    for (const [size, told] of [
      ['7/8', 1],
      ['1', 1],
      ['M22', 1],
      ['M24', 1],
      ['3/4', 0],
      ['1-1/4', 0],
      ['M20', 0],
    ] as const) {
      const [step] = expectWorking((working) => leastEdgeDistanceMm(input(size, 'AISC'), working));
      expect(step?.cautions ?? [], size).toHaveLength(told);
    }
  });

  it('under EN works from the hole and does not look at the edge', () => {
    for (const edge of edgeKinds) expect(least('M20', 'EN', edge)).toBeCloseTo(26.4, 9);
    expect(least('M20', 'EN', 'rolled', 'oversize')).toBeCloseTo(28.8, 9);
    for (const fit of edgeFits.slice(2)) expect(least('M20', 'EN', 'rolled', fit)).toBeCloseTo(33, 9);
  });

  it('under AS takes inch bolts by the same factors', () => {
    const inches = edgeKinds.map((edge) => Number((least('1', 'AS', edge) / 25.4).toFixed(9)));
    expect(inches).toEqual([1.75, 1.5, 1.25, 1.75]);
  });

  it('never lets a rolled edge need more than a sheared one', () => {
    for (const code of edgeCodes) {
      for (const size of ['M16', 'M20', 'M24', 'M30', 'M36']) {
        expect(least(size, code, 'rolled')).toBeLessThanOrEqual(least(size, code, 'sheared'));
      }
    }
  });

  it.each<[string, EdgeCode, EdgeFit, string, RegExp]>([
    ['M20', 'AISC 360-22', 'standard', 'e by table', /J3\.4M/],
    ['M42', 'AISC 360-22', 'standard', 'e = 1.25 · d', /J3\.4M/],
    ['7/8', 'AISC 360-22', 'oversize', 'e = e0 + C2', /J3\.5(?!M)/],
    ['M20', 'AISC 360-22', 'long slot', 'e = e0 + C2', /J3\.5M/],
    ['M20', 'EN', 'oversize', 'e = 1.2 · d0', /e1 and e2/],
    ['M20', 'EN', 'short slot', 'e = 1.5 · d0', /e3 and e4/],
    ['M20', 'AS', 'standard', 'e = 1.25 · d', /AS 4100/],
    ['M42', 'CSA', 'standard', 'e = 1.25 · d', /CSA S16/],
  ])('says for %s by %s, %s: %s', (size, code, fit, formula, source) => {
    const steps = expectWorking((working) => leastEdgeDistanceMm(input(size, code, 'rolled', fit), working));
    expect(steps.at(-1)?.formula).toBe(formula);
    expect(steps.at(-1)?.source).toMatch(source);
  });

  it('says that a bolt may be nearer only at the ends of connection angles and shear plates', () => {
    const end = input('M22', 'AISC', 'sheared connection end');
    const [step] = expectWorking((working) => leastEdgeDistanceMm(end, working));
    expect(step?.cautions).toEqual(['Only at the ends of beam connection angles and shear end plates.']);
  });

  it('tells where the fit of a code that has no rule for it is to be asked', () => {
    expect(refusalText(() => least('M20', 'AS', 'rolled', 'oversize'))).toBe(
      "Fit: the rule of AS 4100 for a hole of the fit 'oversize' is not built in. Use the fit standard, or ask the engineer.",
    );
  });

  it('shows its working under every code and fit', () => {
    for (const code of edgeCodes) {
      expectWorking((working) => leastEdgeDistanceMm(input('M20', code), working));
    }
    for (const fit of edgeFits) {
      expectWorking((working) => leastEdgeDistanceMm(input('M20', 'AISC', 'sheared', fit), working));
      expectWorking((working) => leastEdgeDistanceMm(input('M20', 'EN', 'sheared', fit), working));
    }
  });
});
