import { describe, expect, it } from 'vitest';
import { builtInGrades } from '../../../src/core/material/gradeTable.js';
import { findGrade } from '../../../src/core/material/findGrade.js';
import { type JobSpec, jobSpecs, punchedHoleAllowed } from '../../../src/core/rule/jobSpec.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const inch = 25.4;
const outcome = (
  spec: JobSpec,
  leastHoleMm: number,
  thicknessMm: number,
  name = 'A36',
  boltMm: number | undefined = undefined,
) => {
  const grade = findGrade(name, 'Grade');
  const input = { spec, leastHoleMm, thicknessMm, grade, ...(boltMm === undefined ? {} : { boltMm }) };
  const ruling = punchedHoleAllowed(input);
  return ruling.allowed ? 'punch' : ruling.instead;
};
const ream = 'punch 2 mm under and ream';

describe('punchedHoleAllowed: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a size of %d', (size) => {
    for (const spec of jobSpecs) {
      expect(refusal(() => outcome(spec, size, 10)).argument).toBe('Hole');
      expect(refusal(() => outcome(spec, 20, size)).argument).toBe('Thickness');
      expect(refusal(() => outcome(spec, 20, 10, 'A36', size)).argument).toBe('Bolt');
    }
  });

  it.each(['304', '6061-T6', 'Brass C260', 'Mild'])(
    'does not allow %s where the rule needs to know the structural steel',
    (name) => {
      expect(outcome('AS 4100', 20, 3, name)).toBe('drill');
      expect(outcome('AASHTO', 20, 3, name)).toBe('drill');
      expect(outcome('EN 1090-2 EXC2', 20, 3, name)).toBe('punch');
    },
  );

  it('knows every structural steel of the built-in grades but the rule of thumb', () => {
    const steels = builtInGrades.filter(({ family, name }) => family === 'steel' && name !== 'Mild');
    for (const { name } of steels) expect(outcome('AASHTO', 20, 3, name), name).toBe('punch');
  });
});

describe('punchedHoleAllowed: limits', () => {
  it.each(['EN 1090-2 EXC1', 'EN 1090-2 EXC2'] as const)('%s: up to the hole, without reaming', (spec) => {
    expect(outcome(spec, 18, 18)).toBe('punch');
    expect(outcome(spec, 18, 18.1)).toBe('drill');
  });

  it.each(['EN 1090-2 EXC3', 'EN 1090-2 EXC4'] as const)('%s: over 3 mm reamed, if the punch can', (spec) => {
    expect(outcome(spec, 18, 3)).toBe('punch');
    expect(outcome(spec, 18, 3.1)).toBe(ream);
    expect(outcome(spec, 18, 16)).toBe(ream);
    expect(outcome(spec, 18, 16.1)).toBe('drill');
    expect(outcome(spec, 18, 18.1)).toBe('drill');
  });

  it('AISC older rule: up to the bolt and 1/8 in', () => {
    const bolt = 0.75 * inch;
    expect(outcome('AISC older rule', (13 / 16) * inch, 0.875 * inch, 'A36', bolt)).toBe('punch');
    expect(outcome('AISC older rule', (13 / 16) * inch, 0.88 * inch, 'A36', bolt)).toBe('drill');
  });

  it('CSA S16: up to the bolt and 4 mm', () => {
    expect(outcome('CSA S16', 22, 24, '350W', 20)).toBe('punch');
    expect(outcome('CSA S16', 22, 24.1, '350W', 20)).toBe('drill');
  });

  it('takes the hole less 1/16 in for a bolt that is not known', () => {
    expect(outcome('AISC older rule', (13 / 16) * inch, 0.875 * inch)).toBe('punch');
    expect(outcome('AISC older rule', (13 / 16) * inch, 0.88 * inch)).toBe('drill');
  });

  it('AS 4100: up to 5600 / fy, and no steel over 360 MPa', () => {
    expect(outcome('AS 4100', 22, 16, '350W')).toBe('punch');
    expect(outcome('AS 4100', 22, 16.1, '350W')).toBe('drill');
    expect(outcome('AS 4100', 22, 6, 'S355')).toBe('punch');
    expect(outcome('AS 4100', 22, 6, 'S460')).toBe('drill');
  });

  it.each([
    ['A36', 3 / 4],
    ['A572-50', 5 / 8],
    ['A514', 1 / 2],
  ])('AASHTO: %s up to %d in', (name, thickness) => {
    expect(outcome('AASHTO', inch, thickness * inch, name)).toBe('punch');
    expect(outcome('AASHTO', inch, (thickness + 0.01) * inch, name)).toBe('drill');
  });

  it('galvanized: under 3/4 in', () => {
    expect(outcome('galvanized', inch, 0.74 * inch)).toBe('punch');
    expect(outcome('galvanized', inch, 0.75 * inch)).toBe('drill');
  });
});

describe('punchedHoleAllowed: values', () => {
  it('without a specification every hole may be punched, under seismic or fatigue work none', () => {
    expect(outcome('none', 5, 100)).toBe('punch');
    expect(outcome('seismic or fatigue', 100, 3)).toBe('drill');
  });

  it.each(jobSpecs)('%s shows its working: the outcome last, the reason as a caution', (spec) => {
    for (const thicknessMm of [3, 30]) {
      const working = new Working();
      const grade = findGrade('A36', 'Grade');
      const ruling = punchedHoleAllowed({ spec, leastHoleMm: 20, thicknessMm, grade }, working);
      const [step] = working.steps;
      expect(working.steps).toHaveLength(1);
      expect(step?.source).not.toBe('');
      expect(step?.result.value).toBe(ruling.allowed ? 'punch' : ruling.instead);
      expect(step?.cautions ?? []).toEqual(ruling.allowed ? [] : [`${ruling.reason}.`]);
    }
  });

  it.each<[JobSpec, string, [symbol: string, value: number | string][]]>([
    ['none', 'A36', []],
    [
      'EN 1090-2 EXC2',
      'S355',
      [
        ['t', 6],
        ['d', 20],
      ],
    ],
    [
      'EN 1090-2 EXC3',
      'S355',
      [
        ['t', 6],
        ['d', 20],
      ],
    ],
    [
      'AISC older rule',
      'A36',
      [
        ['t', 6],
        ['d', 18.4125],
      ],
    ],
    [
      'CSA S16',
      '350W',
      [
        ['t', 6],
        ['d', 18.4125],
      ],
    ],
    [
      'AS 4100',
      'S355',
      [
        ['t', 6],
        ['fy', 355],
      ],
    ],
    [
      'AS 4100',
      'S460',
      [
        ['t', 6],
        ['fy', 460],
      ],
    ],
    ['AS 4100', '304', [['steel', '304']]],
    [
      'AASHTO',
      'A36',
      [
        ['t', 6],
        ['steel', 'carbon'],
      ],
    ],
    ['galvanized', 'A36', [['t', 6]]],
    ['seismic or fatigue', 'A36', []],
  ])('%s shows what it goes by for %s, and its kind', (spec, name, expected) => {
    const working = new Working();
    const grade = findGrade(name, 'Grade');
    punchedHoleAllowed({ spec, leastHoleMm: 20, thicknessMm: 6, grade }, working);
    const [{ values, formula } = { values: [], formula: '' }] = working.steps;
    expect(values.map(({ symbol, value }) => [symbol, value])).toEqual(expected);
    for (const { symbol, kind } of values) {
      expect(kind).toBe(symbol === 'steel' ? 'text' : symbol === 'fy' ? 'stress' : 'length');
      if (kind !== 'text') expect(formula).toContain(symbol);
    }
  });

  it('says of a bolt whether it is given or taken from the hole', () => {
    const meaning = (boltMm?: number) => {
      const working = new Working();
      const given = boltMm === undefined ? {} : { boltMm };
      const grade = findGrade('350W', 'Grade');
      punchedHoleAllowed({ spec: 'CSA S16', leastHoleMm: 22, thicknessMm: 6, grade, ...given }, working);
      return working.steps[0]?.values[1]?.meaning;
    };
    expect(meaning(20)).toBe('bolt');
    expect(meaning()).toContain('taken as the hole less 1/16 in');
  });
});
