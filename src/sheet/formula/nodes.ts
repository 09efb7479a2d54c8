import type { Zone } from '../address.js';

/** A formula as a tree. References are resolved: sheet by position, rows and columns absolute. */
export type Node =
  | { kind: 'number'; value: number }
  | { kind: 'text'; value: string }
  | { kind: 'boolean'; value: boolean }
  | { kind: 'error'; code: string }
  | { kind: 'missing' }
  | { kind: 'reference'; sheet: number; zone: Zone }
  | { kind: 'spill'; sheet: number; row: number; column: number }
  | { kind: 'intersection'; operand: Node }
  | { kind: 'call'; name: string; args: Node[] }
  | { kind: 'binary'; operator: string; left: Node; right: Node }
  | { kind: 'unary'; operator: '-' | '+' | '%'; operand: Node }
  | { kind: 'array'; rows: Node[][] };

/** A formula ready to evaluate, and why it cannot be, where it cannot. */
export interface Formula {
  node: Node;
  /** The references it reads, names and structured references included. */
  references: { sheet: number; zone: Zone }[];
  /** The cells whose spills it reads. */
  spills: { sheet: number; row: number; column: number }[];
  /** Native functions it calls, upper case. */
  functions: ReadonlySet<string>;
  /** It calls one of our functions. */
  ours: boolean;
  /** In plain words, when something in it cannot be evaluated here. */
  unsupported: string | undefined;
  /** It works out at calculation time which cells it reads. */
  dynamic: boolean;
}
