import type { Point } from '../../core/part/point.js';

/** Where work lies, and what it is in words. */
export interface Mark extends Point {
  label: string;
}

export interface WorkFact {
  work: string;
  size: string;
  count: number;
  drawnAs: string;
}

/** Work besides holes as it is drawn. */
export interface Work {
  /** What one is called, and several. */
  name: readonly [string, string];
  /** Its part of the sentence: `2 notches 2 × 1 in`. */
  words: string[];
  /** Why some of it is not drawn. */
  said: string[];
  facts: WorkFact[];
  marks: Mark[];
}

/** Work the row does not ask for. */
export function noWork(name: Work['name']): Work {
  return { name, words: [], said: [], facts: [], marks: [] };
}

/** `1 notch`, `2 notches`. */
export function counted(count: number, [one, several]: Work['name']): string {
  return `${count} ${count === 1 ? one : several}`;
}
