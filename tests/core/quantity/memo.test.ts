import { describe, expect, it } from 'vitest';
import { memo } from '../../../src/core/quantity/memo.js';

describe('memo', () => {
  it('reads once per key', () => {
    const remembered = memo<number>();
    let reads = 0;
    const read = () => (reads += 1);
    expect([remembered('a', read), remembered('a', read), remembered('b', read)]).toEqual([1, 1, 2]);
  });

  it('remembers a refusal and throws the same one again', () => {
    const remembered = memo<number>();
    const error = new Error('no');
    let reads = 0;
    const read = () => {
      reads += 1;
      throw error;
    };
    expect(() => remembered('a', read)).toThrow(error);
    expect(() => remembered('a', read)).toThrow(error);
    expect(reads).toBe(1);
  });

  it('forgets before it grows without end, and still gives the right result', () => {
    const remembered = memo<string>();
    for (let key = 0; key < 20_001; key += 1) remembered(String(key), () => `first ${key}`);
    expect(remembered('0', () => 'again')).toBe('again');
    expect(remembered('20000', () => 'again')).toBe('first 20000');
  });
});
