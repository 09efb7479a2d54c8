import { zoneSeen } from '../../sheet/formula/moves.js';
import type { Node } from '../../sheet/formula/nodes.js';
import type { Setting } from './setting.js';
import type { Matrix, Operand } from './values.js';

type ReferenceFunction = (args: Node[], setting: Setting) => Operand | undefined;

const zoneOf = (args: Node[], { away }: Setting) =>
  args.length === 1 && args[0]?.kind === 'reference' ? zoneSeen(args[0], away) : undefined;

const count = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, i) => first + i + 1);

/** Functions that ask where a reference is, not what it holds; undefined where they get no reference. */
export const referenceFunctions: Record<string, ReferenceFunction> = {
  ROWS: (args, setting) => {
    const zone = zoneOf(args, setting);
    return zone && { value: zone.bottom - zone.top + 1 };
  },
  COLUMNS: (args, setting) => {
    const zone = zoneOf(args, setting);
    return zone && { value: zone.right - zone.left + 1 };
  },
  ROW: (args, setting) => {
    if (args.length === 0) return { value: setting.row + 1 };
    const zone = zoneOf(args, setting);
    if (!zone) return undefined;
    if (setting.plain || zone.top === zone.bottom) return { value: zone.top + 1 };
    return [count(zone.top, zone.bottom).map((value) => ({ value }))];
  },
  COLUMN: (args, setting) => {
    if (args.length === 0) return { value: setting.column + 1 };
    const zone = zoneOf(args, setting);
    if (!zone) return undefined;
    if (setting.plain || zone.left === zone.right) return { value: zone.left + 1 };
    return count(zone.left, zone.right).map((value) => [{ value }]) as Matrix;
  },
};
