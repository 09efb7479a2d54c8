import type { OpenCell } from '../check/rowFact.js';
import { listWords } from './listWords.js';

/** A cell by its heading as it stands in the list, else by the name of its column: `Edge`, `Edge 2`. */
export function cellName({ cell, group = 0, heading }: OpenCell): string {
  if (heading !== undefined) return heading;
  return group === 0 ? cell : `${cell} ${group + 1}`;
}

/** Several cells, each once: `End, Pitch and Gage 2`. */
export function cellNames(cells: readonly OpenCell[]): string {
  return listWords(namesOf(cells));
}

/** That cells are blank: `End and Pitch are blank`. */
export function blankWords(cells: readonly OpenCell[]): string {
  return `${cellNames(cells)} ${namesOf(cells).length > 1 ? 'are' : 'is'} blank`;
}

function namesOf(cells: readonly OpenCell[]): string[] {
  return [...new Set(cells.map(cellName))];
}
