import { cellKey, MAX_COLUMNS } from '../../../sheet/address.js';
import type { Worksheet } from '../../../xlsx/storedCells.js';
import { scanWorksheet } from '../../../xlsx/worksheet.js';
import type { GivenLook } from '../../open/openBook.js';
import type { OpenedFormula } from '../../open/workbookData.js';
import { movedSheet } from './movedSheet.js';
import { hasMoved, movedZone, type SheetMove } from '../headers/sheetMoves.js';

/** The cells of a sheet of the file, and what the grid was given for them. */
export interface FileCells {
  file: Worksheet;
  formulas: readonly OpenedFormula[];
  looks: ReadonlyMap<number, GivenLook>;
}

const nothing = { strings: [], date1904: false, dynamicMetadata: new Set<string>() };

/** The same where rows and columns are now. */
export function movedCells(cells: FileCells, move: SheetMove, adapt: (formula: string) => string): FileCells {
  if (!hasMoved(move)) return cells;
  const { file, formulas, looks } = cells;
  const moved = scanWorksheet(movedSheet(file.xml, move, adapt), nothing);
  const place = (row: number, column: number): number | undefined => {
    const [r, c] = [move.rows.place(row), move.columns.place(column)];
    return r === undefined || c === undefined ? undefined : cellKey(r, c);
  };
  file.values.forEach((value, i) => {
    const key = place(file.rows[i] as number, file.columns[i] as number);
    const at = key === undefined ? undefined : moved.index.get(key);
    // Texts are kept in a list of their own, which only the first reading had.
    if (at !== undefined) moved.values[at] = value;
  });
  return {
    file: moved,
    formulas: formulas.flatMap((formula) => movedOpened(formula, move)),
    looks: new Map(
      [...looks].flatMap(([key, look]) => {
        const at = place(Math.floor(key / MAX_COLUMNS), key % MAX_COLUMNS);
        return at === undefined ? [] : [[at, look] as const];
      }),
    ),
  };
}

function movedOpened(formula: OpenedFormula, move: SheetMove): OpenedFormula[] {
  const { stored } = formula;
  const [row, column] = [move.rows.place(formula.row), move.columns.place(formula.column)];
  if (row === undefined || column === undefined) return [];
  const ref = stored.ref && movedZone(stored.ref, move);
  const others = { ...stored };
  delete others.ref;
  return [
    {
      ...formula,
      row,
      column,
      stored: {
        ...others,
        ...(ref && { ref }),
        baseRow: move.rows.place(stored.baseRow) ?? -1,
        baseColumn: move.columns.place(stored.baseColumn) ?? -1,
      },
    },
  ];
}
