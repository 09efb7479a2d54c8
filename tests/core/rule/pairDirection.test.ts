import { describe, expect, it } from 'vitest';
import { pairDirection } from '../../../src/core/rule/pairDirection.js';

describe('pairDirection', () => {
  it.each([
    [75, 0, 'along'],
    [-75, 0.5, 'along'],
    [0, 60, 'across'],
    [0.5, -60, 'across'],
    [75, 0.6, 'oblique'],
    [0.6, 60, 'oblique'],
    [0, 0, 'along'],
  ] as const)('%d along and %d across is %s', (alongMm, acrossMm, direction) => {
    expect(pairDirection({ alongMm, acrossMm })).toBe(direction);
  });
});
