import { type RefObject, useEffect, useRef } from 'react';

/**
 * Where one view takes the place of another, the button that was pressed is gone and the focus with it: it goes to the
 * heading of the new view. Nothing happens where the focus is somewhere, or when the first view is shown.
 * @param view which view is shown
 * @returns goes to the element that holds the views
 */
export function useFocusedView<Element extends HTMLElement>(view: string): RefObject<Element> {
  const element = useRef<Element>(null);
  const last = useRef(view);
  useEffect(() => {
    const hasMoved = last.current !== view;
    last.current = view;
    if (!hasMoved || document.activeElement !== document.body) return;
    const heading = element.current?.querySelector<HTMLElement>('h2, h3, h4');
    if (!heading) return;
    heading.tabIndex = -1;
    heading.focus();
  }, [view]);
  return element;
}
