/** So many results of one pair of objects are kept; a part is checked against a press in few ways. */
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
    const kept = known.get(one)?.get(other) ?? [];
    for (const each of kept) if (areSame(each.values, values)) return each.result;
    const result = find();
    if (kept.length >= mostOfPair) kept.length = 0;
    kept.push({ values, result });
    const ofOne = known.get(one) ?? new WeakMap<object, Kept<Result>[]>();
    known.set(one, ofOne.set(other, kept));
    return result;
  };
}

function areSame(values: readonly unknown[], others: readonly unknown[]): boolean {
  for (let at = 0; at < values.length; at++) if (values[at] !== others[at]) return false;
  return true;
}
