import { InputError, refuse } from '../core/inputError.js';
import type { CellValue } from '../core/quantity/cellValue.js';
import { Working } from '../core/working/working.js';
import { type Argument, argumentLabel, type ReadContext, type ScalarArgument } from './argument/argument.js';
import { readShopReference, type ShopReference } from './argument/shop.js';
import {
  type CallContext,
  type Descriptor,
  type Later,
  type Result,
  type WorkedCall,
  whenThere,
} from './descriptor/descriptor.js';
import {
  ErrorCell,
  type HostInput,
  type HostValue,
  hostRows,
  plainMatrix,
  plainValue,
} from './descriptor/hostValue.js';
import { inShopUnit } from '../core/quantity/shopUnit.js';
import { type PlanInWorker, PlannerFailed, PlanStopped } from '../planner/planQueue.js';
import { CallCanceled, cancellation } from './cancellation.js';
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

/** A function with what is the same for all its calls. */
interface Described {
  descriptor: Descriptor;
  arguments: readonly { name: string; label: string; argument: Argument<unknown> }[];
  /** Where its shop stands among its arguments; -1 where it has none. */
  shopAt: number;
}

function describe(descriptor: Descriptor): Described {
  const list = Object.entries(descriptor.arguments).map(([name, argument]) => ({
    name,
    label: argumentLabel(name),
    argument,
  }));
  const shopAt = list.findIndex(({ argument: { kind } }) => kind === 'shop' || kind === 'shop or unit');
  return { descriptor, arguments: list, shopAt };
}

function call(
  described: Described,
  inputs: readonly HostInput[],
  runtime: Runtime,
  { working, signal }: Around,
): Later<SheetResult> {
  const { descriptor } = described;
  const { unit, shop } = shopOf(described, inputs, runtime.shops);
  const grades = shop?.grades ?? [];
  const values: Record<string, unknown> = {};
  for (const [position, { name, label, argument }] of described.arguments.entries())
    values[name] = readArgument(argument, inputs[position], { argument: label, unit, shop, grades });
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

/** The shop a call names. A function that needs one refuses a mere unit before it reads anything in that unit. */
function shopOf(
  { arguments: list, shopAt }: Described,
  inputs: readonly HostInput[],
  shops: ShopRegistry,
): ShopReference {
  const described = list[shopAt];
  if (!described) return noShop;
  const { label, argument } = described;
  const value = single(inputs[shopAt], label);
  const reference = readShopReference(value, label, shops, argument.kind === 'shop');
  if (argument.dimensionality === 'scalar')
    argument.read(value, { argument: label, ...reference, grades: [] });
  return reference;
}

const noShop: ShopReference = { unit: 'in', shop: undefined };

function readArgument(argument: Argument<unknown>, input: HostInput, context: ReadContext): unknown {
  if (argument.dimensionality === 'scalar') return readScalar(argument, input, context);
  const isOmitted = input === undefined || input === null;
  if ('rows' in argument) return argument.read(isOmitted ? null : hostRows(input), context);
  return argument.read(isOmitted ? null : plainMatrix(input), context);
}

/** A 0 is read as a blank cell; where that is refused, the sentence says so. */
function readScalar(argument: ScalarArgument<unknown>, input: HostInput, context: ReadContext): unknown {
  const value = single(input, context.argument);
  try {
    return argument.read(value, context);
  } catch (error) {
    if (value !== null || !(error instanceof InputError) || !isZero(input)) throw error;
    const { failure } = error;
    throw new InputError({
      ...failure,
      problem: failure.problem.replace('the cell is blank', '0 is read as a blank cell'),
    });
  }
}

function isZero(input: HostInput): boolean {
  return Array.isArray(input) ? isZero((input as readonly (readonly HostValue[])[])[0]?.[0]) : input === 0;
}

/** The one value of a scalar argument; a range of several cells and an error cell are refused. */
function single(input: HostInput, argument: string): CellValue {
  const rows = Array.isArray(input) ? (input as readonly (readonly HostValue[])[]) : undefined;
  const cells = rows ? rows.reduce((count, row) => count + row.length, 0) : 1;
  if (cells !== 1) {
    return refuse(argument, '', `a range of ${cells} cells was given.`, 'Give one cell.');
  }
  const value = plainValue(rows ? rows[0]?.[0] : (input as HostValue));
  if (value instanceof ErrorCell) {
    return refuse(
      argument,
      value.code,
      `the cell shows the error ${value.code}.`,
      'Correct that cell first.',
    );
  }
  return value;
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
