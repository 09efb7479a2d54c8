import type { BlankForm } from './hostCall.js';
import type { FunctionMetadata, FunctionsMetadata } from './metadata.js';

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
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message ?? '');
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

/** What the functions' own script finds in a spreadsheet host: made before it runs, it keeps what the script associates. */
export class ScriptHost {
  private readonly associated = new Map<string, CustomFunction>();

  constructor() {
    const associate = (id: string | Record<string, CustomFunction>, call?: CustomFunction) => {
      if (typeof id !== 'string') Object.entries(id).forEach(([name, one]) => associate(name, one));
      else if (call) this.associated.set(id.toUpperCase(), call);
    };
    Object.assign(globalThis, { CustomFunctions: { Error: CustomFunctionError, ErrorCode, associate } });
  }

  /** The functions that the metadata describe. */
  functions(metadata: FunctionsMetadata, namespace = 'TONROW'): LoadedFunctions {
    const byName = new Map<string, LoadedFunction>();
    for (const one of metadata.functions) {
      const call = this.associated.get(one.id.toUpperCase());
      if (!call) throw new Error(`The functions bundle does not associate ${one.id}.`);
      byName.set(one.name.toUpperCase(), { metadata: one, call });
    }
    return { namespace, allowErrors: metadata.allowErrorForDataTypeAny ?? false, byName };
  }
}
