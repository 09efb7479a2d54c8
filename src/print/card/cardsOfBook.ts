import type { Card } from '../../core/card/cardOf.js';
import { InputError } from '../../core/inputError.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { type Headings, readHeadings } from '../../core/row/headings/readHeadings.js';
import { nameKey } from '../../core/shop/table.js';
import { readShop, type Shop } from '../../core/shop/readShop.js';
import { type ShopRange, shopRanges } from '../../core/shop/shopFormula.js';
import { cardOfRow, type CardChoice, chosenCards } from './cardRows.js';
import type { Job } from './cardHtml.js';
import { cardsPage } from './cardsPage.js';

type Cells = readonly (readonly CellValue[])[];

/** What cards need of a workbook file. */
export interface CardBook {
  /** The formula of the cell named ShopStamp, with its equals sign. */
  stampFormula: string | undefined;
  /** The cells of a range that the formula names: a table with its headings; undefined where it is not there. */
  cells(range: ShopRange): Cells | undefined;
  /** The tables, each with its headings first. */
  tables: readonly { name: string; cells: Cells }[];
}

/** The cards of a workbook as a page; or the sentence that says why there are none. */
export type BookCards =
  | { page: string; cards: number; withoutSteps: string[]; leftOut: string[] }
  | { problem: string };

export function cardsOfBook(book: CardBook, choice: CardChoice, job: Job): BookCards {
  const read = readBookShop(book);
  if ('problem' in read) return read;
  const { shop, own } = read;
  if (
    choice.press !== undefined &&
    !shop.presses.some(({ name }) => nameKey(name) === nameKey(choice.press ?? ''))
  )
    return {
      problem: `The shop has no press '${choice.press}': it has ${shop.presses.map(({ name }) => name).join(', ')}.`,
    };
  const lists = book.tables.filter(({ name }) => !own.has(nameKey(name)));
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
  };
}

function cardsOfList([names = [], ...rows]: Cells, shop: Shop): Card[] {
  const headings = headingsOf(names);
  return headings ? rows.flatMap((row) => cardOfRow(row, headings, shop) ?? []) : [];
}

/** The headings of a parts list; undefined for another table. */
function headingsOf(names: readonly CellValue[]): Headings | undefined {
  return refused(
    () => readHeadings(names),
    () => undefined,
  );
}

function readBookShop(book: CardBook): { shop: Shop; own: Set<string> } | { problem: string } {
  const { stampFormula } = book;
  if (stampFormula === undefined)
    return { problem: 'The workbook has no cell named ShopStamp with a SHOP formula: add the shop sheet.' };
  return refused(
    () => {
      const ranges = shopRanges(stampFormula);
      const missing = ranges.find((range) => range && !book.cells(range));
      if (missing)
        return { problem: `The SHOP formula names ${nameOf(missing)}, which is not in the workbook.` };
      const [presses, tools, grades, settings] = ranges.map((range) => range && book.cells(range));
      const own = ranges.flatMap((range) => (range?.kind === 'table' ? [nameKey(range.name)] : []));
      return { shop: readShop({ presses: presses ?? [], tools, grades, settings }), own: new Set(own) };
    },
    (problem) => ({ problem }),
  );
}

function refused<Result, Other>(read: () => Result, say: (problem: string) => Other): Result | Other {
  try {
    return read();
  } catch (error) {
    if (error instanceof InputError) return say(error.message);
    throw error;
  }
}

function nameOf(range: ShopRange): string {
  return range.kind === 'cells' ? range.address : range.name;
}
