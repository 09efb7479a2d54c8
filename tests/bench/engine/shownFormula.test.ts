import '../support/engineOnNode.js';
import * as engine from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { CellPosition, Model, stores as Stores } from '@odoo/o-spreadsheet';
import { expect, it } from 'vitest';
import type { GridBook } from '../../../src/bench/book/gridBook.js';
import { openBook } from '../../../src/bench/open/openBook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import { buildWorkbook, formula } from '../../xlsx/support/buildWorkbook.js';
import { cell, functions } from '../support/openExample.js';

const { CellComposerStore, DependencyContainer, ModelStore } = (
  engine as unknown as { stores: typeof Stores }
).stores;

const bytes = buildWorkbook([
  { name: 'Calc', rows: [[3, formula('IF(NOW()>1,"say ""x""",A1)', 'say "x"'), formula('A1*2', 6)]] },
]);

/** The line that formulas are edited in. */
function composerOf(book: GridBook) {
  const container = new DependencyContainer();
  container.inject(ModelStore as never, book.model as Model as never);
  return container.get(CellComposerStore as never) as {
    currentContent: string;
    startEdition(): void;
    stopEdition(): void;
    setCurrentContent(text: string): void;
  };
}

const select = (book: GridBook, { col, row }: CellPosition) => book.model.selection.selectCell(col, row);

it('a formula that keeps its value is edited as it stands in the file', () => {
  const open = openBook(bytes, functions);
  const { book } = open;
  const [kept, plain] = [cell(book, 'Calc', 'B1'), cell(book, 'Calc', 'C1')];
  const composer = composerOf(book);
  select(book, kept);
  expect(composer.currentContent).toBe('=IF(NOW()>1,"say ""x""",A1)');
  composer.startEdition();
  composer.stopEdition();
  expect(book.isKept(kept)).toBe(true);
  expect(saveBook(open).bytes).toEqual(bytes);
  select(book, plain);
  expect(composer.currentContent).toBe('=A1*2');
  expect(book.getters.getCellText(kept, { showFormula: true })).toBe('=IF(NOW()>1,"say ""x""",A1)');
  expect(book.getters.getCellText(plain, { showFormula: true })).toBe('=A1*2');
  expect(book.getters.getCellText(kept)).toBe('say "x"');
});

it('what it is changed to is the formula from then on', () => {
  const { book } = openBook(bytes, functions);
  const kept = cell(book, 'Calc', 'B1');
  const composer = composerOf(book);
  select(book, kept);
  composer.startEdition();
  composer.setCurrentContent('=IF(A1>1,"say ""x""",A1)&"!"');
  composer.stopEdition();
  expect(book.isKept(kept)).toBe(false);
  expect(book.formula(kept)).toBe('=IF(A1>1,"say ""x""",A1)&"!"');
  expect(book.value(kept)).toBe('say "x"!');
});
