import { InputError } from '../../../src/core/inputError.js';
import { allNotations } from '../../../src/core/notation/allNotations.js';
import { type NotationKind, refused } from '../../../src/core/notation/notation.js';
import { readingOf } from './readingOf.js';
import type { LengthUnit } from '../../../src/core/quantity/units.js';

/** A text with one slip of the keyboard, and what became of its reading. */
export interface Slip {
  kind: NotationKind;
  unit: LengthUnit;
  text: string;
  typed: string;
  /** What slipped: `digit lost`, `space added`. */
  what: string;
  meant: string;
  reading: string;
}

export const operations = ['lost', 'added', 'doubled', 'swapped'] as const;
const keys = [...'0123456789/-. ,xX\'"()@ØmMnACSLR'];

/** Numbers from 0 to 1 that are the same at every run: mulberry32. */
export function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** So many slips of texts that are read, each in a shop that reads the text. */
export function* slips(count: number, seed: number): Generator<Slip> {
  const random = numbersFrom(seed);
  const pick = <T>(values: readonly T[]): T => values[Math.floor(random() * values.length)] as T;
  const lines = allNotations.flatMap(({ kind, text, inInches, inMm }) =>
    (
      [
        ['in', inInches],
        ['mm', inMm],
      ] as const
    ).flatMap(([unit, meant]) => (meant === refused ? [] : [{ kind, text, unit, meant }])),
  );
  for (let made = 0; made < count; ) {
    const line = pick(lines);
    const operation = pick(operations);
    const at = Math.floor(random() * line.text.length);
    const [typed, character] = slipped(line.text, operation, at, pick(keys));
    if (typed === line.text) continue;
    made += 1;
    const reading = readOrRefused(line.kind, typed, line.unit);
    yield { ...line, typed, what: `${nameOf(character)} ${operation}`, reading };
  }
}

function slipped(
  text: string,
  operation: (typeof operations)[number],
  at: number,
  key: string,
): [string, string] {
  const character = text.charAt(at);
  switch (operation) {
    case 'lost':
      return [text.slice(0, at) + text.slice(at + 1), character];
    case 'added':
      return [text.slice(0, at) + key + text.slice(at), key];
    case 'doubled':
      return [text.slice(0, at) + character + text.slice(at), character];
    case 'swapped': {
      const next = text.charAt(at + 1);
      // Of two that change places, the one that is no digit says more.
      const telling = /\d/.test(character) ? next : character;
      return [text.slice(0, at) + next + character + text.slice(at + 2), telling];
    }
  }
}

function nameOf(character: string): string {
  if (/\d/.test(character)) return 'digit';
  if (/\p{L}/u.test(character)) return 'letter';
  if (character === ' ') return 'space';
  return character === '' ? 'nothing' : character;
}

/** What a text is read as, `refused` where it is not read; anything else than a refusal fails. */
export function readOrRefused(kind: NotationKind, text: string, unit: LengthUnit): string {
  try {
    return readingOf(kind, text, unit);
  } catch (error) {
    if (error instanceof InputError) return refused;
    throw error;
  }
}
