const step = 24;
const least = 280;

/** Makes a bar between the grid and the pane that is dragged, or moved with the arrow keys. */
export function makeSplitter(bar: HTMLElement, frame: HTMLElement, pane: HTMLElement): void {
  const stacked = () => getComputedStyle(frame).flexDirection === 'column';
  const resize = (wanted: number) => {
    const room = stacked() ? frame.clientHeight : frame.clientWidth;
    const size = Math.round(Math.max(Math.min(least, room / 2), Math.min(wanted, room * 0.75)));
    pane.style.flexBasis = `${size}px`;
    bar.setAttribute('aria-valuenow', String(Math.round((100 * size) / room)));
    bar.setAttribute('aria-orientation', stacked() ? 'horizontal' : 'vertical');
    // The grid measures itself when the window changes.
    dispatchEvent(new Event('resize'));
  };
  const size = () => (stacked() ? pane.offsetHeight : pane.offsetWidth);
  bar.addEventListener('keydown', ({ key }) => {
    if (key === 'ArrowLeft' || key === 'ArrowUp') resize(size() + step);
    else if (key === 'ArrowRight' || key === 'ArrowDown') resize(size() - step);
  });
  bar.addEventListener('pointerdown', (event) => bar.setPointerCapture(event.pointerId));
  bar.addEventListener('pointermove', ({ pointerId, clientX, clientY }) => {
    if (!bar.hasPointerCapture(pointerId)) return;
    const { right, bottom } = frame.getBoundingClientRect();
    resize(stacked() ? bottom - clientY : right - clientX);
  });
}
