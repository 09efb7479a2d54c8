import { registries as untyped } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type * as Engine from '@odoo/o-spreadsheet';
import { correctedFunctions } from '../../headless/engine/correctedFunctions.js';
import type { EngineDefinition } from '../../headless/engine/engineFunction.js';
import { OurFunctions } from '../../headless/engine/ourFunctions.js';
import {
  CannotCompute,
  errorCodes,
  failure,
  isMatrix,
  Waiting,
  type Operand,
  type Scalar,
} from '../../headless/engine/values.js';
import type { LoadedFunction, LoadedFunctions } from '../../headless/functions/scriptHost.js';
import type { FunctionMetadata, ParameterMetadata } from '../../headless/functions/metadata.js';
import { plainCode } from './errors.js';
import { keptDescription, keptFunction } from './keptFormula.js';
import { RememberedCalls } from './rememberedCalls.js';

/*
 * What the grid's engine is taught: our functions, and the ordinary ones where it differs from spreadsheet
 * programs.
 */

const registries = untyped as typeof Engine.registries;

/** The choices of an argument, from the functions' description. */
export type Choices = ReadonlyMap<string, readonly { value: string; label: string }[]>;

type Definition = Parameters<typeof registries.functionRegistry.replace>[1];
type Compute = (...args: (Operand | undefined)[]) => Operand;

/** Gives the engine our functions, described by their descriptors, and the ordinary ones as spreadsheets have them. */
export function registerFunctions(
  loaded: LoadedFunctions,
  choices: Choices,
  answered: () => void,
): OurFunctions {
  for (const code of errorCodes) registries.errorTypes.add(code);
  for (const [name, definition] of Object.entries(correctedFunctions))
    registries.functionRegistry.replace(name, guarded(definition));
  registries.functionRegistry.replace(keptFunction, keptDescription as unknown as Definition);
  const functions = new OurFunctions(loaded);
  const calls = new RememberedCalls(functions);
  for (const one of loaded.byName.values()) {
    registries.functionRegistry.replace(
      `${loaded.namespace}.${one.metadata.name.toUpperCase()}`,
      describe(one.metadata, loaded.namespace, choices, computeOf(one, functions, calls, answered)),
    );
  }
  return functions;
}

function describe(
  metadata: FunctionMetadata,
  namespace: string,
  choices: Choices,
  compute: Compute,
): Definition {
  return {
    description: metadata.description ?? metadata.name,
    category: namespace,
    args: metadata.parameters.map((parameter) => describeArgument(parameter, choices)),
    compute: compute as unknown as Definition['compute'],
  };
}

function describeArgument(parameter: ParameterMetadata, choices: Choices): Definition['args'][number] {
  const { name, description = name, dimensionality, optional = false, repeating = false } = parameter;
  const matrix = dimensionality === 'matrix';
  const proposals = choices.get((parameter as { customEnumId?: string }).customEnumId ?? '');
  return {
    name,
    description,
    type: matrix ? ['RANGE<ANY>'] : ['ANY'],
    acceptErrors: true,
    acceptMatrix: matrix,
    optional,
    repeating,
    ...(proposals && {
      proposalValues: proposals.map(({ value, label }) => ({ value: `"${value}"`, label })),
    }),
  };
}

function computeOf(
  one: LoadedFunction,
  functions: OurFunctions,
  calls: RememberedCalls,
  answered: () => void,
): Compute {
  return (...args) => {
    try {
      return calls.call(one, args.map(plainOperand));
    } catch (error) {
      if (error instanceof CannotCompute) return { value: '#VALUE!', message: error.message };
      if (!(error instanceof Waiting)) throw error;
      void functions.settle().then(answered);
      return { value: '#GETTING_DATA', message: 'The answer comes in a moment.' };
    }
  };
}

/** Error codes as spreadsheets write them: our functions know no others. */
function plainOperand(operand: Operand | undefined): Operand | undefined {
  if (operand === undefined) return undefined;
  return isMatrix(operand) ? operand.map((column) => column.map(plainScalar)) : plainScalar(operand);
}

function plainScalar(scalar: Scalar): Scalar {
  const value = plainCode(scalar.value);
  return value === scalar.value ? scalar : { ...scalar, value };
}

/** What a formula cannot do here is an error with its sentence. */
function guarded(definition: EngineDefinition): Definition {
  const compute: Compute = (...args) => {
    try {
      return definition.compute(...args);
    } catch (error) {
      if (error instanceof CannotCompute) return { ...failure('#VALUE!'), message: error.message };
      throw error;
    }
  };
  return { ...definition, compute } as unknown as Definition;
}
