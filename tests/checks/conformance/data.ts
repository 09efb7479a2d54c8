import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { StoredValue } from '../../../src/sheet/cellValue.js';
import { buildWorkbook, formula, type BuiltSheet, type RawCell } from '../../xlsx/support/buildWorkbook.js';

/*
 * The sheet under the conformance table, the formulas over it, and the values that a headless desktop
 * spreadsheet computed for them (values.tsv, made by tests/referee).
 */

type Row = (string | number | boolean | null)[];

const head: Row = ['Mark', 'Qty', 'Length', 'Price', 'Section', 'Date', 'Flag', 'Note', null, 'From', 'Rate'];
const base: Row[] = [
  ['A1', 4, 1250, 12.345, 'PL', 46000, true, 'hold for drawing', null, 0, 1],
  ['A2', 7, 2400.5, 3.1, 'FL', 46031, false, null, null, 1000, 0.95],
  ['A3', 1, 300, 99.99, 'PL', 46060, true, 'hot dip', null, 3000, 0.9],
  ['A4', 12, 5999, 0.285, 'C', 46100, true, null, null, 5000, 0.85],
  ['A5', 3, 780, 45.5, 'L', 46101, false, 'hold', null, 8000, 0.8],
  ['0012', 5, 1000, 7.25, 'FL', 46150, true, null, null, 12000, 0.75],
  ['1e3', 2, 3100, 18, 'PL', 46151, true, 'site weld'],
  ['B1', 8, 64.25, 2.675, 'FL', 46200, false, null],
  ['B2', 9, 4500, 150.1, 'C', 46201, true, null],
  ['B3', 6, 910, 33.33, 'L', 46230, true, 'paint'],
  ['B4', 4, 2750, 8.05, 'PL', 46260, false, null],
  ['B5', 10, 333.3, 61, 'FL', 46290, true, 'last'],
];

/** What a user changes for the second column of values. */
export const changes: { cell: string; value: StoredValue }[] = [
  { cell: 'B2', value: 6 },
  { cell: 'B3', value: 2 },
  { cell: 'C2', value: 1333.35 },
  { cell: 'D5', value: 1.005 },
  { cell: 'E4', value: 'FLAT' },
  { cell: 'A5', value: 'Z9' },
  { cell: 'H3', value: 'new' },
  { cell: 'F2', value: 46012 },
];

const folder = import.meta.dirname;

export interface ConformanceCase {
  formula: string;
  /** What the referee computes in its place. */
  referee: string;
}

/** The formulas of the table, in order. */
export function conformanceCases(): ConformanceCase[] {
  return readFileSync(path.join(folder, 'formulas.txt'), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => {
      const [own = '', referee = own] = line.split(' => ');
      return { formula: own, referee };
    });
}

export interface RefereedCase {
  formula: string;
  value: StoredValue;
  /** After {@link changes}. */
  changed: StoredValue;
}

export const valuesFile = path.join(folder, 'values.tsv');

/** The table with the referee's values. */
export function refereedCases(): RefereedCase[] {
  return readFileSync(valuesFile, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => {
      const [text = '', value = 'null', changed = 'null'] = line.split('\t');
      return {
        formula: text,
        value: JSON.parse(value) as StoredValue,
        changed: JSON.parse(changed) as StoredValue,
      };
    });
}

const prefixed =
  /(?<![A-Z.])(IFS|SWITCH|CONCAT|TEXTJOIN|MAXIFS|MINIFS|IFNA|STDEV\.[SP]|VAR\.[SP]|XOR|DAYS|CEILING\.MATH|FLOOR\.MATH|XLOOKUP|AGGREGATE)\(/g;

/** A formula as files store it. */
export const storedFormula = (text: string) => text.replace(prefixed, '_xlfn.$1(');

const withChanges = (rows: Row[]): Row[] => {
  const copy = rows.map((row) => [...row]);
  for (const { cell, value } of changes) {
    const column = cell.charCodeAt(0) - 65;
    (copy[Number(cell.slice(1)) - 1] as Row)[column] = value as string | number;
  }
  return copy;
};

type CachedValue = string | number | boolean;

/** The workbook: data in A to K, a formula in column N of each row, with or without its value. */
export function conformanceSheet(formulas: string[], values?: StoredValue[], changed = false): BuiltSheet {
  const rows: (Row[number] | RawCell | undefined)[][] = changed
    ? withChanges([head, ...base])
    : [head, ...base].map((row) => [...row]);
  formulas.forEach((text, i) => {
    const row = (rows[i] ??= []);
    while (row.length < 13) row.push(undefined);
    const value = values?.[i];
    const cached = typeof value === 'object' && value !== null ? value.error : (value ?? undefined);
    row[13] = formula(storedFormula(text), cached as CachedValue | undefined);
  });
  return { name: 'Data', rows: rows.map((row) => row.map((cell) => cell ?? undefined)) };
}

export const conformanceWorkbook = (...args: Parameters<typeof conformanceSheet>) =>
  buildWorkbook([conformanceSheet(...args)]);
