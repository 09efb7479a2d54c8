import type { OpenCell } from '../../core/check/rowFact.js';
import type { Edge } from '../../core/part/outline.js';
import type { PlacedHole } from '../../core/part/part.js';
import type { Choice } from '../../core/row/layout/alternatives.js';
import { cellOf } from '../../core/row/layout/layoutOf.js';
import { cellNames } from '../../core/say/cellWords.js';

const holeCells: readonly Choice['cell'][] = ['Leg', 'Slot', 'End'];

/** Whether a hole is read, not given: not placed by the row, or one of several that the row leaves to choose. */
export function isReadHole(choices: readonly Choice[]): (hole: PlacedHole) => boolean {
  return ({ free, group }) =>
    free !== undefined || choices.some((choice) => choice.group === group && holeCells.includes(choice.cell));
}

/** Whether an edge is one of several that the row leaves to choose. */
export function isReadEdge(choices: readonly Choice[]): (edge: Edge) => boolean {
  const has = (...cells: Choice['cell'][]) => choices.some(({ cell }) => cells.includes(cell));
  const [clips, miters] = [has('Clip at'), has('Long side', 'Miter leg')];
  return ({ cause: { is } }) =>
    is === 'clip' ? clips : (is === 'miter left' || is === 'miter right') && miters;
}

/** What is drawn one of several ways, by the cells that would settle it; empty where nothing is. */
export function choiceWords(choices: readonly Choice[]): string[] {
  const cells: OpenCell[] = choices.map(cellOf);
  if (cells.length === 0) return [];
  return [`${cellNames(cells)} would settle it: one of several ways is drawn, dashed`];
}
