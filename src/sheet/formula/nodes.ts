import type { Moves } from './moves.js';
import type { Zone } from '../address.js';

/**
 * A formula as a tree. References are resolved: sheet by position, rows and columns absolute, as the cell sees them that
 * the formula was read for. Where one moves with the cell, it says how.
 */
export type Node =
  | { kind: 'number'; value: number }
  | { kind: 'text'; value: string }
  | { kind: 'boolean'; value: boolean }
  | { kind: 'error'; code: string }
  | { kind: 'missing' }
  | { kind: 'reference'; sheet: number; zone: Zone; moves?: Moves | undefined }
  | { kind: 'spill'; sheet: number; row: number; column: number; moves?: Moves | undefined }
  | { kind: 'intersection'; operand: Node }
  | { kind: 'call'; name: string; args: Node[] }
  | { kind: 'binary'; operator: string; left: Node; right: Node }
  | { kind: 'unary'; operator: '-' | '+' | '%'; operand: Node }
  | { kind: 'array'; rows: Node[][] };

/** A formula ready to evaluate, and why it cannot be, where it cannot. */
export interface Formula {
  node: Node;
  /** The references it reads, names and structured references included. */
  references: { sheet: number; zone: Zone; moves?: Moves | undefined }[];
  /** The cells whose spills it reads. */
  spills: { sheet: number; row: number; column: number; moves?: Moves | undefined }[];
  /** Native functions it calls, upper case. */
  functions: ReadonlySet<string>;
  /** It calls one of our functions. */
  ours: boolean;
  /** In plain words, when something in it cannot be evaluated here. */
  unsupported: string | undefined;
  /** It works out at calculation time which cells it reads. */
  dynamic: boolean;
  /** What it is read into hangs on its cell in other ways than the references that move: no other cell has it. */
  alone: boolean;
  /** It names the row of a table that it stands in. */
  ownRow: boolean;
  /** How many rows its text names that move with the cell. */
  movingRows: number;
}
