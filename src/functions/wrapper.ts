import { InputError } from '../core/inputError.js';
import type { CellValue } from '../core/quantity/cellValue.js';
import { Working } from '../core/working/working.js';
import { argumentLabel } from './argument/argument.js';
import {
  type CallContext,
  type Descriptor,
  type Later,
  type Result,
  type WorkedCall,
  whenThere,
} from './descriptor/descriptor.js';
import type { HostInput } from './descriptor/hostValue.js';
import { inShopUnit } from '../core/quantity/shopUnit.js';
import { type PlanInWorker, PlannerFailed, PlanStopped } from '../planner/planQueue.js';
import { CallCanceled, cancellation } from './cancellation.js';
import { describe, type Described, readArguments, shopOf } from './readArguments.js';
import type { ColdStart } from './shop/coldStart.js';
import { ShopNotRegistered, type ShopRegistry } from './shop/registry.js';

/** The two errors that show a message in the sheet. */
export type SheetErrorCode = '#VALUE!' | '#N/A';
export type SheetResult = number | string | CellValue[][];

/** What the wrapper needs of the runtime it lives in. */
export interface Runtime {
  /** Every function, for the one that shows another's working. */
  catalog: readonly Descriptor[];
  shops: ShopRegistry;
  coldStart: ColdStart;
  plan: PlanInWorker;
  /** Lets everything else in the runtime have its turn, where a page waits for that. */
  giveWay?: () => Promise<void>;
  /** The host's own error object; not every host derives it from Error. */
  error(code: SheetErrorCode, message: string): unknown;
}

/** A workbook function as the host calls it: reads, computes, converts, checks, and maps every failure. */
export function wrap(descriptor: Descriptor, runtime: Runtime) {
  const described = describe(descriptor);
  return (...inputs: HostInput[]): Later<SheetResult> => {
    const signal = descriptor.isCancelable ? cancellation(inputs) : undefined;
    const failed = (error: unknown): never => {
      throw sheetError(error, descriptor, runtime);
    };
    const answer = () => call(described, inputs, runtime, { signal });
    try {
      const result = answer();
      return result instanceof Promise ? result.catch(failed) : result;
    } catch (error) {
      if (!(error instanceof ShopNotRegistered)) return failed(error);
      return runtime.coldStart.await(error.hash).then(answer).catch(failed);
    }
  };
}

/** What a call is made with besides its arguments. */
interface Around {
  working?: Working;
  /** Tells that nobody wants the result any more. */
  signal?: AbortSignal | undefined;
}

function call(
  described: Described,
  inputs: readonly HostInput[],
  runtime: Runtime,
  { working, signal }: Around,
): Later<SheetResult> {
  const { descriptor } = described;
  const { unit, shop } = shopOf(described, inputs, runtime.shops);
  const values = readArguments(described, inputs, { unit, shop });
  const context: CallContext = {
    unit,
    register: (read) => runtime.shops.register(read),
    workingOf: (name, given) => workingOf(name, given, runtime, signal),
    plan: (problem) => runtime.plan(problem, { signal }),
    turns: { giveWay: runtime.giveWay, signal },
  };
  return whenThere(descriptor.compute(values, context, working), (result) => {
    const kind = descriptor.result;
    const converts = typeof result === 'number' && kind !== 'cells' && kind !== 'text';
    return scanned(converts ? inShopUnit(result, kind, unit) : result, descriptor.name);
  });
}

const shopIsNewer =
  'The shop this cell was given is not known here yet: press Ctrl+Alt+F9, or enter the cell ShopStamp again (F2, then Enter).';

/** The steps of a call for a pane in the same runtime. Throws an error with one sentence where the call is refused. */
export function workingForPane(
  name: string,
  inputs: readonly HostInput[],
  runtime: Runtime,
): Later<WorkedCall> {
  try {
    return workingOf(name, inputs, runtime);
  } catch (error) {
    throw error instanceof ShopNotRegistered ? new Error(shopIsNewer) : error;
  }
}

/** What a pane shows of a function: its purpose, and its arguments as users see them. */
export interface FunctionHelp {
  purpose: string;
  arguments: readonly { label: string; omitted?: string }[];
}

export function helpForPane(name: string, { catalog }: Runtime): FunctionHelp | undefined {
  const descriptor = catalog.find((each) => each.name === name);
  if (!descriptor) return undefined;
  const given = Object.entries(descriptor.arguments).map(([key, { omitted }]) => ({
    label: argumentLabel(key),
    ...(omitted === undefined ? {} : { omitted }),
  }));
  return { purpose: descriptor.purpose, arguments: given };
}

/** Runs another function for its steps: the same code with the same arguments, not a second implementation. */
function workingOf(
  name: string,
  inputs: readonly HostInput[],
  runtime: Runtime,
  signal?: AbortSignal,
): Later<WorkedCall> {
  const descriptor = runtime.catalog.find((each) => each.name === name);
  if (!descriptor) throw new Error(`There is no function TONROW.${name}: look at its spelling.`);
  const working = new Working();
  const described = describe(descriptor);
  const { unit } = shopOf(described, inputs, runtime.shops);
  return whenThere(call(described, inputs, runtime, { working, signal }), () => ({
    steps: working.steps,
    unit,
  }));
}

/** Every failure as an error the sheet shows with one sentence. */
function sheetError(error: unknown, descriptor: Descriptor, runtime: Runtime): unknown {
  if (error instanceof InputError) {
    return runtime.error(error.failure.code === 'unknown' ? '#N/A' : '#VALUE!', error.message);
  }
  if (error instanceof ShopNotRegistered) {
    return runtime.error('#N/A', shopIsNewer);
  }
  if (error instanceof PlanStopped || error instanceof CallCanceled)
    return runtime.error('#N/A', error.message);
  if (error instanceof PlannerFailed) return runtime.error('#N/A', plannerIsMissing(error.message));
  const reason = error instanceof Error ? error.message : String(error);
  return runtime.error(
    '#VALUE!',
    `${descriptor.name} failed (${reason}). This is a fault of Tonrow: please report it.`,
  );
}

const plannerIsMissing = (reason: string) =>
  `The planner did not run (${reason}): press Ctrl+Alt+F9 to try again, or ask whoever hosts the add-in.`;

/** The result as the host may have it: finite numbers and text; nothing a host would turn into a zero. */
function scanned(result: Result, name: string): Result {
  const isSound = Array.isArray(result)
    ? result.length > 0 && result.every((row) => row.length > 0 && row.every(isShown))
    : isShown(result);
  if (isSound) return result;
  throw new Error(`${name} gave a value that is no number and no text`);
}

const isShown = (value: unknown) =>
  typeof value === 'number'
    ? Number.isFinite(value)
    : typeof value === 'string' || typeof value === 'boolean';
