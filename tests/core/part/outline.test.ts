import { describe, expect, it } from 'vitest';
import { sameCause } from '../../../src/core/part/outline.js';

describe('sameCause', () => {
  it('is true of one boundary, and of one cut with its number', () => {
    expect(sameCause({ is: 'heel' }, { is: 'heel' })).toBe(true);
    expect(sameCause({ is: 'clip', number: 2 }, { is: 'clip', number: 2 })).toBe(true);
  });

  it('is false of two boundaries, of two clips, and of a clip and a notch with one number', () => {
    expect(sameCause({ is: 'heel' }, { is: 'toe' })).toBe(false);
    expect(sameCause({ is: 'clip', number: 1 }, { is: 'clip', number: 2 })).toBe(false);
    expect(sameCause({ is: 'clip', number: 1 }, { is: 'notch', number: 1 })).toBe(false);
  });
});
