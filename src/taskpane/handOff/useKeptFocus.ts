import { type RefCallback, useCallback, useEffect, useRef } from 'react';

/**
 * Keeps the focus where an action goes from one button to the next: an action takes its button away while it works, and
 * the page would begin anew. What gets the ref has the focus when the work ends, where it was lost to the page.
 * @param stage at what the work is
 */
export function useKeptFocus(stage: string): RefCallback<HTMLElement> {
  const next = useRef<HTMLElement | null>(null);
  const last = useRef(stage);
  useEffect(() => {
    const hasMoved = last.current !== stage;
    last.current = stage;
    if (hasMoved && document.activeElement === document.body) next.current?.focus();
  }, [stage]);
  return useCallback((element: HTMLElement | null) => {
    if (element) next.current = element;
  }, []);
}
