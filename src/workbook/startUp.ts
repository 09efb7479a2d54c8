import type { Recalculation, StartUpState } from '../core/shop/startUpState.js';

/** The start-up of the functions, as they offer it in the same runtime. */
export interface StartUp {
  readonly state: StartUpState;
  /** Whether the host was asked to calculate again what ended without its shop; undefined where nothing did. */
  readonly recalculation: Recalculation | undefined;
  /** Tells of every change until stopped. */
  listen(listener: () => void): () => void;
}

/** Undefined where the functions are not loaded. */
export function startUp(): StartUp | undefined {
  return (globalThis as { tonrowStartUp?: StartUp }).tonrowStartUp;
}
