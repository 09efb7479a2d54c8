import * as untyped from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type * as Engine from '@odoo/o-spreadsheet';
import type { Dispatch } from './oneCommand.js';

const { CorePlugin, registries, coreTypes } = untyped as unknown as Pick<
  typeof Engine,
  'CorePlugin' | 'registries'
> & { coreTypes: Set<string> };

/** The command that brings many cells. */
export const manyCells = 'TONROW_CELLS';

export interface CellUpdate {
  row: number;
  col: number;
  content?: string;
  format?: string;
}

/** Many cells as one command of the engine: they are not asked about, noted and sent one by one. */
class CellsPlugin extends CorePlugin {
  override handle(command: unknown): void {
    const { type, sheetId, cells } = command as { type: string; sheetId: string; cells: CellUpdate[] };
    if (type !== manyCells) return;
    for (const cell of cells) this.dispatch('UPDATE_CELL', { sheetId, ...cell });
  }
}

/** Has the engine's models know the command, from the next one made. */
export function knowManyCells(): void {
  coreTypes.add(manyCells);
  registries.corePluginRegistry.add('tonrow_cells', CellsPlugin);
  // What is undone comes back from the engine's history; the command itself is left out by others who undo it.
  registries.inverseCommandRegistry.add(manyCells as never, (command) => [command]);
}

/** Writes cells of a sheet, each as `UPDATE_CELL` does. */
export const updateCells = (dispatch: Dispatch, sheetId: string, cells: readonly CellUpdate[]) =>
  (dispatch as (type: string, payload: object) => ReturnType<Dispatch>)(manyCells, { sheetId, cells });
