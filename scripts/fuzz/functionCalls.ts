import type { LoadedFunction, LoadedFunctions } from '../../src/headless/index.js';
import { type FuzzKind, thrown } from './kind.js';
import type { Random } from './random.js';
import { fuzzCell, type FuzzCell } from './values.js';

/** Bars are planned elsewhere, for as long as a plan takes. */
const slow = /^STOCK/;

/** Calls of our functions as a host makes them, with arguments of all kinds. */
export function functionCalls(functions: LoadedFunctions, texts: readonly string[], stamp: string): FuzzKind {
  const names = [...functions.byName.keys()].filter((name) => !slow.test(name));
  return {
    name: 'functions',
    async call(random, keep) {
      const name = random.pick(names);
      const known = functions.byName.get(name) as LoadedFunction;
      const values = [...texts, stamp];
      const args = known.metadata.parameters
        .slice(0, random.chance(0.9) ? undefined : random.below(known.metadata.parameters.length + 1))
        .map(({ dimensionality, repeating }) => {
          const value = () =>
            dimensionality === 'matrix' ? fuzzRange(random, values) : fuzzCell(random, values);
          return repeating ? random.times(4, value) : value();
        });
      keep([name, args]);
      return await tried(name, known, args);
    },
  };
}

function fuzzRange(random: Random, values: readonly string[]): FuzzCell[][] {
  const width = 1 + random.below(4);
  return Array.from({ length: 1 + random.below(5) }, () =>
    Array.from({ length: width }, () => fuzzCell(random, values)),
  );
}

const patienceMs = 20_000;

/** Calls one function; says what is wrong with what comes of it. */
export async function tried(
  name: string,
  { call }: LoadedFunction,
  args: unknown[],
): Promise<string | undefined> {
  let result: unknown;
  try {
    result = call(...args, { address: 'Sheet1!A1' });
    // A call that waits for a shop nobody has is told so after a while.
    if (result instanceof Promise) result = await withPatience(result);
  } catch (error) {
    result = undefined;
    const { code, message } = error as { code?: unknown; message?: unknown };
    if (typeof code !== 'string' || !/^#(?:VALUE!|N\/A)$/.test(code)) return thrown(error);
    if (typeof message !== 'string' || !/^\S[\s\S]*[.?!:]$/.test(message))
      return `says no sentence: ${String(message)}`;
    if (message.includes('fault of Tonrow')) return message;
  }
  const cells: unknown[] = Array.isArray(result) ? (result as unknown[][]).flat() : [result];
  const odd = cells.find((cell) => !isShown(cell));
  return odd === undefined ? undefined : `${name} gives ${String(odd)}`;
}

async function withPatience(result: Promise<unknown>): Promise<unknown> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<undefined>(
    (resolve) => (timer = setTimeout(() => resolve(undefined), patienceMs)),
  );
  try {
    return await Promise.race([result, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** What a cell can show; a cell of an array may also hold an error. */
function isShown(cell: unknown): boolean {
  if (typeof cell === 'number') return Number.isFinite(cell);
  if (typeof cell === 'string') return cell.length <= 32_767;
  return (
    cell === undefined ||
    typeof cell === 'boolean' ||
    (typeof cell === 'object' && cell !== null && 'code' in cell)
  );
}
