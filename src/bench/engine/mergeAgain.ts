import * as untyped from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type * as Engine from '@odoo/o-spreadsheet';
import type { Zone } from '../../sheet/address.js';
import type { Dispatch } from './oneCommand.js';

const { CorePlugin, registries, coreTypes } = untyped as unknown as Pick<
  typeof Engine,
  'CorePlugin' | 'registries'
> & { coreTypes: Set<string> };

const command = 'TONROW_MERGE';

/** Merges cells where files may have them merged, and nobody can by hand: across the edge of frozen cells. */
class MergePlugin extends CorePlugin {
  override handle(given: unknown): void {
    const { type, sheetId, target } = given as { type: string; sheetId: string; target: Zone[] };
    if (type === command) this.dispatch('ADD_MERGE', { sheetId, target });
  }
}

/** Has the engine's models know the command, from the next one made. */
export function knowMergeAgain(): void {
  coreTypes.add(command);
  registries.corePluginRegistry.add('tonrow_merge', MergePlugin);
  registries.inverseCommandRegistry.add(command as never, (given) => [given]);
}

export const mergeAgain = (dispatch: Dispatch, sheetId: string, zone: Zone) =>
  (dispatch as (type: string, payload: object) => ReturnType<Dispatch>)(command, { sheetId, target: [zone] });
