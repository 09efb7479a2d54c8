import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { cardsPage } from '../../../src/print/card/cardsPage.js';
import { type PaneChoice, paneCards } from '../../../src/taskpane/handOff/cards/paneCards.js';
import { readShopState } from '../../../src/taskpane/shared/readShopState.js';
import { hostileMark, listRow, parts, quoteBook } from '../steps/quoteBook.js';

async function made(choice: PaneChoice, book = quoteBook()) {
  const state = await readShopState(book);
  if (state.kind !== 'ready') throw new Error('no shop');
  const { cards, leftOut, told } = await paneCards(book, state, choice, {});
  const job = { name: 'quote.xlsx', date: 'November 29, 2026' };
  const { document } = new JSDOM(cardsPage(cards, state.shop, job)).window;
  const marksOf = (of: typeof cards) => of.map(({ head }) => head.mark);
  return { document, marks: marksOf(cards), left: marksOf(leftOut), told };
}

const select = (row: number, rows = 1) => {
  const book = quoteBook();
  void book.goTo({ sheet: 'Quote', row, column: 0, rows, columns: 1 });
  return book;
};

describe('the cards of the pane', () => {
  it('are one a mark that can be made, the others named', async () => {
    const { document, marks, left, told } = await made({ is: 'made' });
    expect(document.querySelectorAll('.card')).toHaveLength(marks.length);
    expect([...marks, ...left].sort()).toEqual([hostileMark, 'A1', 'BP1', 'OK1']);
    expect(left).toEqual(['BP1', 'A1']);
    expect(told).toEqual([`Row ${listRow + 1 + parts.length} is taken as a total: no card.`]);
  });

  it('are those of one press', async () => {
    const { document } = await made({ is: 'press', press: 'Bay B' });
    const presses = [...document.querySelectorAll('.facts')].map((facts) => facts.textContent ?? '');
    for (const facts of presses) expect(facts).toContain('Bay B');
  });

  it('are those of the selected rows, with reasons where a row cannot be made', async () => {
    const { document, marks } = await made({ is: 'selected' }, select(listRow + 1, 2));
    expect(marks).toHaveLength(2);
    expect(document.querySelectorAll('.card')).toHaveLength(2);
    expect(document.querySelectorAll('.reasons').length).toBeGreaterThan(0);
  });

  it('say what to do where no row of a list is selected', async () => {
    await expect(made({ is: 'selected' }, select(0))).rejects.toThrow(
      'No row of a parts list is selected: select cells of the rows, then make the cards.',
    );
  });

  it('hold text of the workbook as text', async () => {
    const { document, marks } = await made({ is: 'selected' }, select(listRow + 1, 4));
    expect(marks).toContain(hostileMark);
    expect(document.querySelectorAll('script, img, a')).toHaveLength(0);
    expect(document.body.textContent).toContain(hostileMark);
  });
});
