const focusable =
  'button:not([disabled]), [href], input:not([type=file]):not([disabled]), select, textarea, [tabindex="0"]';

interface Area {
  element: HTMLElement;
  /** Makes it seen where only one of several is. */
  show?(): void;
  enter(): void;
}

/**
 * F6 and Shift+F6 go round the areas of the page: inside the grid, Tab goes from cell to cell.
 * @param all in their order, each with what takes the focus in it; an area that is not shown and cannot be is left out
 */
export function goRoundWithF6(all: readonly Area[]): void {
  addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'F6') return;
      event.preventDefault();
      event.stopPropagation();
      const areas = all.filter(({ element, show }) => show !== undefined || element.checkVisibility());
      const here = areas.findIndex(({ element }) => element.contains(document.activeElement));
      const next = (here + (event.shiftKey ? -1 : 1) + areas.length) % areas.length;
      areas[next]?.show?.();
      areas[next]?.enter();
    },
    { capture: true },
  );
}

/** Puts the focus on the first thing in an element that takes it, else on the element. */
export function enterFirst(element: HTMLElement): void {
  const first = [...element.querySelectorAll<HTMLElement>(focusable)].find(
    (one) => one.offsetParent !== null && one.tabIndex >= 0,
  );
  if (!first) element.tabIndex = -1;
  (first ?? element).focus();
}
