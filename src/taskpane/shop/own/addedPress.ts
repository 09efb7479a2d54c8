import type { Workbook } from '../../../workbook/port.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import type { Making } from '../../shared/change/proposal.js';
import { listWords } from '../../../core/say/listWords.js';
import { shortText } from '../../shared/shortText.js';
import type { ShopTable } from '../../shared/shopState.js';
import { inventedPresses, replaceInvented } from '../sheet/replaceInvented.js';
import { appendColumn } from '../sheet/tableCells.js';

interface Added {
  table: ShopTable;
  name: string;
  cells: readonly CellValue[];
  /** Whether the invented presses go. */
  isReplacing: boolean;
  written: () => void;
}

/** The change that adds a press to the table, in the place of the invented ones where those go. */
export function addedPress(workbook: Workbook, { table, name, cells, isReplacing, written }: Added): Making {
  const title = `Add press ${shortText(name)}`;
  const gone = isReplacing ? inventedPresses(table) : [];
  return {
    title,
    make: async () => {
      const steps =
        gone.length > 0
          ? await replaceInvented(workbook, table, name, cells)
          : await appendColumn(workbook, table, name, cells);
      if (typeof steps === 'string') return steps;
      const names = listWords(gone.map((each) => shortText(each, 30)));
      const remarks = [
        `The invented ${gone.length === 1 ? `press ${names} goes` : `presses ${names} go`}. Rows of a list that name one keep the name and will find no such press.`,
      ];
      return { title, steps, written, ...(gone.length > 0 ? { remarks } : {}) };
    },
  };
}
