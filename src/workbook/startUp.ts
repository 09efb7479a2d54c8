/** What the functions, which start before the pane, found of the workbook's shop. */
export type StartUpState =
  | { state: 'reading' }
  | { state: 'editing' }
  | { state: 'ok'; stamp: string }
  | { state: 'incomplete'; stamp: string; messages: string[] }
  | {
      state:
        | 'no workbook'
        | 'no ShopStamp'
        | 'no SHOP formula'
        | 'table missing'
        | 'data unreadable'
        | 'not read';
      messages: string[];
    };

/** The start-up of the functions, as they offer it in the same runtime. */
export interface StartUp {
  readonly state: StartUpState;
  /** Whether the host was asked to calculate again what ended without its shop; undefined where nothing did. */
  readonly recalculation: 'asked' | 'manual' | 'refused' | undefined;
  /** Tells of every change until stopped. */
  listen(listener: () => void): () => void;
}

/** Undefined where the functions are not loaded. */
export function startUp(): StartUp | undefined {
  return (globalThis as { tonrowStartUp?: StartUp }).tonrowStartUp;
}
