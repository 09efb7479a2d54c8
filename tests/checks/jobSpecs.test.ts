import { describe, expect, it } from 'vitest';
import { findGrade } from '../../src/core/material/findGrade.js';
import { readLength } from '../../src/core/quantity/readLength.js';
import { readBolt } from '../../src/core/rule/boltSize.js';
import { type JobSpec, punchedHoleAllowed } from '../../src/core/rule/jobSpec.js';

const outcome = (spec: JobSpec, hole: string, thickness: string, name: string, bolt?: string) => {
  const mm = (text: string) => readLength(text, 'Size', 'in');
  const ruling = punchedHoleAllowed({
    spec,
    leastHoleMm: mm(hole),
    thicknessMm: mm(thickness),
    grade: findGrade(name, 'Grade'),
    ...(bolt === undefined ? {} : { boltMm: readBolt(bolt, 'Bolt', 'in').diameterMm }),
  });
  return ruling.allowed ? 'punch' : ruling.instead;
};

describe('EN 1090-2, 6.6.3: nominal thickness not over the hole; EXC3 and EXC4 over 3 mm reamed by 2 mm (from memory)', () => {
  it.each([
    ['EN 1090-2 EXC2', '22 mm', '22 mm', 'punch'],
    ['EN 1090-2 EXC2', '22 mm', '25 mm', 'drill'],
    ['EN 1090-2 EXC3', '22 mm', '3 mm', 'punch'],
    ['EN 1090-2 EXC3', '22 mm', '12 mm', 'punch 2 mm under and ream'],
    ['EN 1090-2 EXC4', '22 mm', '22 mm', 'drill'],
  ] as const)('%s, hole %s in %s: %s', (spec, hole, thickness, expected) => {
    expect(outcome(spec, hole, thickness, 'S355')).toBe(expected);
  });
});

describe('Thickness against the bolt', () => {
  it.each([
    ['AISC older rule', '13/16', '7/8', '3/4', 'punch'], // AISC 360, older editions: bolt + 1/8 in (from memory)
    ['AISC older rule', '13/16', '1', '3/4', 'drill'],
    ['CSA S16', '22 mm', '24 mm', 'M20', 'punch'], // CSA S16: bolt + 4 mm (from memory)
    ['CSA S16', '22 mm', '25 mm', 'M20', 'drill'],
  ] as const)('%s, hole %s in %s for %s: %s', (spec, hole, thickness, bolt, expected) => {
    expect(outcome(spec, hole, thickness, '350W', bolt)).toBe(expected);
  });
});

describe('AS 4100, 14.3.5: fy ≤ 360 MPa and t ≤ 5600 / fy (from memory)', () => {
  it.each([
    ['300W', '18 mm', 'punch'], // 5600 / 300 = 18.7 mm
    ['300W', '19 mm', 'drill'],
    ['S355', '15 mm', 'punch'], // 5600 / 355 = 15.8 mm
    ['S355', '16 mm', 'drill'],
    ['S460', '6 mm', 'drill'],
  ] as const)('%s, %s thick: %s', (name, thickness, expected) => {
    expect(outcome('AS 4100', '22 mm', thickness, name)).toBe(expected);
  });
});

describe('AASHTO bridge construction: 3/4 in carbon, 5/8 high strength, 1/2 quenched and tempered (from memory)', () => {
  it.each([
    ['A36', '3/4', '7/8'],
    ['A572-50', '5/8', '3/4'],
    ['A588', '5/8', '3/4'],
    ['A514', '1/2', '5/8'],
  ])('%s: %s is punched, %s is not', (name, thickest, thicker) => {
    expect(outcome('AASHTO', '15/16', thickest, name)).toBe('punch');
    expect(outcome('AASHTO', '15/16', thicker, name)).toBe('drill');
  });
});

describe('Galvanized, seismic and fatigue work: ask the engineer, drill or ream (common practice, no source)', () => {
  it.each([
    ['galvanized', '5/8', 'punch'],
    ['galvanized', '3/4', 'drill'],
    ['seismic or fatigue', '1/4', 'drill'],
  ] as const)('%s, %s: %s', (spec, thickness, expected) => {
    expect(outcome(spec, '15/16', thickness, 'A36')).toBe(expected);
  });
});
