/** What is typed in a cell, or what its formula gives where that is no error; null is blank. */
export type CellValue = string | number | boolean | null;

/** An error in a cell: its code as the host shows it, and the sentence that goes with it if any. */
export interface CellError {
  error: string;
  message?: string;
}

/** What a file keeps of a cell: its value, or the error in it. */
export type StoredValue = CellValue | CellError;

export const isCellError = (value: unknown): value is CellError =>
  typeof value === 'object' && value !== null && 'error' in value;

/** The error codes that the file format defines; the newer ones are stored as `#VALUE!`. */
export const storedCodes: ReadonlySet<string> = new Set([
  '#DIV/0!',
  '#N/A',
  '#NAME?',
  '#NULL!',
  '#NUM!',
  '#REF!',
  '#VALUE!',
  '#GETTING_DATA',
]);

/** The code a file can hold for an error: `#SPILL!` and other newer codes are stored as `#VALUE!`. */
export const storedErrorCode = (code: string) => (storedCodes.has(code) ? code : '#VALUE!');

/** Whether two values are stored in a file the same way. */
export function sameStored(a: StoredValue, b: StoredValue): boolean {
  if (isCellError(a)) return isCellError(b) && storedErrorCode(a.error) === storedErrorCode(b.error);
  return a === b;
}

/** Equal, numbers up to the last digits. */
export function sameResult(a: StoredValue, b: StoredValue): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return sameStored(a, b);
  return Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));
}
