import vm from 'node:vm';
import type { BlankForm } from './hostCall.js';
import type { FunctionMetadata, FunctionsMetadata } from './metadata.js';

/*
 * The built functions outside a host: their script is run with the few objects that the host gives it.
 */

export type CustomFunction = (...args: unknown[]) => unknown;

export interface LoadedFunction {
  metadata: FunctionMetadata;
  call: CustomFunction;
}

/** The functions of a built bundle, by upper-case name. */
export interface LoadedFunctions {
  /** What stands before the dot in formulas: TONROW. */
  namespace: string;
  allowErrors: boolean;
  /** How blank cells are handed to the functions; as null where not said. */
  blank?: BlankForm;
  byName: Map<string, LoadedFunction>;
}

class CustomFunctionError extends Error {
  readonly code: string;

  constructor(code: string, message?: string) {
    super(message ?? '');
    this.code = code;
  }
}

const ErrorCode = {
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  divisionByZero: '#DIV/0!',
  invalidNumber: '#NUM!',
  nullReference: '#NULL!',
  invalidName: '#NAME?',
  invalidReference: '#REF!',
};

/** Runs the built bundle as the host's runtime would and keeps the functions it associates. */
export function loadFunctions(
  bundle: string,
  metadata: FunctionsMetadata,
  namespace = 'TONROW',
): LoadedFunctions {
  const associated = new Map<string, CustomFunction>();
  const associate = (id: string | Record<string, CustomFunction>, call?: CustomFunction) => {
    if (typeof id !== 'string') Object.entries(id).forEach(([name, one]) => associate(name, one));
    else if (call) associated.set(id.toUpperCase(), call);
  };
  const host = globalThis as { CustomFunctions?: unknown };
  host.CustomFunctions = { Error: CustomFunctionError, ErrorCode, associate };
  vm.runInThisContext(bundle, { filename: 'functions.js' });
  const byName = new Map<string, LoadedFunction>();
  for (const one of metadata.functions) {
    const call = associated.get(one.id.toUpperCase());
    if (!call) throw new Error(`The functions bundle does not associate ${one.id}.`);
    byName.set(one.name.toUpperCase(), { metadata: one, call });
  }
  return { namespace, allowErrors: metadata.allowErrorForDataTypeAny ?? false, byName };
}
