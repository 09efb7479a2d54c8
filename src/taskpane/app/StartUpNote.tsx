import { useEffect, useState } from 'react';
import { startUp } from '../../workbook/startUp.js';

/** What the functions did, or wait for, when the workbook was opened; nothing where all is as it should be. */
export function StartUpNote() {
  const [, look] = useState({});
  useEffect(() => startUp()?.listen(() => look({})), []);
  const note = sentence();
  return note === undefined ? null : <div role="status">{note}</div>;
}

function sentence(): string | undefined {
  const functions = startUp();
  if (functions?.state.state === 'editing')
    return 'A cell is being edited: the functions read the shop when you leave it.';
  switch (functions?.recalculation) {
    case 'asked':
      return 'Cells that finished before the shop was read were calculated again.';
    case 'manual':
      return 'Cells finished before the shop was read, and calculation is manual: press Ctrl+Alt+F9.';
    case 'refused':
      return 'Cells finished before the shop was read: press Ctrl+Alt+F9.';
    default:
      return undefined;
  }
}
