import { createContext, useContext, useState } from 'react';

/** What is typed in the pane and not yet written, by a key of its place; it lasts as long as the pane. */
export type KeptEntries = Map<string, unknown>;

export const KeptContext = createContext<KeptEntries>(new Map());

/** State that is still there when its place was left and is opened again; `forget` begins anew next time. */
export function useKept<Value>(key: string, first: () => Value) {
  const entries = useContext(KeptContext);
  const [value, setValue] = useState(() => (entries.has(key) ? (entries.get(key) as Value) : first()));
  const set = (next: Value) => {
    entries.set(key, next);
    setValue(next);
  };
  return { value, set, forget: () => void entries.delete(key) };
}
