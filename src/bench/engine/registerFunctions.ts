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
import type { CallingCell, PostponedCalls } from './postponedCalls.js';
import { Postponed, RememberedCalls } from './rememberedCalls.js';

/*
 * What the grid's engine is taught: our functions, and the ordinary ones where it differs from spreadsheet
 * programs.
 */

const registries = untyped as typeof Engine.registries;

/** The choices of an argument, from the functions' description. */
export type Choices = ReadonlyMap<string, readonly { value: string; label: string }[]>;

type Definition = Parameters<typeof registries.functionRegistry.replace>[1];
type Compute = (this: Evaluating | void, ...args: (Operand | undefined)[]) => Operand;

/** What the engine tells a function of the cell it is called for. */
interface Evaluating {
  getters: Engine.Model['getters'];
  __originCellPosition?: Engine.CellPosition;
}

/**
 * Gives the engine our functions, described by their descriptors, and the ordinary ones as spreadsheets have them.
 * @param answered is told when results came later than their cells were calculated
 * @param postponed takes the calls that are too many for one task; without it all are made at once
 */
export function registerFunctions(
  loaded: LoadedFunctions,
  choices: Choices,
  answered: () => void,
  postponed?: PostponedCalls,
): OurFunctions {
  for (const code of errorCodes) registries.errorTypes.add(code);
  for (const [name, definition] of Object.entries(correctedFunctions))
    registries.functionRegistry.replace(name, guarded(definition));
  registries.functionRegistry.replace(keptFunction, keptDescription as unknown as Definition);
  const functions = new OurFunctions(loaded);
  const calls = new RememberedCalls(functions, postponed);
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
  return function (...args) {
    try {
      return calls.call(one, args.map(plainOperand), this ? callingCell(this) : undefined);
    } catch (error) {
      if (error instanceof CannotCompute) return { value: '#VALUE!', message: error.message };
      if (!(error instanceof Waiting)) throw error;
      if (!(error instanceof Postponed)) void functions.settle().then(answered);
      return { value: '#GETTING_DATA', message: 'The answer comes in a moment.' };
    }
  };
}

function callingCell({ getters, __originCellPosition: position }: Evaluating): CallingCell | undefined {
  const cell = position && getters.getCell(position);
  return cell && { ...position, id: cell.id };
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
