import { readFileSync } from 'node:fs';
import path from 'node:path';
import { stampPlace } from '../../src/headless/book/bookOfFile.js';
import {
  builtFunctions,
  type LoadedFunctions,
  readSheetValues,
  recalculateWorkbook,
} from '../../src/headless/index.js';
import { copyCalls } from './copyCalls.js';
import { formulaCalls } from './formulaCalls.js';
import { functionCalls } from './functionCalls.js';
import type { FuzzKind } from './kind.js';
import { packageCalls } from './packageCalls.js';
import { rowCalls } from './rowCalls.js';
import { smallWorkbooks } from './smallWorkbooks.js';
import type { FuzzCell } from './values.js';

/** Calls of each kind, over the example's shop and list. */
export async function fuzzKinds(root: string): Promise<FuzzKind[]> {
  const functions = await builtFunctions(path.join(root, 'dist'));
  const example = new Uint8Array(readFileSync(path.join(root, 'examples/quote.xlsx')));
  const cells = readSheetValues(example, 'Quote').map((row) =>
    row.map((cell): FuzzCell => (typeof cell === 'object' ? null : cell)),
  );
  const top = cells.findIndex((row) => row.includes('Mark') && row.includes('Section'));
  const titles = (cells[top] ?? []).map(String);
  const [from, to] = [titles.indexOf('Mark'), titles.indexOf('Drawing')];
  const list = {
    headings: titles.slice(from, to),
    rows: cells
      .slice(top + 1)
      .map((row) => Array.from({ length: to - from }, (_, at) => row[from + at] ?? null))
      .filter((row) => row[titles.indexOf('Section') - from] !== null),
  };
  const stamp = await exampleStamp(functions, example);
  const texts = [...new Set(cells.flat().filter((cell) => typeof cell === 'string'))].filter(
    (text) => text.length < 40,
  );
  return [
    functionCalls(functions, texts, stamp),
    rowCalls(functions, list, stamp),
    // The example takes a hundred times as long.
    packageCalls(functions, [...Array.from({ length: 12 }, smallWorkbooks).flat(), example]),
    await formulaCalls(functions),
    copyCalls(),
  ];
}

/** Recalculating the example lets the functions know its shop. */
async function exampleStamp(functions: LoadedFunctions, example: Uint8Array): Promise<string> {
  const { calculated } = await recalculateWorkbook(example, functions);
  const place = stampPlace(calculated.scope);
  return String(place && calculated.grids[place.sheet]?.value(place.zone.top, place.zone.left));
}
