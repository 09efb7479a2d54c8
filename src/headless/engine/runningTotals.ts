import type { Zone } from '../../sheet/address.js';
import { zoneSeen } from '../../sheet/formula/moves.js';
import type { Node } from '../../sheet/formula/nodes.js';
import type { Setting } from './setting.js';
import { failure, isErrorCode, type Operand, type Scalar, type Values } from './values.js';
import type { Work } from './work.js';

/*
 * Running totals, `SUM(A$1:A5)` down a column: what was added up to a row is kept, so that each total reads only the rows
 * that none before it has read. Cells are added one by one in the engine's own order, row by row, so that a total has the
 * same bits as one that starts at the first row.
 */

interface Total {
  /** The total of no cells. */
  start: number;
  add(total: number, value: Scalar['value']): number;
  /** The first error among the cells is the result. */
  givesErrorsOn: boolean;
}

const ofNumbers = (start: number, add: (total: number, number: number) => number): Total => ({
  start,
  add: (total, value) => (typeof value === 'number' ? add(total, value) : total),
  givesErrorsOn: true,
});

const totals: Readonly<Record<string, Total>> = {
  SUM: ofNumbers(0, (total, number) => total + number),
  MAX: ofNumbers(-Infinity, (most, number) => (number >= most ? number : most)),
  MIN: ofNumbers(Infinity, (least, number) => (number <= least ? number : least)),
  COUNT: {
    start: 0,
    add: (count, value) => (typeof value === 'number' ? count + 1 : count),
    givesErrorsOn: false,
  },
  COUNTA: { start: 0, add: (count, value) => (value === null ? count : count + 1), givesErrorsOn: false },
};

/** What is known of the totals that start at one row. */
interface Known {
  /** The total down to each row from there. */
  downTo: number[];
  /** The first error, and how many rows stand above it. */
  error?: { scalar: Scalar; above: number };
}

/** Steps of a call, as of any call of a native function. */
const perCall = 20;
/** Totals kept, of all ranges together. */
const mostTotals = 6_000_000;

/** Totals over one state of the cells. */
export class RunningTotals {
  private readonly known = new Map<string, Known>();
  private kept = 0;

  constructor(
    private readonly values: Values,
    private readonly work: Work,
  ) {}

  /** The value of a call that is a running total; undefined for any other call. */
  call(name: string, args: readonly Node[], { away }: Setting): Operand | undefined {
    const [reference] = args;
    const total = Object.hasOwn(totals, name) ? totals[name] : undefined;
    if (!total || args.length !== 1 || reference?.kind !== 'reference') return undefined;
    if (!reference.moves?.bottom || reference.moves.top) return undefined;
    this.work.spend(perCall);
    return this.total(name, total, reference.sheet, zoneSeen(reference, away));
  }

  private total(name: string, total: Total, sheet: number, zone: Zone): Scalar {
    const known = this.knownOf(`${name}:${sheet}:${zone.top}:${zone.left}:${zone.right}`);
    const rows = zone.bottom - zone.top + 1;
    if (rows > known.downTo.length) this.goOn(known, total, sheet, zone);
    if (known.error && known.error.above < rows) return known.error.scalar;
    const result = known.downTo[rows - 1] as number;
    // No number was there to be the largest or the least.
    if (result === total.start) return { value: 0 };
    return Number.isFinite(result) ? { value: result } : failure('#NUM!');
  }

  private knownOf(key: string): Known {
    if (this.kept > mostTotals) {
      this.known.clear();
      this.kept = 0;
    }
    const known = this.known.get(key) ?? { downTo: [] };
    this.known.set(key, known);
    return known;
  }

  /** Adds the rows that were not read before. */
  private goOn(known: Known, total: Total, sheet: number, zone: Zone): void {
    const { downTo } = known;
    const above = downTo.length;
    const columns = this.values.range(sheet, { ...zone, top: zone.top + above });
    const height = columns[0]?.length ?? 0;
    let result = downTo.at(-1) ?? total.start;
    for (let row = 0; row < height; row++) {
      for (const column of columns) {
        const scalar = column[row] as Scalar;
        if (total.givesErrorsOn && isErrorCode(scalar.value)) known.error ??= { scalar, above: above + row };
        else result = total.add(result, scalar.value);
      }
      downTo.push(result);
    }
    // A whole column was read to where its cells end.
    while (downTo.length < zone.bottom - zone.top + 1) downTo.push(result);
    this.kept += downTo.length - above;
  }
}
