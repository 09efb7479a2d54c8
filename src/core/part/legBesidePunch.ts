/** The leg that comes nearest to the punch while a plate is bent, in the best order of its bends. */
export interface LegBesidePunch {
  /** The bend being made, and the one made before whose leg stands beside the punch; as they were given, from 0. */
  readonly bend: number;
  readonly madeBefore: number;
  readonly webMm: number;
  readonly legMm: number;
  /** From the tip of the leg to the middle of the punch as the bend reaches 90°; below 0 beyond it. */
  readonly gapMm: number;
}

/**
 * Room beside the punch for the legs of parallel bends. At 90° the web between two bends stands at 45°, and the leg beyond
 * the other bend, bent the same way, leans back toward the punch. The bends are made in the order that leaves the most room.
 *
 * Formula: gap = (web − leg) / √2, least over the bends of an order, greatest over all orders
 * @param places where the lines lie, in mm
 * @param startMm where the plate begins
 * @param endMm where it ends
 * @returns the leg that comes nearest; undefined for fewer than two bends
 * Valid for bends of 90°. Whatever lies beyond a bend is taken as one straight leg, the most that bends in it can reach;
 * bends the other way leave more room. Throws nothing.
 * @example legBesidePunch([50, 150], 0, 300)?.gapMm // (100 − 50) / √2 = 35.4: the leg of 50 is bent first
 * Source: plane geometry.
 */
export function legBesidePunch(
  places: readonly number[],
  startMm: number,
  endMm: number,
): LegBesidePunch | undefined {
  const lines = places.map((atMm, index) => ({ atMm, index })).sort((a, b) => a.atMm - b.atMm);
  const known = new Map<string, LegBesidePunch | undefined>();
  /** The best order of the bends between two that are made already; `low` −1 and `high` one more than there are: none. */
  const between = (low: number, high: number): LegBesidePunch | undefined => {
    const key = `${low} ${high}`;
    if (known.has(key)) return known.get(key);
    let best: LegBesidePunch | undefined;
    for (let at = low + 1; at < high; at++) {
      const order = [legOf(at, low), legOf(at, high), between(low, at), between(at, high)].reduce(nearer);
      if (order === undefined) best = undefined;
      if (order === undefined) break;
      if (best === undefined || order.gapMm > best.gapMm) best = order;
    }
    known.set(key, best);
    return best;
  };
  const legOf = (at: number, other: number): LegBesidePunch | undefined => {
    const [line, before] = [lines[at], lines[other]];
    if (!line || !before) return undefined;
    const webMm = Math.abs(line.atMm - before.atMm);
    const legMm = other < at ? before.atMm - startMm : endMm - before.atMm;
    return { bend: line.index, madeBefore: before.index, webMm, legMm, gapMm: (webMm - legMm) / Math.SQRT2 };
  };
  return between(-1, lines.length);
}

function nearer(a: LegBesidePunch | undefined, b: LegBesidePunch | undefined): LegBesidePunch | undefined {
  if (!a || !b) return a ?? b;
  return a.gapMm <= b.gapMm ? a : b;
}
