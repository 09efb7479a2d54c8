import { createContext, useContext } from 'react';
import type { Proposal } from './proposal.js';

/** Asks the user about a change: shows what it would write, and writes it on yes. */
export type Propose = (proposal: Proposal) => void;

export const ChangeContext = createContext<Propose>(() => {
  throw new Error('There is nothing here to show a change.');
});

export function usePropose(): Propose {
  return useContext(ChangeContext);
}
