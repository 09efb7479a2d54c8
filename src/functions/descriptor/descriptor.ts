import type { CellValue } from '../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { StockPlan } from '../../core/stock/stockPlan.js';
import type { StockProblem } from '../../core/stock/stockProblem.js';
import type { Step, Working } from '../../core/working/working.js';
import type { Argument } from '../argument/argument.js';
import type { Turns } from '../turns.js';
import type { HostInput } from './hostValue.js';
import type { ResultKind } from './result.js';

// Arguments of many value types stand in one record; only `define` knows each one's type.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type Arguments = Readonly<Record<string, Argument<any>>>;
export type Values<Given extends Arguments> = {
  [Name in keyof Given]: Given[Name] extends Argument<infer Value> ? Value : never;
};

/** What a calculation may use besides its arguments. */
export interface CallContext {
  unit: LengthUnit;
  register(shop: Shop): void;
  /** The steps of another function's call with these arguments. */
  workingOf(name: string, inputs: readonly HostInput[]): Later<WorkedCall>;
  /** Plans bars, elsewhere; the work ends when the host cancels the call and nobody else waits for it. */
  plan(problem: StockProblem): Promise<StockPlan>;
  /** For work that takes long. */
  turns: Turns;
}

/** A value that is there, or comes later. */
export type Later<Value> = Value | Promise<Value>;

/** What follows from a value, at once where it is there. */
export function whenThere<Value, Next>(
  value: Later<Value>,
  next: (value: Value) => Later<Next>,
): Later<Next> {
  return value instanceof Promise ? value.then(next) : next(value);
}

/** The steps of a call, and the unit of the shop it named. */
export interface WorkedCall {
  steps: readonly Step[];
  unit: LengthUnit;
}

/** A number in the core's unit, text, or cells that spill. */
export type Result = number | string | CellValue[][];

/** The only place that describes a workbook function. */
export interface Descriptor<Given extends Arguments = Arguments> {
  /** Upper case, without the namespace. */
  name: string;
  /** What it gives, in one sentence of at most 128 characters. */
  purpose: string;
  /** In order of position; new ones only at the end. */
  arguments: Given;
  result: ResultKind;
  /** What the result means, with its units. */
  gives: string;
  /** When it refuses, beyond arguments that cannot be read. */
  errors: string;
  source: string;
  /** A formula that runs. */
  example: string;
  /** Whether the host tells when nobody wants the result any more: of what may take long. */
  isCancelable?: true;
  compute(values: Values<Given>, context: CallContext, working?: Working): Later<Result>;
}

/** Checks a descriptor's types and hands it on with them forgotten, so that all fit one list. */
export function define<Given extends Arguments>(descriptor: Descriptor<Given>): Descriptor {
  return descriptor as unknown as Descriptor;
}
