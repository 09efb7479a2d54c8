import { createContext, useContext } from 'react';
import type { Area } from '../../../workbook/area.js';
import type { Making, Proposal } from './proposal.js';

/** Asks the user about a change: shows what it would write, and writes it on yes. */
export type Propose = (proposal: Proposal | Making) => void;
/** Shows and selects cells; where that fails, the pane says why. */
export type GoTo = (area: Area) => void;

const missing = () => {
  throw new Error('There is nothing here to show a change.');
};

export const ChangeContext = createContext<{ propose: Propose; goTo: GoTo }>({
  propose: missing,
  goTo: missing,
});

export function usePropose(): Propose {
  return useContext(ChangeContext).propose;
}

export function useGoTo(): GoTo {
  return useContext(ChangeContext).goTo;
}
