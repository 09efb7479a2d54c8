/** Numbers that are the same for the same seed (Mulberry32): workbooks of two runs hold the same cells. */
export function randomSource(seed) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (least, most) => least + Math.floor(next() * (most - least + 1));
  return { whole, pick: (list) => list[whole(0, list.length - 1)], chance: (share) => next() < share };
}

/** A number of sixteenths or other parts of an inch as a shop writes it: `1-3/16`. */
export function inches(parts, of) {
  const whole = Math.floor(parts / of);
  let [above, below] = [parts % of, of];
  while (above > 0 && above % 2 === 0) [above, below] = [above / 2, below / 2];
  if (above === 0) return String(whole);
  return whole === 0 ? `${above}/${below}` : `${whole}-${above}/${below}`;
}
