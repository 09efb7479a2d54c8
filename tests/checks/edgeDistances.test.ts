import { describe, expect, it } from 'vitest';
import { readLength } from '../../src/core/quantity/readLength.js';
import { readBolt } from '../../src/core/rule/boltSize.js';
import {
  type EdgeCode,
  type EdgeFit,
  type EdgeKind,
  leastEdgeDistanceMm,
} from '../../src/core/rule/edgeDistance.js';
import { leastPitchMm } from '../../src/core/rule/pitch.js';
import { expectPrinted } from '../support/printed.js';

const least = (size: string, code: EdgeCode, edge: EdgeKind, fit: EdgeFit = 'standard') =>
  leastEdgeDistanceMm({ bolt: readBolt(size, 'Bolt', 'in'), edge, code, fit });
const inches = (printed: string) => readLength(printed, 'Printed', 'in');

describe('AISC 360-22 Table J3.4, in (checked against a reprint)', () => {
  it.each([
    ['1/2', '3/4'],
    ['5/8', '7/8'],
    ['3/4', '1'],
    ['7/8', '1-1/8'],
    ['1', '1-1/4'],
    ['1-1/8', '1-1/2'],
    ['1-1/4', '1-5/8'],
    ['1-1/2', '1-7/8'], // over 1-1/4: 1.25 d
    ['2', '2-1/2'],
  ])('%s: %s', (size, edge) => {
    expect(least(size, 'AISC 360-22', 'sheared')).toBeCloseTo(inches(edge), 6);
    expect(least(size, 'AISC 360-22', 'rolled')).toBeCloseTo(inches(edge), 6);
    expect(least(size, 'AISC', 'rolled')).toBeCloseTo(inches(edge), 6);
    expect(least(size, 'AISC', 'machine cut')).toBeCloseTo(inches(edge), 6);
  });
});

describe('AISC 360-22 Table J3.4M, mm (checked against a reprint)', () => {
  it.each([
    ['M16', 22],
    ['M20', 26],
    ['M22', 28],
    ['M24', 30],
    ['M27', 34],
    ['M30', 38],
    ['M36', 46],
    ['M48', 60], // over M36: 1.25 d
  ])('%s: %d', (size, edge) => {
    expect(least(size, 'AISC 360-22', 'sheared')).toBeCloseTo(edge, 9);
    expect(least(size, 'AISC', 'rolled')).toBeCloseTo(edge, 9);
  });
});

describe('AISC 360-05 Table J3.4, at sheared edges, in (checked against a reprint; withdrawn 2010)', () => {
  it.each([
    ['1/2', '7/8'],
    ['5/8', '1-1/8'],
    ['3/4', '1-1/4'],
    ['7/8', '1-1/2'],
    ['1', '1-3/4'],
    ['1-1/8', '2'],
    ['1-1/4', '2-1/4'],
    ['1-1/2', '2-5/8'], // over 1-1/4: 1.75 d
  ])('%s: %s', (size, edge) => {
    expect(least(size, 'AISC', 'sheared')).toBeCloseTo(inches(edge), 6);
  });
});

describe('Sheared edges, mm: AISC 360-05 Table J3.4M (reprint) and CSA S16 (from memory); CSA rolled, sawn, gas-cut', () => {
  it.each([
    ['M16', 28, 22],
    ['M20', 34, 26],
    ['M22', 38, 28],
    ['M24', 42, 30],
    ['M27', 48, 34],
    ['M30', 52, 38],
    ['M36', 64, 46],
    ['M48', 84, 60], // over M36: 1.75 d and 1.25 d
  ])('%s: %d sheared, %d rolled', (size, sheared, rolled) => {
    expect(least(size, 'AISC', 'sheared')).toBeCloseTo(sheared, 9);
    expect(least(size, 'CSA', 'sheared')).toBeCloseTo(sheared, 9);
    expect(least(size, 'CSA', 'rolled')).toBeCloseTo(rolled, 9);
    expect(least(size, 'CSA', 'machine cut')).toBeCloseTo(rolled, 9);
  });
});

describe('AISC 360-22 Tables J3.4 and J3.5 together, in (checked against a reprint)', () => {
  it.each([
    ['3/4', 'oversize', '1-1/16'],
    ['3/4', 'long slot', '1-9/16'],
    ['3/4', 'short slot', '1-1/8'],
    ['1', 'oversize', '1-3/8'],
    ['1', 'short slot', '1-3/8'],
    ['1-1/8', 'oversize', '1-5/8'],
    ['1-1/8', 'short slot', '1-11/16'],
    ['3/4', 'long slot along', '1'],
  ] as const)('%s, %s: %s', (size, fit, edge) => {
    expect(least(size, 'AISC 360-22', 'rolled', fit)).toBeCloseTo(inches(edge), 6);
  });
});

describe('AISC 360-22 Tables J3.4M and J3.5M together, mm (checked against a reprint)', () => {
  it.each([
    ['M20', 'oversize', 28],
    ['M22', 'oversize', 30],
    ['M24', 'oversize', 33],
    ['M24', 'short slot', 33],
    ['M27', 'short slot', 39],
    ['M20', 'long slot', 41],
    ['M20', 'short slot along', 26],
  ] as const)('%s, %s: %d', (size, fit, edge) => {
    expect(least(size, 'AISC 360-22', 'rolled', fit)).toBeCloseTo(edge, 9);
  });
});

describe('EN 1993-1-8 Table 3.3 with the holes of EN 1090-2', () => {
  it('M20: e1, e2 = 26.4', () => expectPrinted(least('M20', 'EN', 'sheared'), '26.4', 1e-9));
  it('M20 slotted: e3, e4 = 1.5 · 22 = 33', () =>
    expectPrinted(least('M20', 'EN', 'sheared', 'long slot'), '33', 1e-9));
  it('M20: p1 = 48.4', () =>
    expectPrinted(leastPitchMm({ bolt: readBolt('M20', 'Bolt', 'mm'), code: 'EN' }), '48.4', 1e-9));
});

describe('AS 4100 (from memory)', () => {
  it.each([
    ['sheared', 35],
    ['machine cut', 30],
    ['rolled', 25],
  ] as const)('M20, %s: %d mm', (edge, edgeMm) => {
    expect(least('M20', 'AS', edge)).toBeCloseTo(edgeMm, 9);
  });

  it('M20 pitch: 50 mm', () => {
    expectPrinted(leastPitchMm({ bolt: readBolt('M20', 'Bolt', 'mm'), code: 'AS' }), '50', 1e-9);
  });
});

describe('Least pitch', () => {
  it.each(['AISC', 'AISC 360-22'] as const)(
    '%s J3.4: 2⅔ · 3/4 = 2 in (checked against a reprint)',
    (code) => {
      expect(leastPitchMm({ bolt: readBolt('3/4', 'Bolt', 'in'), code })).toBeCloseTo(inches('2'), 6);
    },
  );

  it('CSA S16: 2.7 · 20 = 54 mm (from memory)', () => {
    expectPrinted(leastPitchMm({ bolt: readBolt('M20', 'Bolt', 'mm'), code: 'CSA' }), '54', 1e-9);
  });
});
