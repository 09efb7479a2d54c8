/** A label along a line: where it belongs, and the room it takes. */
export interface Wanted {
  at: number;
  room: number;
}

/**
 * The middles of labels along a line, in their order: each as near to where it belongs as the others let it, none over
 * another, all between two ends. Undefined where there is no room for all.
 */
export function spread(wanted: readonly Wanted[], from: number, to: number): number[] | undefined {
  const total = wanted.reduce((sum, { room }) => sum + room, 0);
  if (total > to - from) return undefined;
  const order = wanted.map((_, at) => at).sort((a, b) => (wanted[a]?.at ?? 0) - (wanted[b]?.at ?? 0));
  const middles: number[] = wanted.map(() => 0);
  let free = from;
  for (const at of order) {
    const { at: place, room } = wanted[at] ?? { at: 0, room: 0 };
    middles[at] = Math.max(place, free + room / 2);
    free = (middles[at] ?? 0) + room / 2;
  }
  let end = to;
  for (const at of order.reverse()) {
    const { room } = wanted[at] ?? { room: 0 };
    middles[at] = Math.min(middles[at] ?? 0, end - room / 2);
    end = (middles[at] ?? 0) - room / 2;
  }
  return middles;
}
