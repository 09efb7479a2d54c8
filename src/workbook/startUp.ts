/** What the functions, which start before the pane, found of the workbook's shop. */
export type StartUpState =
  | { state: 'reading' }
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

/** The state kept by the functions in the same runtime; undefined where they are not loaded. */
export function startUpState(): StartUpState | undefined {
  const { tonrowStartUp } = globalThis as { tonrowStartUp?: { readonly state: StartUpState } };
  return tonrowStartUp?.state;
}
