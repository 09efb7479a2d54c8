import { InputError, refuse } from '../core/inputError.js';
import type { CellValue } from '../core/quantity/cellValue.js';
import { type Argument, argumentLabel, type ReadContext, type ScalarArgument } from './argument/argument.js';
import { readShopReference, type ShopReference } from './argument/shop.js';
import type { Descriptor } from './descriptor/descriptor.js';
import {
  ErrorCell,
  type HostInput,
  hostRows,
  type HostValue,
  plainMatrix,
  plainValue,
} from './descriptor/hostValue.js';
import type { ShopRegistry } from './shop/registry.js';

/** A function with what is the same for all its calls. */
export interface Described {
  descriptor: Descriptor;
  arguments: readonly { name: string; label: string; argument: Argument<unknown> }[];
  /** Where its shop stands among its arguments; -1 where it has none. */
  shopAt: number;
}

export function describe(descriptor: Descriptor): Described {
  const list = Object.entries(descriptor.arguments).map(([name, argument]) => ({
    name,
    label: argumentLabel(name),
    argument,
  }));
  const shopAt = list.findIndex(({ argument: { kind } }) => kind === 'shop' || kind === 'shop or unit');
  return { descriptor, arguments: list, shopAt };
}

/** The values of a call's arguments by name, each read in the unit of the shop it names. */
export function readArguments(
  described: Described,
  inputs: readonly HostInput[],
  { unit, shop }: ShopReference,
): Record<string, unknown> {
  const grades = shop?.grades ?? [];
  const read = described.arguments.map(({ name, label, argument }, position): [string, unknown] => [
    name,
    readArgument(argument, inputs[position], { argument: label, unit, shop, grades }),
  ]);
  return Object.fromEntries(read);
}

/** The shop a call names. A function that needs one refuses a mere unit before it reads anything in that unit. */
export function shopOf(
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
