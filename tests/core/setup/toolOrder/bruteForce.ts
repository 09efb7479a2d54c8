import type { ToolSet } from '../../../../src/core/setup/toolOrder/changes.js';

/** Changes of holder, changes of tools, single punches and dies changed. */
export type Counted = readonly [number, number, number];

export function countedBetween(from: ToolSet | undefined, to: ToolSet): Counted {
  if (!from) return [0, 0, 0];
  const pieces = Number(from.punch !== to.punch) + Number(from.die !== to.die);
  const holders = Number(from.holder !== to.holder);
  return [holders, Number(pieces + holders > 0), pieces];
}

function plus(a: Counted, b: Counted): Counted {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

function isLess(a: Counted, b: Counted): boolean {
  const at = a.findIndex((each, index) => each !== b[index]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}

/**
 * The fewest changes of all orders of the marks and of the sets within each: every order is tried, and given up only
 * where what is done, and one change for each set that still follows another in its mark, come to no less than the best.
 */
export function fewestByTrying(marks: readonly (readonly ToolSet[])[]): Counted {
  let best: Counted = [Infinity, Infinity, Infinity];
  const left = marks.map((sets) => [...sets]).filter((sets) => sets.length > 0);
  const go = (own: ToolSet[], others: ToolSet[][], last: ToolSet | undefined, sofar: Counted): void => {
    const toCome = [own, ...others].reduce((sum, { length }) => sum + Math.max(0, length - 1), 0);
    if (!isLess(plus(sofar, [0, toCome, toCome]), best)) return;
    if (own.length === 0 && others.length === 0) best = sofar;
    else if (own.length > 0) {
      own.forEach((set, at) => {
        go(
          own.filter((_, each) => each !== at),
          others,
          set,
          plus(sofar, countedBetween(last, set)),
        );
      });
    } else {
      others.forEach((next, at) =>
        go(
          next,
          others.filter((_, each) => each !== at),
          last,
          sofar,
        ),
      );
    }
  };
  go([], left, undefined, [0, 0, 0]);
  return left.length === 0 ? [0, 0, 0] : best;
}
