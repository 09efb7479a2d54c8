import type { Edge } from '../../core/part/outline.js';

/** From where to where an outline goes across the part, at a distance from the left end; undefined where it is not there. */
export function spanAcross(edges: readonly Edge[], x: number): [number, number] | undefined {
  return spanOf(edges, x, 'x', 'y');
}

/** From where to where an outline goes along the part, at a distance from its bottom edge or heel. */
export function spanAlong(edges: readonly Edge[], y: number): [number, number] | undefined {
  return spanOf(edges, y, 'y', 'x');
}

function spanOf(
  edges: readonly Edge[],
  at: number,
  of: 'x' | 'y',
  other: 'x' | 'y',
): [number, number] | undefined {
  const crossings = edges.flatMap(({ from, to }) => {
    if (Math.min(from[of], to[of]) > at || Math.max(from[of], to[of]) < at) return [];
    if (from[of] === to[of]) return [from[other], to[other]];
    return [from[other] + ((at - from[of]) / (to[of] - from[of])) * (to[other] - from[other])];
  });
  return crossings.length === 0 ? undefined : [Math.min(...crossings), Math.max(...crossings)];
}
