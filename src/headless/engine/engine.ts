import { refuseUncertain, refuseUncertainResult } from './refuseUncertain.js';
import { correctedFunctions } from './correctedFunctions.js';
import { readEngineArguments } from './arguments.js';
import { workOfCall } from './callWork.js';
import type { EngineDefinition, EngineFunction } from './engineFunction.js';
import type { Work } from './work.js';
import {
  CannotCompute,
  checkArraySize,
  errorCodes,
  isMatrix,
  longestText,
  OurError,
  type Operand,
  type Scalar,
} from './values.js';

type Compute = (this: unknown, ...args: (Operand | undefined)[]) => Operand;

interface Registry {
  content: Record<string, EngineFunction>;
  mapping: Record<string, Compute>;
  replace(name: string, definition: EngineDefinition): void;
}

interface EngineModule {
  registries: { functionRegistry: Registry; errorTypes: Set<string> };
  DEFAULT_LOCALE: unknown;
}

/** Caches of one state of the cells, keyed by the ranges searched. */
export interface SearchCaches {
  forwardSearch: Map<unknown, unknown>;
  reverseSearch: Map<unknown, unknown>;
}

export const newSearchCaches = (): SearchCaches => ({ forwardSearch: new Map(), reverseSearch: new Map() });

const codes: Record<string, string> = { '#ERROR': '#VALUE!', '#REF': '#REF!' };

/** The functions of the spreadsheet engine, called one by one over our own cells. */
export class Engine {
  private readonly registry: Registry;
  private readonly context: Record<string, unknown>;

  constructor(module: EngineModule) {
    this.registry = module.registries.functionRegistry;
    for (const code of errorCodes) module.registries.errorTypes.add(code);
    for (const [name, definition] of Object.entries(correctedFunctions))
      this.registry.replace(name, definition);
    this.context = Object.assign(Object.create(this.registry.mapping) as object, {
      locale: module.DEFAULT_LOCALE,
    });
  }

  /** The description of a function, undefined when the engine lacks it. */
  describe(name: string): EngineFunction | undefined {
    return Object.hasOwn(this.registry.content, name) ? this.registry.content[name] : undefined;
  }

  /** Calls a function; errors are values. */
  call(name: string, args: (Operand | undefined)[], caches: SearchCaches, work: Work): Operand {
    const description = this.describe(name);
    const compute = this.registry.mapping[name];
    if (!description || !compute) throw new CannotCompute(`It uses ${name}, which is not evaluated here.`);
    if (args.length < description.minArgRequired || args.length > description.maxArgPossible) {
      throw new CannotCompute(`It calls ${name} with a number of arguments that is not evaluated here.`);
    }
    checkSizes(args);
    work.spend(workOfCall(name, args, description));
    refuseUncertain(name, args);
    this.context['lookupCaches'] = caches;
    const speak = silenceErrors();
    try {
      // The arguments of a call are those written in a formula, 10,000 at most.
      // eslint-disable-next-line no-restricted-syntax
      const result = readResult(name, compute.apply(this.context, readEngineArguments(description, args)));
      refuseUncertainResult(name, args, result);
      return result;
    } catch (error) {
      if (error instanceof CannotCompute) throw error;
      throw new CannotCompute(`${name} cannot be evaluated here with these arguments.`);
    } finally {
      speak();
    }
  }
}

/** The engine pairs lines with columns without a limit of its own. */
function checkSizes(args: (Operand | undefined)[]): void {
  const arrays = args.filter(isMatrix);
  const most = (sizes: number[]) => sizes.reduce((known, size) => Math.max(known, size), 1);
  checkArraySize(
    most(arrays.map((array) => array.length)),
    most(arrays.map((array) => array[0]?.length ?? 1)),
  );
}

/** The engine prints what goes wrong inside it; here that only means a cell keeps its value. */
function silenceErrors(): () => void {
  const original = console.error;
  console.error = () => undefined;
  return () => (console.error = original);
}

function readResult(name: string, result: Operand): Operand {
  if (!isMatrix(result)) return readScalar(name, result);
  if (result.length === 0 || result[0]?.length === 0)
    throw new CannotCompute(`${name} gives an empty array.`);
  return result.map((column) => Array.from(column, (scalar) => readScalar(name, scalar)));
}

function readScalar(name: string, scalar: Scalar | undefined): Scalar {
  const value = scalar?.value ?? null;
  if (typeof value === 'number' && !Number.isFinite(value)) return { value: '#NUM!' };
  if (typeof value !== 'string') return scalar ?? { value: null };
  if (value.length > longestText) return { value: '#VALUE!' };
  if (!value.startsWith('#')) return scalar as Scalar;
  const unexpected = String(scalar?.message ?? '').startsWith('An unexpected error');
  if (value === '#BAD_EXPR' || value === '#CYCLE' || (value === '#ERROR' && unexpected)) {
    throw new CannotCompute(`${name} cannot be evaluated here with these arguments.`);
  }
  // The engine's own messages speak of its own functions and types: the code says enough.
  if (scalar instanceof OurError || !(codes[value] || errorCodes.has(value))) return scalar as Scalar;
  return { value: codes[value] ?? value };
}

/** The engine is large: it is loaded when a formula is met that calls a native function. */
export class NativeFunctions {
  private loaded: Engine | undefined;

  async loadFor(formulas: Iterable<{ functions: ReadonlySet<string> }>): Promise<void> {
    if (this.loaded) return;
    for (const { functions } of formulas) {
      if (functions.size === 0) continue;
      this.loaded = await loadEngine();
      return;
    }
  }

  get engine(): Engine {
    if (!this.loaded) throw new Error('A native function is called before the engine is loaded.');
    return this.loaded;
  }
}

async function loadEngine(): Promise<Engine> {
  const original = console.debug;
  console.debug = () => undefined;
  try {
    return new Engine((await import('@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js')) as EngineModule);
  } finally {
    console.debug = original;
  }
}
