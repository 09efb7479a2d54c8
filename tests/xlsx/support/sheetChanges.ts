import type { SheetChanges } from '../../../src/xlsx/patchSheet.js';
import type { Worksheet } from '../../../src/xlsx/storedCells.js';
import type { CellChange } from '../../../src/xlsx/writeCell.js';

/** A list of changes as a sheet takes them: of its own cells, and of cells that it does not have. */
export function sheetChanges(cells: Worksheet, changes: readonly CellChange[]): SheetChanges {
  const position = ({ row, column }: CellChange) => cells.index.at(row, column);
  const known = new Map(changes.map((change) => [position(change), change]));
  return {
    ofCell: (at) => known.get(at),
    added: changes.filter((change) => position(change) === undefined),
  };
}
