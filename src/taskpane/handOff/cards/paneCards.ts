import type { Card } from '../../../core/card/cardOf.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import { otherRowsOf } from '../../../core/row/rowKind.js';
import { otherRowSentences } from '../../../core/say/otherRows.js';
import { toldByList } from '../../../core/say/toldByList.js';
import { cardOfRow, type ChosenCards, chosenCards } from '../../../print/card/cardRows.js';
import { overlap } from '../../../workbook/area.js';
import type { LongWork } from '../../../workbook/longWork.js';
import type { Workbook } from '../../../workbook/port.js';
import { WorkbookError } from '../../../workbook/workbookError.js';
import type { ShopState } from '../../shared/shopState.js';
import { type PartsList, partsLists } from '../../shared/partsLists.js';
import { ofEveryRow } from '../report/lists.js';

/** Which rows get a card: all that can be made, those of them on a press, or the selected ones. */
export type PaneChoice = { is: 'made' } | { is: 'press'; press: string } | { is: 'selected' };

/** The cards, and sentences about rows that are no parts where all rows are asked for. */
interface PaneCards extends ChosenCards {
  told: string[];
}

/** The cards of the lists of a workbook, with the shop as it is now. */
export async function paneCards(
  workbook: Workbook,
  state: Extract<ShopState, { kind: 'ready' }>,
  choice: PaneChoice,
  work: LongWork,
): Promise<PaneCards> {
  const lists = await partsLists(workbook, state, work.signal);
  const selected = choice.is === 'selected' ? await workbook.selection() : [];
  const isSelected = ({ area }: PartsList, row: number) =>
    selected.some((each) => overlap(each, { ...area, row, rows: 1 }));
  const cards = await ofEveryRow<Card>(
    lists,
    (list, cells, row) => {
      if (choice.is === 'selected' && !isSelected(list, row)) return [];
      const card = cardOfRow(cells, readHeadings(list.headings), state.shop);
      return card ? [card] : [];
    },
    work,
  );
  if (choice.is === 'selected' && cards.length === 0)
    throw new WorkbookError(
      'missing',
      'No row of a parts list is selected: select cells of the rows, then make the cards.',
    );
  if (choice.is === 'selected') return { cards, leftOut: [], unknown: [], told: [] };
  const told = toldByList(lists, ({ headings, values, area }) =>
    otherRowSentences(otherRowsOf(values, readHeadings(headings), area.row + 1), 'no card'),
  );
  return { ...chosenCards(cards, choice.is === 'press' ? { press: choice.press } : {}), told };
}
