import type { Failure } from '../inputError.js';
import type { PressItemKey } from './item/pressItem.js';

/** A press value: a limit in the core's unit, several sizes, no limit, not known, or a cell that could not be read. */
export type PressValue =
  | { state: 'value'; value: number }
  | { state: 'list'; values: readonly number[] }
  | { state: 'none' }
  | { state: 'unknown' }
  | { state: 'bad'; failure: Failure };

export interface Press {
  name: string;
  values: Readonly<Partial<Record<PressItemKey, PressValue>>>;
  /** Why the whole press cannot be used: two presses of one name. */
  problem?: Failure;
}

const unknown: PressValue = { state: 'unknown' };

export function pressValue(press: Press, key: PressItemKey): PressValue {
  return press.values[key] ?? unknown;
}
