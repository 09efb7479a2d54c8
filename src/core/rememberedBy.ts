/** So many results of one pair of objects are kept; a part is held against a press in few ways. */
const mostOfPair = 20;

interface Kept<Result> {
  values: readonly unknown[];
  result: Result;
}

/**
 * Remembers what was worked out for two objects and a few values: rows of a list ask for the same section or hole on
 * the same press over and over. It is kept as long as both objects are. What throws is not remembered.
 */
export function rememberedBy<Result>(): (
  one: object,
  other: object,
  values: readonly unknown[],
  find: () => Result,
) => Result {
  const known = new WeakMap<object, WeakMap<object, Kept<Result>[]>>();
  return (one, other, values, find) => {
    const ofOne = known.get(one) ?? new WeakMap<object, Kept<Result>[]>();
    known.set(one, ofOne);
    const kept = ofOne.get(other) ?? [];
    ofOne.set(other, kept);
    const before = kept.find((each) => values.every((value, at) => value === each.values[at]));
    if (before) return before.result;
    const result = find();
    if (kept.length >= mostOfPair) kept.length = 0;
    kept.push({ values, result });
    return result;
  };
}
