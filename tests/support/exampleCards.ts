import { readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../../scripts/ensure.mjs';
import { bookOfFile } from '../../src/headless/book/bookOfFile.js';
import { openGrids } from '../../src/headless/recalculate/sheetGrid.js';
import type { CardChoice } from '../../src/print/card/cardRows.js';
import { cardsOfBook } from '../../src/print/card/cardsOfBook.js';
import type { Book } from '../../src/print/shopOfBook.js';
import { workbookScope } from '../../src/sheet/formula/scope.js';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { nodeCodec } from '../../src/headless/files/nodeCodec.js';

export const exampleJob = { name: 'quote.xlsx', date: 'November 29, 2026' };

/** The example as it is stored: its values are calculated when it is built. */
export function exampleBook(): Book {
  const bytes = new Uint8Array(readFileSync(path.join(root, 'examples/quote.xlsx')));
  const workbook = openWorkbook(bytes, nodeCodec);
  return bookOfFile({
    workbook,
    scope: workbookScope(workbook, 'TONROW', new Set()),
    grids: openGrids(workbook),
  });
}

/** The cards of the example. */
export function exampleCards(choice: CardChoice = {}) {
  const made = cardsOfBook(exampleBook(), choice, exampleJob);
  if ('problem' in made) throw new Error(made.problem);
  return made;
}
