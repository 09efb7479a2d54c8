import { type ActionKind, type Kind } from './kind.js';
import { cells } from './cells.js';
import { column } from './column.js';
import { name } from './name.js';
import { resize } from './resize.js';
import { sheet } from './sheet.js';
import { table } from './table.js';
import { unmerge } from './unmerge.js';

const kinds: { [K in Kind]: ActionKind<K> } = { cells, sheet, table, column, resize, unmerge, name };

/** What is known of steps and actions of a kind. */
export function kindOf<K extends Kind>({ kind }: { kind: K }): ActionKind<K> {
  return kinds[kind];
}
