export type View = 'grid' | 'pane';

/**
 * Where there is no room for both, the grid or the pane fills the frame: two buttons say which. The style decides when
 * that is; elsewhere both are there and the buttons are not.
 * @returns shows one of the two
 */
export function makeViews(
  frame: HTMLElement,
  buttons: Readonly<Record<View, HTMLElement>>,
): (view: View) => void {
  const show = (view: View) => {
    frame.dataset['view'] = view;
    for (const [name, button] of Object.entries(buttons))
      button.setAttribute('aria-pressed', String(name === view));
    // The grid measures itself when the window changes.
    dispatchEvent(new Event('resize'));
  };
  for (const [name, button] of Object.entries(buttons))
    button.addEventListener('click', () => show(name as View));
  show('grid');
  return show;
}

/** A button that unfolds what it controls, where the style folds it; a choice in it folds it again. */
export function makeMenu(button: HTMLElement, menu: HTMLElement): void {
  const unfold = (isOpen: boolean) => {
    button.setAttribute('aria-expanded', String(isOpen));
    menu.classList.toggle('unfolded', isOpen);
  };
  const isOpen = () => button.getAttribute('aria-expanded') === 'true';
  button.addEventListener('click', () => unfold(!isOpen()));
  menu.addEventListener('click', () => unfold(false));
  addEventListener('keydown', ({ key }) => {
    if (key !== 'Escape' || !isOpen()) return;
    unfold(false);
    button.focus();
  });
}
