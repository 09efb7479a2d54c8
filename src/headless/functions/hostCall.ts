import type { FunctionMetadata, ParameterMetadata } from './metadata.js';

/*
 * What stands between a formula and a custom function, as the spreadsheet host does it, driven by the
 * functions' metadata. Pure: it neither finds nor calls functions.
 */

/** A value in a cell or formula; blank is null. */
export type HostValue = number | string | boolean | null | HostError;

export interface HostError {
  error: string;
  message?: string;
}

/** An argument as the formula gives it: a value, rows of values, or nothing at all (undefined). */
export type HostArgument = HostValue | HostValue[][] | undefined;

/** Hosts differ: a blank cell arrives as null, as empty text, as 0, or as a data type of its own. */
export type BlankForm = null | '' | 0 | { type: 'Empty'; basicType: 'Empty'; basicValue: '' };

/** How a host passes blank cells and whether errors reach the function. */
export interface HostOptions {
  blank: BlankForm;
  /** From the metadata's `allowErrorForDataTypeAny`. */
  allowErrors: boolean;
}

/** What a call comes to before the function runs: arguments for it, or the error it never sees. */
export type PreparedCall = { arguments: unknown[] } | HostError;

export const isHostError = (value: unknown): value is HostError =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && 'error' in value;

const errorTypes: Record<string, string> = {
  '#VALUE!': 'Value',
  '#DIV/0!': 'Div0',
  '#N/A': 'NotAvailable',
  '#NUM!': 'Num',
  '#NULL!': 'Null',
  '#NAME?': 'Name',
  '#REF!': 'Ref',
};

/** An error as the runtime hands it to a function that accepts errors. */
export function errorArgument(code: string): Record<string, unknown> {
  return {
    type: 'Error',
    basicType: 'Error',
    basicValue: code,
    code,
    errorType: errorTypes[code] ?? 'Value',
  };
}

/** The parameter an argument belongs to; a repeating last parameter takes all that follow. */
export function parameterAt(metadata: FunctionMetadata, position: number): ParameterMetadata | undefined {
  const { parameters } = metadata;
  const last = parameters.at(-1);
  return parameters[position] ?? (last?.repeating ? last : undefined);
}

/**
 * Checks and converts the arguments of one call; ranges reach the function only where the parameter is
 * a matrix. A repeating parameter's arguments are passed together, as a list.
 */
export function prepareCall(
  metadata: FunctionMetadata,
  given: HostArgument[],
  options: HostOptions,
): PreparedCall {
  const { parameters } = metadata;
  if (given.length > parameters.length && !parameters.at(-1)?.repeating) {
    return { error: '#VALUE!', message: `${metadata.name} takes at most ${parameters.length} arguments.` };
  }
  const passed: unknown[] = [];
  for (const [i, parameter] of parameters.entries()) {
    const values = parameter.repeating ? given.slice(i) : [given[i]];
    const converted = values.map((value) => convertGiven(metadata, parameter, value, options));
    const failure = converted.find(isHostError);
    if (failure) return failure;
    passed.push(parameter.repeating ? converted : converted[0]);
  }
  return { arguments: passed };
}

function convertGiven(
  metadata: FunctionMetadata,
  parameter: ParameterMetadata,
  value: HostArgument,
  options: HostOptions,
): unknown {
  if (value !== undefined) return convert(parameter, value, options);
  if (parameter.optional || parameter.repeating) return null;
  return { error: '#VALUE!', message: `${metadata.name}: the argument ${parameter.name} is missing.` };
}

function convert(parameter: ParameterMetadata, value: HostArgument, options: HostOptions): unknown {
  if (parameter.dimensionality !== 'matrix') {
    return convertValue(parameter, Array.isArray(value) ? (value[0]?.[0] ?? null) : (value ?? null), options);
  }
  const rows = Array.isArray(value) ? value : [[value ?? null]];
  const out: unknown[][] = [];
  for (const row of rows) {
    const converted: unknown[] = [];
    for (const cell of row) {
      const one = convertValue(parameter, cell, options);
      if (isHostError(one)) return one;
      converted.push(one);
    }
    out.push(converted);
  }
  return out;
}

function convertValue(parameter: ParameterMetadata, value: HostValue, options: HostOptions): unknown {
  if (isHostError(value)) {
    return options.allowErrors && (parameter.type ?? 'any') === 'any' ? errorArgument(value.error) : value;
  }
  switch (parameter.type) {
    case 'number':
      return toNumber(value);
    case 'string':
      return value === null ? '' : typeof value === 'boolean' ? String(value).toUpperCase() : String(value);
    case 'boolean':
      return toBoolean(value);
    default:
      return value ?? options.blank;
  }
}

function toNumber(value: Exclude<HostValue, HostError>): number | HostError {
  if (typeof value === 'number') return value;
  if (value === null) return 0;
  if (typeof value === 'boolean') return value ? 1 : 0;
  const number = value.trim() === '' ? NaN : Number(value);
  return Number.isFinite(number) ? number : { error: '#VALUE!' };
}

function toBoolean(value: Exclude<HostValue, HostError>): boolean | HostError {
  if (typeof value !== 'string') return Boolean(value);
  if (/^(?:true|false)$/i.test(value)) return value.toLowerCase() === 'true';
  return { error: '#VALUE!' };
}
