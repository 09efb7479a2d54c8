import { InputError } from '../inputError.js';
import type { Finding } from '../press/finding.js';
import { type CellValue, isBlank } from '../quantity/cellValue.js';
import type { LengthKindName } from '../quantity/lengthKind.js';
import { readLength } from '../quantity/readLength.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Column } from './readHeadings.js';

/** Reads the cells of one row; what cannot be read becomes a finding, and the rest of the row is still read. */
export class RowReader {
  readonly problems: Finding[] = [];

  constructor(
    private readonly cells: readonly CellValue[],
    readonly unit: LengthUnit,
  ) {}

  cell(column: Column | undefined): CellValue {
    return column ? (this.cells[column.at] ?? null) : null;
  }

  /** The value of a filled cell; undefined where it is blank or cannot be read. */
  read<Value>(
    column: Column | undefined,
    reader: (value: CellValue, argument: string) => Value,
  ): Value | undefined {
    const value = this.cell(column);
    if (!column || isBlank(value)) return undefined;
    try {
      return reader(withColumnUnit(value, column, this.unit), column.heading);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      this.problem(column.heading, error.message);
      return undefined;
    }
  }

  length(column: Column | undefined, kind: LengthKindName): number | undefined {
    return this.read(column, (value, argument) => readLength(value, argument, this.unit, kind));
  }

  problem(governs: string, note: string): void {
    this.problems.push({ verdict: 'Check input', governs, note });
  }
}

/** Whether bare numbers of a column are in the shop's unit: the heading states none, or that one. */
export function isInShopUnit({ unit: stated }: Column, unit: LengthUnit): boolean {
  return stated === undefined || (unit === 'mm' ? stated === 'mm' : stated.startsWith('in'));
}

/** A bare number below a heading such as `Length (mm)` has that unit, whatever the shop's. */
function withColumnUnit(value: CellValue, column: Column, unit: LengthUnit): CellValue {
  return typeof value === 'number' && !isInShopUnit(column, unit) ? `${value} ${column.unit}` : value;
}
