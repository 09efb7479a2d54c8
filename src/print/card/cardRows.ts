import { type Card, cardOf } from '../../core/card/cardOf.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { checkedPart } from '../../core/row/checkRow.js';
import type { Headings } from '../../core/row/headings/readHeadings.js';
import { nameKey } from '../../core/shop/table.js';
import type { Shop } from '../../core/shop/readShop.js';
import { operatorSteps } from '../../core/work/operatorSteps.js';

/** The card of a row, from its cells; undefined for a blank row. */
export function cardOfRow(cells: readonly CellValue[], headings: Headings, shop: Shop): Card | undefined {
  const checked = checkedPart(cells, headings, shop);
  return cardOf(cells, headings, checked, operatorSteps(checked, shop), shop.unit);
}

/** Which rows get a card: those of a press, those of some marks; without marks only what can be made. */
export interface CardChoice {
  press?: string | undefined;
  marks?: readonly string[] | undefined;
}

export interface ChosenCards {
  cards: Card[];
  /** Rows of the choice that have no steps and were not asked for by their mark. */
  leftOut: Card[];
  /** Marks that no row has. */
  unknown: string[];
}

/** The cards of a choice, in the order of the rows. */
export function chosenCards(all: readonly Card[], { press, marks }: CardChoice): ChosenCards {
  const asked = marks && new Set(marks.map(nameKey));
  const chosen = all.filter(
    (card) =>
      (press === undefined || nameKey(card.press ?? null) === nameKey(press)) &&
      (!asked || asked.has(nameKey(card.head.mark))),
  );
  const isPrinted = (card: Card) => asked !== undefined || card.body.is === 'steps';
  const known = new Set(all.map(({ head }) => nameKey(head.mark)));
  return {
    cards: chosen.filter(isPrinted),
    leftOut: chosen.filter((card) => !isPrinted(card)),
    unknown: (marks ?? []).filter((mark) => !known.has(nameKey(mark))),
  };
}
