import { errorCodes } from '../../headless/engine/values.js';

/** What the engine's own error codes are elsewhere. */
const codes: Record<string, string> = {
  '#REF': '#REF!',
  '#ERROR': '#VALUE!',
  '#BAD_EXPR': '#NAME?',
  '#CYCLE': '#VALUE!',
};

/** The code of an error as spreadsheets write it; other values as they are. */
export function plainCode<Value>(value: Value): Value | string {
  return typeof value === 'string' ? (codes[value] ?? value) : value;
}

export const isError = (value: unknown): value is string =>
  typeof value === 'string' && errorCodes.has(value);
