import type { Grade } from '../../core/material/grade.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import type { HostRows } from '../descriptor/hostValue.js';

/** What an argument may need to read itself: its own name as users see it, the unit, and the shop. */
export interface ReadContext {
  /** `Punch shear`, for the sentence of a refusal. */
  argument: string;
  unit: LengthUnit;
  /** The shop the call names; undefined where it gave only a unit or nothing. */
  shop: Shop | undefined;
  /** The shop's own grades. */
  grades: readonly Grade[];
}

export interface Choice {
  value: string;
  meaning: string;
}

interface Described {
  /** One line of help: what it is, how it may be written. */
  meaning: string;
  /** The kind of input, for the reference page and the argument tests. */
  kind: string;
  /** Fixed choices, offered by the host. */
  choices?: readonly Choice[];
  /** What an omitted argument stands for, as text. */
  omitted?: string;
}

/** A required or optional argument that takes one value. A blank optional argument reads as omitted. */
export interface ScalarArgument<Value> extends Described {
  dimensionality: 'scalar';
  optional: boolean;
  read(value: CellValue, context: ReadContext): Value;
}

/** An argument that takes a range with everything in it. */
export interface MatrixArgument<Value> extends Described {
  dimensionality: 'matrix';
  optional: boolean;
  read(cells: CellValue[][] | null, context: ReadContext): Value;
}

/** An argument that takes a long list: its function reads each row in its turn, so that no copy of all is made at once. */
export interface ListArgument<Value> extends Described {
  dimensionality: 'matrix';
  optional: boolean;
  rows: 'as given';
  read(rows: HostRows | null, context: ReadContext): Value;
}

export type Argument<Value> = ScalarArgument<Value> | MatrixArgument<Value> | ListArgument<Value>;

/** The name of an argument as users read it: `punchShear` is `Punch shear`. */
export function argumentLabel(name: string): string {
  const words = name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
}
