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

  it('forgets what was not asked for the longest, before it grows without end', () => {
    const remembered = memo<string>(10 * 101);
    const ask = (key: string) => remembered(key, () => `read ${key}`);
    for (const key of 'abcdefghij') ask(key);
    expect(remembered('a', () => 'again')).toBe('read a');
    ask('k');
    expect(remembered('b', () => 'again')).toBe('again');
    expect(remembered('a', () => 'again')).toBe('read a');
    expect(remembered('c', () => 'again')).toBe('again');
  });

  it('reads each of 20,000 texts once, however often they come round', () => {
    const remembered = memo<number>();
    let reads = 0;
    for (let round = 0; round < 3; round += 1)
      for (let key = 0; key < 20_000; key += 1) remembered(String(key), () => (reads += 1));
    expect(reads).toBe(20_000);
  });

  it('does not keep a single key that is larger than all may be', () => {
    const remembered = memo<string>(50);
    expect([remembered('a', () => 'first'), remembered('a', () => 'second')]).toEqual(['first', 'second']);
  });
});
