import { describe, expect, it } from 'vitest';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import { standardHoleMm } from '../../../src/core/rule/standardHole.js';
import { refusal } from '../../support/refusal.js';

const hole = (size: string, code: 'CSA' | 'AS') =>
  standardHoleMm({ bolt: readBolt(size, 'Bolt', 'mm'), code });

describe('standardHoleMm', () => {
  it('refuses a diameter that is not above zero', () => {
    const bolt = { diameterMm: 0, system: 'mm', name: 'M0' } as const;
    expect(refusal(() => standardHoleMm({ bolt, code: 'AS' })).argument).toBe('Bolt');
  });

  it('is 2 mm over the bolt, 3 mm from M24 under CSA and above M24 under AS', () => {
    expect([hole('M20', 'CSA'), hole('M22', 'CSA'), hole('M24', 'CSA')]).toEqual([22, 24, 27]);
    expect([hole('M20', 'AS'), hole('M24', 'AS'), hole('M27', 'AS')]).toEqual([22, 26, 30]);
  });

  it('takes inch bolts by the same additions', () => {
    expect(hole('3/4', 'AS')).toBeCloseTo(21.05, 9);
  });
});
