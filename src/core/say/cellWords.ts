import type { OpenCell } from '../check/rowFact.js';
import { listWords } from './listWords.js';

/** A cell by its heading: `Edge`, `Edge 2` for the second group of holes. */
export function cellName({ cell, group = 0 }: OpenCell): string {
  return group === 0 ? cell : `${cell} ${group + 1}`;
}

/** Several cells, each once: `End, Pitch and Gage 2`. */
export function cellNames(cells: readonly OpenCell[]): string {
  return listWords([...new Set(cells.map(cellName))]);
}
