import { describe, expect, it } from 'vitest';
import { refuse, refuseUnknown } from '../../../src/core/inputError.js';
import { ifTabled } from '../../../src/core/rule/leastDistance.js';
import { refusal } from '../../support/refusal.js';

describe('ifTabled', () => {
  it('gives what the table gives, and nothing where it has no row', () => {
    expect(ifTabled(() => 31.75)).toBe(31.75);
    expect(ifTabled(() => refuseUnknown('Bolt', 'M12', 'M12 is not a size.', 'Write M20.'))).toBeUndefined();
  });

  it('hides no other refusal and no fault', () => {
    const invalid = refusal(() => ifTabled(() => refuse('Bolt', '0', '0 is not above zero.', 'Write M20.')));
    expect(invalid.argument).toBe('Bolt');
    const fault = () => {
      throw new RangeError('a fault of ours');
    };
    expect(() => ifTabled(fault)).toThrow(RangeError);
  });
});
