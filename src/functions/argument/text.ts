import { refuse } from '../../core/inputError.js';
import { type CellValue, isBlank, plainText } from '../../core/quantity/cellValue.js';
import type { HostRows } from '../descriptor/hostValue.js';
import type { ListArgument, MatrixArgument, ScalarArgument } from './argument.js';

/** A name or other text that must be given. */
export function textArgument(meaning: string, example: string): ScalarArgument<string> {
  return {
    kind: 'text',
    meaning,
    dimensionality: 'scalar',
    optional: false,
    read: (value, { argument }) =>
      isBlank(value)
        ? refuse(argument, '', 'the cell is blank.', `Write ${example}.`)
        : plainText(String(value)),
  };
}

/** A range with its headings. */
export function rangeArgument(meaning: string): MatrixArgument<CellValue[][]> {
  return { ...range(meaning), read: (cells, { argument }) => givenRange(cells, argument) };
}

/** A long list with its headings, whose rows are read one by one. */
export function listArgument(meaning: string): ListArgument<HostRows> {
  return { ...range(meaning), rows: 'as given', read: (rows, { argument }) => givenRange(rows, argument) };
}

const range = (meaning: string) =>
  ({ kind: 'range', meaning, dimensionality: 'matrix', optional: false }) as const;

const givenRange = <Rows extends HostRows>(rows: Rows | null, argument: string): Rows =>
  rows === null || rows.length === 0
    ? refuse(argument, '', 'no range was given.', 'Give the whole table with its headings.')
    : rows;

/** A range that may be left out; a single blank cell counts as left out. */
export function optionalRangeArgument(
  meaning: string,
  omitted: string,
): MatrixArgument<CellValue[][] | undefined> {
  return {
    kind: 'range',
    meaning,
    dimensionality: 'matrix',
    optional: true,
    omitted,
    read: (cells) => {
      const single = cells?.length === 1 && cells[0]?.length === 1;
      return cells === null || cells.length === 0 || (single && isBlank(cells[0]?.[0])) ? undefined : cells;
    },
  };
}
