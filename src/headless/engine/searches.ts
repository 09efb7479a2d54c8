import { isMatrix, type Matrix, type Operand, type Scalar, single } from './values.js';

type Arguments = readonly (Operand | undefined)[];

/** What a call searches by size: a line of the table, and whether its numbers must rise (1), fall (-1) or neither (0). */
interface Search {
  line: 'all' | 'column' | 'row';
  direction: number;
}

/** What is known of the lines of a table, which many calls search. */
const sortedLines = new WeakMap<Matrix, Map<string, boolean>>();

/**
 * True for a search that takes the next value below or above where the values are not sorted numbers, or a number is not
 * sought: what it finds hangs on the way a program halves the list, and on how it compares text.
 */
export function isUnsureSearch(name: string, args: Arguments): boolean {
  const table = args[1];
  if (!isMatrix(table)) return false;
  const search = searchOf(name, args, table);
  if (!search) return false;
  return typeof single(args[0]).value !== 'number' || !isSorted(table, search);
}

function searchOf(name: string, args: Arguments, table: Matrix): Search | undefined {
  switch (name) {
    case 'MATCH':
      return bySize({ line: 'all', direction: kindOf(args[2]) });
    case 'VLOOKUP':
      return bySize({ line: 'column', direction: Math.abs(kindOf(args[3])) });
    case 'HLOOKUP':
      return bySize({ line: 'row', direction: Math.abs(kindOf(args[3])) });
    case 'LOOKUP':
      return { line: table.length > (table[0]?.length ?? 0) ? 'row' : 'column', direction: 1 };
    case 'XLOOKUP':
      return Math.abs(Number(single(args[4]).value)) === 1 ? { line: 'all', direction: 0 } : undefined;
    default:
      return undefined;
  }
}

const bySize = (search: Search) => (search.direction === 0 ? undefined : search);

/** The kind of search: 1 where it is left out. */
function kindOf(operand: Operand | undefined): number {
  return operand === undefined ? 1 : Math.sign(Number(single(operand).value));
}

function isSorted(table: Matrix, { line, direction }: Search): boolean {
  const known = sortedLines.get(table) ?? new Map<string, boolean>();
  sortedLines.set(table, known);
  const key = `${line} ${direction}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const sorted = areSorted(lineOf(table, line), direction);
  known.set(key, sorted);
  return sorted;
}

function lineOf(table: Matrix, line: Search['line']): Scalar[] {
  if (line === 'column') return table[0] ?? [];
  return line === 'row' ? table.flatMap(([first]) => first ?? []) : table.flat();
}

function areSorted(scalars: readonly Scalar[], direction: number): boolean {
  let before: number | undefined;
  for (const { value } of scalars) {
    if (value === null) continue;
    if (typeof value !== 'number') return false;
    if (before !== undefined && direction * (value - before) < 0) return false;
    before = value;
  }
  return true;
}
