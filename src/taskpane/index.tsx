import { createRoot } from 'react-dom/client';
import { TellingOwnWrites } from '../workbook/ownWrites.js';
import type { Workbook } from '../workbook/port.js';
import { App } from './app/App.js';

/*
 * The pane. `app` is its frame; `parts`, `shop`, `steps` and `handOff` are its places; `drawing` draws parts
 * and presses; `shared` is what places have in common.
 */

/**
 * Shows the pane in an element, over a workbook.
 * @returns what takes it away again and stops watching the workbook
 */
export function mountPane(element: HTMLElement, workbook: Workbook): () => void {
  const root = createRoot(element);
  root.render(<App workbook={new TellingOwnWrites(workbook)} />);
  return () => root.unmount();
}
