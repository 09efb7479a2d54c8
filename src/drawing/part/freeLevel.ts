const nearest = 18;
const step = 4;
const clearance = 9;

/** Where something stands in the way along the part, in pixels. */
export interface Obstacle {
  x: number;
  half: number;
}

/** The x nearest to a hole, on either side, where an arrow across the part meets no other hole and no other arrow. */
export function freeLevel(
  x: number,
  obstacles: readonly Obstacle[],
  rooms: readonly { from: number; to: number }[],
): number {
  const farthest = Math.max(...rooms.map(({ from, to }) => to - from), nearest);
  for (let away = nearest; away <= farthest; away += step) {
    for (const level of [x + away, x - away]) {
      const inside = rooms.some(({ from, to }) => level >= from + clearance && level <= to - clearance);
      if (inside && obstacles.every((each) => Math.abs(each.x - level) >= each.half + clearance))
        return level;
    }
  }
  return x + nearest;
}
