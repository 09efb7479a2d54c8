import type { Action, Done } from '../writeHost.js';
import { kindOf } from './kinds/kinds.js';

/** What takes actions back, the last one first. */
export function undoing(done: readonly Done[]): Action[] {
  return [...done].reverse().flatMap(({ action, after }) => kindOf(action).undo(action, after) ?? []);
}
