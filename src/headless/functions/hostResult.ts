import type { HostError, HostValue } from './hostCall.js';

/** What a call gives a sheet: one value, or rows of values of equal length. */
export type HostResult = HostValue | HostValue[][];

/** Characters a cell can hold. */
const longestText = 32_767;

const notAValue = (name: string): HostError => ({
  error: '#VALUE!',
  message: `${name} gave something that a cell cannot show.`,
});

/** Scans a function's result as a careful host would: nothing that is no cell value gets through. */
export function readResult(name: string, result: unknown): HostResult {
  if (!Array.isArray(result)) return readValue(name, result);
  const rows = (result as unknown[]).map((row) => (Array.isArray(row) ? (row as unknown[]) : [row]));
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  if (width === 0) return notAValue(name);
  return rows.map((row) =>
    Array.from({ length: width }, (_, i) => (i < row.length ? readValue(name, row[i]) : '')),
  );
}

function readValue(name: string, value: unknown): HostValue {
  if (typeof value === 'boolean') return value;
  if (typeof value === 'string') return value.length <= longestText ? value : notAValue(name);
  if (typeof value === 'number') return Number.isFinite(value) ? value : notAValue(name);
  return readThrown(value) ?? notAValue(name);
}

/** The cell error that a thrown or returned error object stands for; undefined when it is none. */
export function readThrown(thrown: unknown): HostError | undefined {
  if (typeof thrown !== 'object' || thrown === null) return undefined;
  const { code, basicValue, message } = thrown as Record<string, unknown>;
  const error = typeof code === 'string' && code.startsWith('#') ? code : basicValue;
  if (typeof error !== 'string' || !error.startsWith('#')) return undefined;
  return typeof message === 'string' && message !== '' ? { error, message } : { error };
}
