import { type CellValue, meant } from '../../core/quantity/cellValue.js';

/** A single value as a host hands it over: a plain value, an error, or a data type with a basic value. */
export type HostValue = CellValue | undefined | { readonly [key: string]: unknown };
/** What a parameter receives: one value, or a matrix of values by rows. */
export type HostInput = HostValue | HostRows;
export type HostRows = readonly HostRow[];
export type HostRow = readonly HostValue[];

/** An error cell, by its code: `#N/A`. */
export class ErrorCell {
  constructor(readonly code: string) {}
}

/**
 * The plain value of what the host sent. Omitted arguments and blanks in every form become null; data types give their
 * basic value; errors are marked as such.
 */
export function plainValue(value: HostValue): CellValue | ErrorCell {
  if (value === undefined || value === null) return null;
  if (typeof value !== 'object') return finite(value);
  if (typeof value['code'] === 'string') return new ErrorCell(value['code']);
  const basic = value['basicValue'];
  if (value['type'] === 'Error') return new ErrorCell(typeof basic === 'string' ? basic : '#VALUE!');
  const plain = typeof basic === 'string' || typeof basic === 'number' || typeof basic === 'boolean';
  return plain ? finite(basic) : null;
}

/** A number that is none shows as an error in a sheet, and is one here; a 0 may be a blank cell, and is one. */
function finite(value: string | number | boolean): CellValue | ErrorCell {
  return typeof value !== 'number' || Number.isFinite(value) ? meant(value) : new ErrorCell('#NUM!');
}

/** The rows of what the host sent: one value is one row. */
export function hostRows(input: HostInput): HostRows {
  return Array.isArray(input) ? (input as HostRows) : [[input as HostValue]];
}

/** A row of plain values; an error inside it stays readable as its code. */
export function plainRow(row: HostRow): CellValue[] {
  return row.map((value) => {
    const plain = plainValue(value);
    return plain instanceof ErrorCell ? plain.code : plain;
  });
}

/** A matrix of plain values. */
export function plainMatrix(input: HostInput): CellValue[][] {
  return hostRows(input).map(plainRow);
}
