import type { Card } from '../../core/card/cardOf.js';
import { otherRowsOf } from '../../core/row/rowKind.js';
import { otherRowSentences } from '../../core/say/otherRows.js';
import { toldByList } from '../../core/say/toldByList.js';
import { nameKey } from '../../core/shop/table.js';
import type { Shop } from '../../core/shop/readShop.js';
import { type Book, type BookTable, type Cells, headingsOf, readBookShop } from '../shopOfBook.js';
import { cardOfRow, type CardChoice, chosenCards } from './cardRows.js';
import type { Job } from './cardHtml.js';
import { cardsPage } from './cardsPage.js';

/** The cards of a workbook as a page, and sentences about rows that are no parts; or why there are no cards. */
export type BookCards =
  | { page: string; cards: number; withoutSteps: string[]; leftOut: string[]; told: string[] }
  | { problem: string };

export function cardsOfBook(book: Book, choice: CardChoice, job: Job): BookCards {
  const read = readBookShop(book);
  if ('problem' in read) return read;
  const { shop, lists } = read;
  if (
    choice.press !== undefined &&
    !shop.presses.some(({ name }) => nameKey(name) === nameKey(choice.press ?? ''))
  )
    return {
      problem: `The shop has no press '${choice.press}': it has ${shop.presses.map(({ name }) => name).join(', ')}.`,
    };
  const all = lists.flatMap(({ cells }) => cardsOfList(cells, shop));
  if (all.length === 0)
    return { problem: 'There is no list of parts: make the list a table, with a column Section.' };
  const { cards, leftOut, unknown } = chosenCards(all, choice);
  if (unknown.length > 0)
    return { problem: `No row has the mark ${unknown.map((mark) => `'${mark}'`).join(', ')}.` };
  if (cards.length === 0) return { problem: 'No row of these can be made as it stands: there is no card.' };
  const words = ({ head, verdict }: Card) => `${head.mark === '' ? 'no mark' : head.mark}  ${verdict}`;
  return {
    page: cardsPage(cards, shop, job),
    cards: cards.length,
    withoutSteps: cards.filter(({ body }) => body.is !== 'steps').map(words),
    leftOut: leftOut.map(words),
    told: choice.marks ? [] : otherRowsTold(lists),
  };
}

function otherRowsTold(tables: readonly BookTable[]): string[] {
  const lists = tables.flatMap(({ name, cells: [names = [], ...rows], headingRow = 0 }) => {
    const headings = headingsOf(names);
    return headings ? [{ name, headings, rows, first: headingRow + 1 }] : [];
  });
  return toldByList(lists, ({ headings, rows, first }) =>
    otherRowSentences(otherRowsOf(rows, headings, first), 'no card'),
  );
}

function cardsOfList([names = [], ...rows]: Cells, shop: Shop): Card[] {
  const headings = headingsOf(names);
  return headings ? rows.flatMap((row) => cardOfRow(row, headings, shop) ?? []) : [];
}
