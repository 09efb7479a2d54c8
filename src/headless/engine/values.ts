import type { Zone } from '../../sheet/address.js';
import { storedCodes } from '../../sheet/cellValue.js';

/** A value inside a calculation; an error is its code as text, known by {@link isErrorCode}. */
export interface Scalar {
  value: number | string | boolean | null;
  message?: string;
}

/** Columns of cells: `matrix[column][row]`, as the engine has them. */
export type Matrix = Scalar[][];

export type Operand = Scalar | Matrix;

/** The cells a calculation reads. */
export interface Values {
  cell(sheet: number, row: number, column: number): Scalar;
  range(sheet: number, zone: Zone): Matrix;
  /** Where the formula in a cell spilled to. */
  spillZone(sheet: number, row: number, column: number): Zone;
  isHidden(sheet: number, row: number): boolean;
  /** The cell holds a subtotal, which subtotals over it leave out. */
  isSubtotal(sheet: number, row: number, column: number): boolean;
}

/** Thrown when a formula cannot be computed faithfully here: the cell keeps its value. */
export class CannotCompute extends Error {}

/** Thrown when a formula waits for a result that comes later. */
export class Waiting extends Error {}

export const isMatrix = (operand: Operand | undefined): operand is Matrix => Array.isArray(operand);

/** The errors that formulas can give. */
export const errorCodes: ReadonlySet<string> = new Set([...storedCodes, '#SPILL!', '#CALC!']);

export const isErrorCode = (value: unknown): value is string =>
  typeof value === 'string' && errorCodes.has(value);

export const failure = (value: string): Scalar => ({ value });

/** The single value of an operand in a cell that holds one. */
export const topLeft = (operand: Operand): Scalar =>
  isMatrix(operand) ? (operand[0]?.[0] ?? { value: null }) : operand;

/** An error that one of our functions gave, with its sentence: it keeps it on its way through formulas. */
export class OurError implements Scalar {
  constructor(
    readonly value: string,
    readonly message: string,
  ) {}
}

/** An argument as one value; blank when it was left out. */
export const single = (operand: Operand | undefined): Scalar =>
  operand === undefined ? { value: null } : topLeft(operand);

/** Cells an array may have, and characters a text may have, in a calculation. */
export const largestArray = 4_000_000;
export const longestText = 32_767;

/** Ends a calculation whose array would be too large to hold. */
export function checkArraySize(columns: number, rows: number): void {
  if (columns * rows > largestArray)
    throw new CannotCompute('It makes an array of more than four million values.');
}
