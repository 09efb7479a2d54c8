/** Numbers that look random and are the same in every run with the same seed (mulberry32). */
export class Random {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** From 0 to under 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = this.#state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  between(least: number, greatest: number): number {
    return least + (greatest - least) * this.next();
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  pick<T>(values: readonly [T, ...T[]]): T {
    return values[Math.floor(this.next() * values.length)] ?? values[0];
  }

  /** 0 to `most`, each as often. */
  count(most: number): number {
    return Math.floor(this.next() * (most + 1));
  }
}
