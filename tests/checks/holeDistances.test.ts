import { describe, expect, it } from 'vitest';
import { readLength } from '../../src/core/quantity/readLength.js';
import { readBolt } from '../../src/core/rule/boltSize.js';
import type { EdgeCode } from '../../src/core/rule/edgeDistance.js';
import { leastHoleEdge, type SlotDirection } from '../../src/core/rule/holeEdge.js';
import { leastHoleSpacing } from '../../src/core/rule/holeSpacing.js';
import type { LeastDistance } from '../../src/core/rule/leastDistance.js';
import { readHoleSize } from '../../src/core/tooling/readHole.js';
import { expectPrinted } from '../support/printed.js';

const bolt = (size: string) => readBolt(size, 'Bolt', 'in');
const hole = (size: string, unit: 'in' | 'mm') =>
  readHoleSize(size, size.includes('x') ? 'slot' : 'round', 'Hole', unit);
const known = (least: LeastDistance) => {
  if (!least.known) throw new Error(`not known: ${least.why}`);
  return least;
};
const edge = (size: string, of: string, code: EdgeCode, slotDirection?: SlotDirection) => {
  const unit = size.startsWith('M') ? 'mm' : 'in';
  const direction = slotDirection ? { slotDirection } : {};
  return known(leastHoleEdge({ bolt: bolt(size), hole: hole(of, unit), edge: 'rolled', code, ...direction }));
};

describe('AISC 360-22 Tables J3.4 and J3.5 for the hole in the part, in (checked against a reprint)', () => {
  it.each([
    ['3/4', '13/16', '1'],
    ['3/4', '15/16', '1-1/16'],
    ['3/4', '13/16x1', '1-1/8'],
    ['3/4', '13/16x1-7/8', '1-9/16'],
    ['3/4', '13/16x1-1/2', '1-3/8'], // footnote a: 3/4 d less half of 1-7/8 - 1-1/2
    ['1', '1-1/4', '1-3/8'],
    ['1-1/8', '1-1/4x1-1/2', '1-11/16'],
  ])('bolt %s in a hole %s: %s', (size, of, printed) => {
    expect(edge(size, of, 'AISC 360-22').leastMm).toBeCloseTo(readLength(printed, 'Printed', 'in'), 9);
  });

  it('a slot along the edge adds nothing: 3/4 in a slot 13/16 × 1-7/8, 1 in', () => {
    expect(edge('3/4', '13/16x1-7/8', 'AISC 360-22', 'along edge').leastMm).toBeCloseTo(25.4, 9);
  });
});

describe('AISC 360-22 Tables J3.4M and J3.5M for the hole in the part, mm (checked against a reprint)', () => {
  it.each([
    ['M20', '22', 26],
    ['M20', '24', 28],
    ['M24', '27x32', 33],
    ['M27', '30x37', 39],
    ['M20', '22x50', 41],
  ])('bolt %s in a hole %s: %d', (size, of, printed) => {
    expect(edge(size, of, 'AISC 360-22').leastMm).toBeCloseTo(printed, 9);
  });
});

describe('EN 1993-1-8 Table 3.3 and Figure 3.1 e, d0 the hole in the part (checked against a reprint)', () => {
  it('Ø22: e1, e2 = 26.4 from the center; Ø24 for the same bolt: 28.8', () => {
    expectPrinted(edge('M20', '22', 'EN').leastMm, '26.4', 1e-9);
    expectPrinted(edge('M20', '24', 'EN').leastMm, '28.8', 1e-9);
  });

  it('slot 22 × 50: e3, e4 = 33 from the center of the end radius, 47 from the middle of the slot', () => {
    const { leastMm, measuredFrom } = edge('M20', '22x50', 'EN');
    expectPrinted(leastMm, '33', 1e-9);
    expect(measuredFrom).toBe('end radius center');
    expectPrinted(leastMm + (50 - 22) / 2, '47', 1e-9);
  });

  it.each([
    ['along', '48.4'], // p1
    ['across', '52.8'], // p2
    ['oblique', '52.8'], // L of staggered rows, note 5
  ] as const)('Ø22, holes %s the length: %s', (direction, printed) => {
    const bolted = { hole: hole('22', 'mm') };
    expectPrinted(
      known(leastHoleSpacing({ holes: [bolted, bolted], direction, code: 'EN' })).leastMm,
      printed,
      1e-9,
    );
  });
});

describe('Spacing by the bolt', () => {
  it.each([
    ['AISC 360-22', '2', '3/4'], // AISC 360-22 J3.4 (J3.3 until 2016): 2⅔ d, and d clear (checked against a reprint)
    ['CSA', '54 mm', undefined], // CSA S16: 2.7 d (from memory)
    ['AS', '50 mm', undefined], // AS 4100: 2.5 d (from memory)
  ] as const)('%s: %s between centers, %s clear', (code, centers, clear) => {
    const inch = code === 'AISC 360-22';
    const bolted = {
      hole: hole(inch ? '13/16' : '22', inch ? 'in' : 'mm'),
      bolt: bolt(inch ? '3/4' : 'M20'),
    };
    const found = known(leastHoleSpacing({ holes: [bolted, bolted], direction: 'along', code }));
    expect(found.leastMm).toBeCloseTo(readLength(centers, 'Printed', 'in'), 9);
    if (clear === undefined) expect(found.clearMm).toBeUndefined();
    else expect(found.clearMm).toBeCloseTo(readLength(clear, 'Printed', 'in'), 9);
  });
});
