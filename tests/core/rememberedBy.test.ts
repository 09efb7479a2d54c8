import { describe, expect, it } from 'vitest';
import { rememberedBy } from '../../src/core/rememberedBy.js';

describe('rememberedBy', () => {
  const counting = () => {
    const remembered = rememberedBy<number>();
    let found = 0;
    return (one: object, other: object, values: unknown[]) =>
      remembered(one, other, values, () => (found += 1));
  };
  const [a, b] = [{}, {}];

  it('finds a result once for the same two objects and values', () => {
    const find = counting();
    expect([find(a, b, [1, 'x']), find(a, b, [1, 'x'])]).toEqual([1, 1]);
  });

  it('finds it anew for another object or another value', () => {
    const find = counting();
    expect([find(a, b, [1]), find(b, a, [1]), find(a, {}, [1]), find(a, b, [2]), find(a, b, [1])]).toEqual([
      1, 2, 3, 4, 1,
    ]);
  });

  it('does not remember what throws', () => {
    const remembered = rememberedBy<number>();
    const refuse = () => {
      throw new RangeError('no');
    };
    expect(() => remembered(a, b, [], refuse)).toThrow(RangeError);
    expect(remembered(a, b, [], () => 5)).toBe(5);
  });

  it('keeps only so many results of two objects', () => {
    const find = counting();
    for (let value = 0; value < 1000; value++) find(a, b, [value]);
    expect(find(a, b, [999])).toBe(1000);
    expect(find(a, b, [0])).toBe(1001);
  });
});
