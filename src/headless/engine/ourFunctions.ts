import {
  isHostError,
  parameterAt,
  prepareCall,
  type HostArgument,
  type HostValue,
} from '../functions/hostCall.js';
import { readResult, readThrown, type HostResult } from '../functions/hostResult.js';
import type { LoadedFunction, LoadedFunctions } from '../functions/scriptHost.js';
import {
  checkArraySize,
  failure,
  isErrorCode,
  isMatrix,
  OurError,
  topLeft,
  Waiting,
  type Matrix,
  type Operand,
  type Scalar,
} from './values.js';

/** Steps for a call. */
const perCall = 100;

/** How long a result that comes later may take; plans of bars wait for each other. */
const patienceMs = 60_000;
const longPatienceMs = 1_200_000;

/** Calls our functions from formulas, as the host does; results that come later are awaited between passes. */
export class OurFunctions {
  private readonly later = new Map<string, HostResult | undefined>();
  private readonly answersLater = new Set<string>();
  private readonly pending = new Set<Promise<void>>();

  constructor(private readonly loaded: LoadedFunctions) {}

  /** One of our functions by its name in formulas, `TONROW.PUNCHFORCE`. */
  find(name: string): LoadedFunction | undefined {
    const prefix = `${this.loaded.namespace}.`;
    return name.startsWith(prefix) ? this.loaded.byName.get(name.slice(prefix.length)) : undefined;
  }

  takesRange(one: LoadedFunction, position: number): boolean {
    return parameterAt(one.metadata, position)?.dimensionality === 'matrix';
  }

  /** Waits for every result still to come; false when there was none. */
  async settle(): Promise<boolean> {
    if (this.pending.size === 0) return false;
    await Promise.all(this.pending);
    return true;
  }

  /** The steps a call takes: what is passed, once for each value of an array that stands where one value belongs. */
  workOfCall(one: LoadedFunction, operands: (Operand | undefined)[]): number {
    let [times, passed] = [1, 0];
    operands.forEach((operand, i) => {
      if (!isMatrix(operand)) return;
      const size = operand.length * (operand[0]?.length ?? 0);
      if (this.takesRange(one, i)) passed += size;
      else times = Math.max(times, size);
    });
    return times * (perCall + passed);
  }

  /** The value of a call. A range given where one value is wanted gives an array, value by value. */
  call(one: LoadedFunction, operands: (Operand | undefined)[]): Operand {
    const lengths = operands.map((operand, i) =>
      isMatrix(operand) && !this.takesRange(one, i)
        ? { columns: operand.length, rows: operand[0]?.length ?? 0 }
        : undefined,
    );
    let [columns, rows] = [1, 1];
    for (const size of lengths) {
      columns = Math.max(columns, size?.columns ?? 1);
      rows = Math.max(rows, size?.rows ?? 1);
    }
    if (columns === 1 && rows === 1) return this.once(one, operands);
    checkArraySize(columns, rows);
    return Array.from({ length: columns }, (_, column) =>
      Array.from({ length: rows }, (__, row) => {
        const args = operands.map((operand, i) =>
          lengths[i] ? element(operand as Matrix, column, row) : operand,
        );
        return topLeft(this.once(one, args));
      }),
    );
  }

  private once(one: LoadedFunction, operands: (Operand | undefined)[]): Operand {
    const given = operands.map((operand, i) => toHost(operand, this.takesRange(one, i)));
    const { blank = null, allowErrors } = this.loaded;
    const prepared = prepareCall(one.metadata, given, { blank, allowErrors });
    if (isHostError(prepared)) return fromHost(prepared);
    const { name } = one.metadata;
    const key = this.answersLater.has(name) ? name + JSON.stringify(prepared.arguments) : '';
    if (key && this.later.has(key)) return this.answered(key);
    let result: unknown;
    try {
      result = one.call(...prepared.arguments, { functionName: name });
    } catch (error) {
      return fromHost(thrown(name, error));
    }
    if (!isPromise(result)) return fromHost(readResult(name, result));
    this.answersLater.add(name);
    return this.await(one, key || name + JSON.stringify(prepared.arguments), result);
  }

  private answered(key: string): Operand {
    const result = this.later.get(key);
    if (result === undefined) throw new Waiting();
    return fromHost(result);
  }

  private await({ metadata }: LoadedFunction, key: string, promise: PromiseLike<unknown>): never {
    const { name, options } = metadata;
    const limit = options?.['cancelable'] === true ? longPatienceMs : patienceMs;
    this.later.set(key, undefined);
    const settled = inTime(name, promise, limit).then(
      (result) => this.later.set(key, readResult(name, result)),
      (error: unknown) => this.later.set(key, thrown(name, error)),
    );
    const done: Promise<void> = settled.then(() => {
      this.pending.delete(done);
    });
    this.pending.add(done);
    throw new Waiting();
  }
}

function inTime(name: string, promise: PromiseLike<unknown>, limitMs: number): Promise<unknown> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise((_, reject) => {
    timer = setTimeout(
      () => reject({ code: '#N/A', message: `${name} did not answer within ${limitMs / 60_000} min.` }),
      limitMs,
    );
  });
  return Promise.race([promise, late]).finally(() => clearTimeout(timer));
}

const isPromise = (value: unknown): value is PromiseLike<unknown> =>
  typeof value === 'object' && value !== null && 'then' in value && typeof value.then === 'function';

/** A thrown error that carries no code is a fault of ours: it is said, not hidden. */
const thrown = (name: string, error: unknown) =>
  readThrown(error) ?? {
    error: '#VALUE!',
    message: `${name} failed: ${error instanceof Error ? error.message : String(error)}`,
  };

function element(matrix: Matrix, column: number, row: number): Scalar {
  const line = matrix[matrix.length === 1 ? 0 : column];
  return line?.[line.length === 1 ? 0 : row] ?? failure('#N/A');
}

const hostValue = ({ value, message }: Scalar): HostValue => {
  if (!isErrorCode(value)) return value;
  return message === undefined ? { error: value } : { error: value, message };
};

function toHost(operand: Operand | undefined, asRange: boolean): HostArgument {
  if (operand === undefined) return undefined;
  if (!isMatrix(operand)) return hostValue(operand);
  if (!asRange) return hostValue(topLeft(operand));
  const height = operand[0]?.length ?? 0;
  return Array.from({ length: height }, (_, row) =>
    operand.map((column) => hostValue(column[row] as Scalar)),
  );
}

function fromHost(result: HostResult): Operand {
  if (!Array.isArray(result)) return fromHostValue(result);
  const width = result[0]?.length ?? 0;
  return Array.from({ length: width }, (_, column) =>
    result.map((row) => fromHostValue(row[column] as HostValue)),
  );
}

function fromHostValue(value: HostValue): Scalar {
  if (!isHostError(value)) return { value };
  return value.message === undefined ? { value: value.error } : new OurError(value.error, value.message);
}
