import type { Cutting, Pattern } from './cutting.js';
import { joinsOf } from './miterLoss.js';

/** A piece of a bar in cutting order, and whether its right face comes first. */
export interface Step {
  item: number;
  isReversed: boolean;
}

/** A way between two places: a piece, or a loss where `item` is undefined. */
interface Edge {
  from: number;
  to: number;
  item: number | undefined;
  isUsed: boolean;
}

/**
 * The pieces of a bar in an order that loses no more than `miterLoss` says: a closed walk over all pieces and over the
 * ways that join them.
 *
 * @param cutting items with the places of their faces
 * @param pattern what is cut from the bar
 * @returns each piece once, from the front end of the bar
 * Valid for every pattern. Throws nothing.
 * @example barWalk(cutting, pattern).map((step) => step.item)
 * Source: Hierholzer 1873, from memory.
 */
export function barWalk(cutting: Cutting, pattern: Pattern): Step[] {
  const edges = edgesOf(cutting, pattern);
  const byPlace = new Map<number, Edge[]>();
  const touch = (place: number, edge: Edge) => {
    const at = byPlace.get(place);
    if (at) at.push(edge);
    else byPlace.set(place, [edge]);
  };
  // The last is taken first: like pieces stay together, and the longest come first.
  for (const edge of edges.reverse()) {
    touch(edge.from, edge);
    if (!cutting.isDirected && edge.to !== edge.from) touch(edge.to, edge);
  }
  const walk: { edge: Edge; isReversed: boolean }[] = [];
  const path: { place: number; by?: { edge: Edge; isReversed: boolean } }[] = [{ place: 0 }];
  for (let last = path.at(-1); last; last = path.at(-1)) {
    const edge = nextOf(byPlace.get(last.place));
    if (edge) {
      edge.isUsed = true;
      const isReversed = edge.from !== last.place;
      path.push({ place: isReversed ? edge.from : edge.to, by: { edge, isReversed } });
    } else {
      path.pop();
      if (last.by) walk.push(last.by);
    }
  }
  return walk
    .reverse()
    .flatMap(({ edge, isReversed }) => (edge.item === undefined ? [] : [{ item: edge.item, isReversed }]));
}

function nextOf(edges: Edge[] | undefined): Edge | undefined {
  while (edges?.at(-1)?.isUsed) edges.pop();
  return edges?.at(-1);
}

function edgesOf(cutting: Cutting, pattern: Pattern): Edge[] {
  const edges: Edge[] = [];
  pattern.items.forEach((item, k) => {
    const { left = 0, right = 0 } = cutting.items[item] ?? {};
    for (let piece = 0; piece < (pattern.counts[k] as number); piece++)
      edges.push({ from: left, to: right, item, isUsed: false });
  });
  const { places, up, down } = joinsOf(cutting, pattern.items, pattern.counts);
  up.forEach((ways, gap) => {
    const low = places[gap] as number;
    const high = places[gap + 1] as number;
    const add = (from: number, to: number, times: number) => {
      for (let way = 0; way < times; way++) edges.push({ from, to, item: undefined, isUsed: false });
    };
    add(low, high, ways);
    add(high, low, down[gap] as number);
  });
  return edges;
}
