/** What the grid's own fields are for: the engine gives them no labels. */
const labels: readonly (readonly [string, string])[] = [
  ['.o-grid-add-rows-input', 'How many rows to add'],
  ['.o-topbar-toolbar .o-number-input, .o-font-size', 'Size'],
  ['input.os-input', 'Cell or name to go to'],
  ['.o-composer', 'Content of the cell'],
];

/** Labels the fields of the grid for screen readers, also those that appear later, and keeps the order of Tab. */
export function labelGrid(grid: HTMLElement): void {
  const label = () => {
    for (const [selector, text] of labels)
      for (const field of grid.querySelectorAll(selector))
        if (!field.hasAttribute('aria-label')) field.setAttribute('aria-label', text);
    // Only what has a role may have a name.
    for (const editor of grid.querySelectorAll('.o-composer:not([role])'))
      editor.setAttribute('role', 'textbox');
    for (const field of grid.querySelectorAll('input:not([aria-label]):not([id])'))
      field.setAttribute('aria-label', 'Field of the grid');
    for (const element of grid.querySelectorAll<HTMLElement>('[tabindex]'))
      if (element.tabIndex > 0) element.tabIndex = 0;
  };
  label();
  new MutationObserver(label).observe(grid, { childList: true, subtree: true });
}
