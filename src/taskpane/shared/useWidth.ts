import { useEffect, useRef, useState } from 'react';

const fallback = 300;

/** The width an element has, so that what is drawn in it fits. */
export function useWidth<Element extends HTMLElement>() {
  const element = useRef<Element>(null);
  const [width, setWidth] = useState(fallback);
  useEffect(() => {
    const { current } = element;
    if (!current || typeof ResizeObserver === 'undefined') return undefined;
    const observer = new ResizeObserver(([entry]) => {
      if (entry) setWidth(Math.max(240, Math.round(entry.contentRect.width)));
    });
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  return { element, width };
}
