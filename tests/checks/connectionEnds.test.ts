import { describe, expect, it } from 'vitest';
import { readLength } from '../../src/core/quantity/readLength.js';
import { readBolt } from '../../src/core/rule/boltSize.js';
import { leastEdgeDistanceMm } from '../../src/core/rule/edgeDistance.js';
import { greatestEdgeDistanceMm } from '../../src/core/rule/greatestEdge.js';

const edge = 'sheared connection end';

describe('AISC 360-05 Tables J3.4 and J3.4M, footnote: ends of beam connection angles and shear end plates (reprint)', () => {
  it.each([
    ['7/8', '1-1/4'],
    ['1', '1-1/4'],
    ['3/4', '1-1/4'], // no exception: the table itself
    ['1-1/8', '2'],
    ['M22', '32 mm'],
    ['M24', '32 mm'],
    ['M27', '48 mm'],
  ])('%s: %s', (size, printed) => {
    const bolt = readBolt(size, 'Bolt', 'in');
    const leastMm = leastEdgeDistanceMm({ bolt, edge, code: 'AISC', fit: 'standard' });
    expect(leastMm).toBeCloseTo(readLength(printed, 'Printed', 'in'), 6);
  });
});

describe('Greatest edge distance', () => {
  it.each([
    ['3/8', '4-1/2'],
    ['1/2', '6'],
    ['3/4', '6'],
  ])(
    'AISC 360-22 J3.6, 12 t up to 6 in: %s in thick, %s in (checked against a reprint)',
    (thickness, printed) => {
      const thicknessMm = readLength(thickness, 'Thickness', 'in');
      const greatestMm = greatestEdgeDistanceMm({ thicknessMm, code: 'AISC', system: 'in' });
      expect(greatestMm).toBeCloseTo(readLength(printed, 'Printed', 'in'), 6);
    },
  );

  it.each([
    [10, 80],
    [25, 140],
  ])('EN 1993-1-8 Table 3.3, 4 t + 40 mm: %d mm thick, %d mm', (thicknessMm, printed) => {
    expect(greatestEdgeDistanceMm({ thicknessMm, code: 'EN', system: 'mm' })).toBeCloseTo(printed, 9);
  });
});
