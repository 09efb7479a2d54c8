import type { Cutting } from './cutting.js';
import { miterCount } from './miterCount.js';

/** What joins the pieces of a bar: how often the walk goes the way between neighboring places without a piece. */
export interface Joins {
  /** The places where faces stand, with 0, rising. */
  places: readonly number[];
  /** Beyond each place but the last: ways up, and ways down. */
  up: readonly number[];
  down: readonly number[];
  loss: number;
}

/**
 * What the miters of the pieces of one bar lose between them, in the best order and the best way round.
 *
 * Each piece is an edge between the places of its two faces on a line, and the bar is a closed walk that starts and
 * ends at 0 and takes every edge; the ways without a piece are what is lost. Between neighboring places a closed walk
 * goes up as often as down. So where pieces keep their direction, |up − down| ways are added; where they may be
 * turned, 1 where an odd number of pieces crosses. Where that leaves the walk in parts, it goes there and back through
 * the shortest gaps that join them (least spanning tree). With turning over, faces that lean either way are the same:
 * places are then taken without sign, because the next piece can always be turned to lean as the last face does.
 * @param cutting items with the places of their faces
 * @param items the items of the bar, by place
 * @param counts how many of each; those of 0 are left aside
 * @returns units; 0 where all pieces are square
 * Valid for every pattern. Throws nothing.
 * @example miterLoss(cutting, [0], [2])
 * Source: the rural postman on a line, own; an exhaustive search of order and turning is its referee.
 */
export function miterLoss(cutting: Cutting, items: ArrayLike<number>, counts: ArrayLike<number>): number {
  if (cutting.isSquare) return 0;
  const count = miterCount(cutting);
  for (let k = 0; k < items.length; k++) count.add(items[k] as number, counts[k] as number);
  return count.loss();
}

export function joinsOf(cutting: Cutting, items: ArrayLike<number>, counts: ArrayLike<number>): Joins {
  const places = placesOf(cutting, items, counts);
  const gaps = places.length - 1;
  const up = new Array<number>(gaps).fill(0);
  const down = new Array<number>(gaps).fill(0);
  const group = places.map((_, at) => at);
  for (let k = 0; k < items.length; k++) {
    const item = cutting.items[items[k] as number];
    const count = counts[k] as number;
    if (!item || count === 0) continue;
    const from = places.indexOf(item.left);
    const to = places.indexOf(item.right);
    join(group, from, to);
    for (let gap = Math.min(from, to); gap < Math.max(from, to); gap++) {
      if (from < to || !cutting.isDirected) up[gap] = (up[gap] as number) + count;
      else down[gap] = (down[gap] as number) + count;
    }
  }
  return close(places, group, up, down, cutting.isDirected);
}

/** Adds what makes a closed walk of the pieces; `up` and `down` come as the pieces cross. */
function close(places: number[], group: number[], up: number[], down: number[], isDirected: boolean): Joins {
  let loss = 0;
  const even: number[] = [];
  for (let gap = 0; gap < up.length; gap++) {
    const lean = isDirected ? (up[gap] as number) - (down[gap] as number) : (up[gap] as number) % 2;
    up[gap] = Math.max(0, isDirected ? -lean : lean);
    down[gap] = Math.max(0, isDirected ? lean : 0);
    if (lean === 0) even.push(gap);
    else join(group, gap, gap + 1);
    loss += widthOf(places, gap) * Math.abs(lean);
  }
  even.sort((a, b) => widthOf(places, a) - widthOf(places, b) || a - b);
  for (const gap of even) {
    if (!join(group, gap, gap + 1)) continue;
    up[gap] = 1;
    down[gap] = 1;
    loss += 2 * widthOf(places, gap);
  }
  return { places, up, down, loss };
}

function widthOf(places: readonly number[], gap: number): number {
  return (places[gap + 1] as number) - (places[gap] as number);
}

function placesOf(cutting: Cutting, items: ArrayLike<number>, counts: ArrayLike<number>): number[] {
  const places = [0];
  const add = (place: number) => {
    if (!places.includes(place)) places.push(place);
  };
  for (let k = 0; k < items.length; k++) {
    const item = cutting.items[items[k] as number];
    if (!item || counts[k] === 0) continue;
    add(item.left);
    add(item.right);
  }
  return places.sort((a, b) => a - b);
}

/** Joins the groups of two places; false where they are one already. */
function join(group: number[], one: number, other: number): boolean {
  const kept = group[one] as number;
  const gone = group[other] as number;
  if (kept === gone) return false;
  for (let at = 0; at < group.length; at++) if (group[at] === gone) group[at] = kept;
  return true;
}
