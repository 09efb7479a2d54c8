/** Random numbers of a seed: the same seed gives the same numbers everywhere. */
export class Random {
  private state: number;

  constructor(...seeds: readonly (number | string)[]) {
    let hash = 0x811c9dc5;
    for (const character of seeds.join(' '))
      hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
    this.state = hash;
  }

  /** From 0 to under 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  pick<T>(list: readonly T[]): T {
    return list[this.below(list.length)] as T;
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  times<T>(most: number, make: () => T): T[] {
    return Array.from({ length: this.below(most + 1) }, make);
  }
}
