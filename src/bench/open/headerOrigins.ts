import type { Model, UID } from '@odoo/o-spreadsheet';
import type * as Engine from '@odoo/o-spreadsheet';
import * as untyped from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';

const { CorePlugin, registries } = untyped as unknown as Pick<typeof Engine, 'CorePlugin' | 'registries'>;

export type Dimension = 'ROW' | 'COL';

/** For each row or column there is now, the one it was when the sheet was opened; null for a new one. */
export type Origins = readonly (number | null)[];

interface State {
  origins: Partial<Record<UID, Partial<Record<Dimension, Origins>>>>;
}

interface HeaderCommand {
  type: string;
  sheetId: UID;
  dimension: Dimension;
  base: number;
  position: 'before' | 'after';
  quantity: number;
  elements: number[];
}

/** Follows rows and columns through insertions and deletions, also when these are undone. */
class HeaderOriginsPlugin extends CorePlugin<State> {
  static override readonly getters = ['getHeaderOrigins'] as const;
  readonly origins: State['origins'] = {};

  override handle(command: unknown): void {
    const cmd = command as HeaderCommand;
    if (cmd.type !== 'ADD_COLUMNS_ROWS' && cmd.type !== 'REMOVE_COLUMNS_ROWS') return;
    const adds = cmd.type === 'ADD_COLUMNS_ROWS';
    // The rows and columns themselves have changed already.
    const count =
      this.getters.getNumberHeaders(cmd.sheetId, cmd.dimension) +
      (adds ? -cmd.quantity : cmd.elements.length);
    const before =
      this.getHeaderOrigins(cmd.sheetId, cmd.dimension) ?? Array.from({ length: count }, (_, i) => i);
    const goes = new Set(adds ? [] : cmd.elements);
    const at = cmd.base + (cmd.position === 'after' ? 1 : 0);
    const now = adds
      ? [...before.slice(0, at), ...Array<null>(cmd.quantity).fill(null), ...before.slice(at)]
      : before.filter((_, i) => !goes.has(i));
    this.history.update('origins', cmd.sheetId, cmd.dimension, now);
  }

  getHeaderOrigins(sheetId: UID, dimension: Dimension): Origins | undefined {
    return this.origins[sheetId]?.[dimension];
  }
}

/** Has the engine's models follow their rows and columns, from the next one made. */
export function followHeaders(): void {
  if (registries.corePluginRegistry.contains('tonrow_origins')) return;
  registries.corePluginRegistry.add('tonrow_origins', HeaderOriginsPlugin);
}

/** Undefined where no row or column came or went. */
export function headerOrigins({ getters }: Model, sheetId: UID, dimension: Dimension): Origins | undefined {
  const followed = getters as unknown as Pick<HeaderOriginsPlugin, 'getHeaderOrigins'>;
  return followed.getHeaderOrigins(sheetId, dimension);
}
