import { formatNumber } from '../quantity/formatLength.js';
import type { RunSetup } from '../work/runSetup.js';
import { listWords } from './listWords.js';

/** What setting up a run takes, and whether the rows have it already. */
export function runSetupWords({ toolChanges, holderChanges, seconds, invented, shared }: RunSetup): string {
  if (toolChanges === 0) return '';
  const holders = holderChanges === 0 ? '' : ` and ${counted(holderChanges, 'holder')}`;
  const told = [
    `Setting up ${counted(toolChanges, 'set')} of tools${holders} takes ${formatNumber(seconds / 60, 1)} min in all.`,
    shared
      ? 'The rows leave it to the run: add it once.'
      : 'The rows have their own changes in their minutes: do not add it.',
  ];
  if (invented.length > 0) told.push(`Invented until the shop gives its own: ${listWords(invented)}.`);
  return told.join(' ');
}

function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}
