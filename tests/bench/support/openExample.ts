import './engineOnNode.js';
import { readFileSync } from 'node:fs';
import type { CellPosition } from '@odoo/o-spreadsheet';
import type { GridBook } from '../../../src/bench/book/gridBook.js';
import { registerFunctions } from '../../../src/bench/engine/registerFunctions.js';
import { openBook, type OpenBook } from '../../../src/bench/open/openBook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import { loadFunctions } from '../../../src/headless/functions/loadFunctions.js';
import { parseZone } from '../../../src/sheet/address.js';
import { bundle, metadata } from '../../contract/support/built.js';

const root = new URL('../../../', import.meta.url);

export const functions = loadFunctions(bundle, metadata);
registerFunctions(functions, new Map(), () => undefined);

export const exampleBytes = (): Uint8Array =>
  new Uint8Array(readFileSync(new URL('examples/quote.xlsx', root)));

/** The example quote as the page opens it. */
export const openExample = (): OpenBook => openBook(exampleBytes(), functions);

let saved: Uint8Array | undefined;

/** The example quote as the page saves it when nothing was changed: it is opened for that once. */
export const savedExample = (): Uint8Array => (saved ??= saveBook(openExample()).bytes);

/** A cell by its address, as the grid names it. */
export function cell(book: GridBook, sheet: string, address: string): CellPosition {
  const zone = parseZone(address);
  const sheetId = book.sheetIdOf(sheet);
  if (!zone || sheetId === undefined) throw new Error(`there is no ${sheet}!${address}`);
  return { sheetId, row: zone.top, col: zone.left };
}
