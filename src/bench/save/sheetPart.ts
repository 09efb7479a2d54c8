import type { UID } from '@odoo/o-spreadsheet';
import { cellKey } from '../../sheet/address.js';
import type { Worksheet } from '../../xlsx/storedCells.js';
import { scanWorksheet } from '../../xlsx/worksheet.js';
import { patchSheet } from '../../xlsx/patchSheet.js';
import { sheetNow, type GivenSheet } from '../open/givenSheet.js';
import type { OpenBook } from '../open/openBook.js';
import { markCells } from './parts/cellMarks.js';
import { withHeaders } from './headers/headerChanges.js';
import { movedCells, type FileCells } from './references/movedCells.js';
import type { SheetMove } from './headers/sheetMoves.js';
import { withRuleRanges } from './sheet/ruleRanges.js';
import { withMerges } from './sheet/merges.js';
import { withTabColor } from './sheet/tabColor.js';
import { withUnselected, withView } from './sheet/sheetView.js';
import { sheetChanges, type SheetChanges } from './sheetChanges.js';
import type { AddedStyles } from './styles/addedStyles.js';
import { CellStyles } from './styles/cellStyles.js';

/** A sheet of the file; a new one has nothing that the grid was given. */
export interface FileSheet extends FileCells {
  given: GivenSheet | undefined;
  move: SheetMove | undefined;
  /** A formula of the file as it reads now, where the grid does not keep it. */
  adapt: (formula: string) => string;
}

const nothing = { strings: [], date1904: false, dynamicMetadata: new Set<string>() };
const newSheet = {
  frozen: { rows: 0, columns: 0 },
  gridLines: true,
  visible: true,
  color: undefined,
  rules: new Map(),
};

/** A sheet's part as the grid has the sheet now, and whether formulas went. */
export function sheetPart(
  { book, namespace, styles }: OpenBook,
  id: UID,
  sheet: FileSheet,
  added: AddedStyles,
  mark: string | undefined,
): { xml: string; formulasWent: boolean } {
  const { given, move, adapt } = sheet;
  const { file, formulas, looks } = move ? movedCells(sheet, move, adapt) : sheet;
  const changes = sheetChanges({
    book,
    sheetId: id,
    file,
    formulas: new Map(formulas.map((formula) => [cellKey(formula.row, formula.column), formula])),
    moved: file !== sheet.file,
    adapt,
    styles: new CellStyles({ book, styles }, file.xml, looks, added),
    namespace,
  });
  const now = sheetNow(book.model, id);
  const before = given ?? { rows: [], columns: [], ...newSheet };
  let xml = withChanges(file, changes, mark);
  xml = withHeaders(xml, now, given, move);
  if (given) xml = withRuleRanges(xml, now.rules, given.rules, move);
  xml = withMerges(xml, file.merged, book.getters.getMerges(id));
  xml = withView(xml, now, before);
  if ((now.color || undefined) !== (before.color || undefined)) xml = withTabColor(xml, now.color);
  if (before.visible && !now.visible) xml = withUnselected(xml);
  const formulasWent =
    changes.removed.length > 0 || changes.values.some(({ replacesFormula }) => replacesFormula);
  return { xml, formulasWent };
}

function withChanges(
  file: Worksheet,
  { removed, values, finishes }: SheetChanges,
  mark: string | undefined,
): string {
  const cleared = removed.length > 0 ? scanWorksheet(patchSheet(file, removed), nothing) : file;
  return markCells(patchSheet(cleared, values), [...finishes.values()], mark);
}
