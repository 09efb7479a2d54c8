import type { UID } from '@odoo/o-spreadsheet';
import { cellKey } from '../../sheet/address.js';
import { movedFormula } from '../../sheet/formula/movedFormula.js';
import { rangeOfName } from '../../sheet/formula/rangeOfName.js';
import { requestFullCalculation } from '../../xlsx/fullCalculation.js';
import { atOnce, type Pausing } from '../../xlsx/pausing.js';
import { PackageParts } from '../../xlsx/packageParts.js';
import { addListedSheet, listSheets } from '../../xlsx/sheetList.js';
import { scanWorksheet } from '../../xlsx/worksheet.js';
import { XmlElement } from '../../xlsx/xml/element.js';
import type { OpenBook } from '../open/openBook.js';
import { sheetId, stylesPart } from '../open/workbookData.js';
import { changeNames } from './definedNames.js';
import { moveOthers } from './moved/moveOthers.js';
import { SheetMove, sheetMoves } from './moved/sheetMove.js';
import { refuseUnsavable } from './refuseUnsavable.js';
import { saveSheet } from './saveSheet.js';
import { saveTables } from './saveTables.js';
import { staleSentence } from './staleSentence.js';
import { AddedStyles } from './styles/addedStyles.js';

/*
 * The file is edited, not made anew: `moved` has rows, columns and what names cells where they are now, `cells` what
 * stands in them, `styles` how they look.
 */

export interface SavedBook {
  bytes: Uint8Array;
  /** What the user should know about the file, a sentence each. */
  notes: string[];
}

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const sheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';

/**
 * The file the book came from with everything changed in it; what did not change keeps its bytes. Throws
 * `WorkbookRefused` where the format has no room for something.
 */
export function saveBook(open: OpenBook): SavedBook {
  return atOnce(savingBook(open));
}

/** The same, with rests. */
export function* savingBook(open: OpenBook): Pausing<SavedBook> {
  yield* refuseUnsavable(open);
  const { book, workbook, sheets } = open;
  const parts = new PackageParts(workbook.package, textsOfSheets(open));
  const workbookPart = parts.workbookPart();
  const list = parts.root(workbookPart);
  const styles = new AddedStyles(parts, workbookPart, stylesPart(workbook.package));
  const moves = sheetMoves(open);
  const mark = spillMark(open);
  const adapted = (position: number | undefined) => (formula: string) =>
    movedFormula(formula, position === undefined ? undefined : moves[position], moves);
  let formulasWent = false;
  for (const [position, { part, cells }] of workbook.sheets.entries()) {
    const [move, adapt] = [moves[position], adapted(position)];
    const isRenamed = move?.name !== undefined && move.name !== move.before;
    if (isRenamed) list.child('sheets')?.children[position]?.set({ name: move.name });
    if (move?.name === undefined || !cells) continue;
    const formulas = open.formulas.filter(({ sheet }) => sheet === position);
    const id = sheetId(position);
    const sheet = { open, sheetId: id, file: cells, formulas, move, added: styles, adapt, mark };
    yield;
    yield* parts.readingRoot(part);
    if (yield* saveSheet(parts.root(part), sheet)) formulasWent = true;
  }
  /** The parts of sheets that the file lacks, in the order they are added. */
  const added = new Map<UID, string>();
  const known = workbook.sheets.map((_, position) => sheetId(position));
  for (const id of book.getters.getSheetIds()) {
    if (known.includes(id)) continue;
    const part = parts.freeName('xl/worksheets/sheet', '.xml');
    parts.add(part, `<worksheet xmlns="${main}"><sheetData/></worksheet>`, sheetType);
    const name = book.sheetName(id) ?? '';
    const move = new SheetMove(name, name);
    const file = yield* scanWorksheet('', { strings: [], date1904: false, dynamicMetadata: new Set() });
    const sheet = { open, sheetId: id, file, formulas: [], move, added: styles, mark };
    yield* saveSheet(parts.root(part), { ...sheet, adapt: (formula) => formula });
    added.set(id, part);
    addListedSheet(list, name, parts.relate(workbookPart, 'worksheet', part));
  }
  saveTables(open, parts, added);
  // Names of ranges the grid keeps itself.
  changeNames(list, workbook.names, book.names(), (text, sheet) =>
    sheet === undefined && rangeOfName(text) ? text : adapted(sheet)(text),
  );
  const before = [...known, ...added.keys()];
  const wanted = book.getters.getSheetIds().map((id) => {
    const visible = book.getters.isSheetVisible(id);
    const was = sheets.get(id)?.visible ?? true;
    return { from: before.indexOf(id), visible: visible === was ? undefined : visible };
  });
  listSheets(list, wanted);
  const gone = workbook.sheets.filter((_, position) => moves[position]?.name === undefined);
  parts.unrelate(workbookPart, ({ target }) => gone.some(({ part }) => part === target));
  const changed = moves.some((move) => move.moved || move.name !== move.before);
  if (changed) moveOthers(parts, workbook.sheets, moves);
  // A list of formulas that names cells without any would be taken for damage.
  if (formulasWent || changed) parts.unrelate(workbookPart, ({ type }) => type === 'calcChain');
  yield;
  const stale = staleSentence(open, moves);
  yield;
  if (stale.length > 0) requestFullCalculation(list);
  return { bytes: yield* parts.packing(), notes: [...stale, ...filterNote(open)] };
}

/** What was unpacked when the book was opened is not unpacked again. */
function textsOfSheets({ workbook: { sheets } }: OpenBook): Map<string, string> {
  return new Map(sheets.flatMap(({ part, cells }) => (cells ? [[part, cells.xml] as const] : [])));
}

/** The number that marks formulas that spill, from one that does. */
function spillMark({ workbook, formulas }: OpenBook): string | undefined {
  const spilling = formulas.find(({ stored }) => stored.kind === 'dynamic');
  const cells = spilling && workbook.sheets[spilling.sheet]?.cells;
  const i = cells?.index.get(cellKey(spilling?.row ?? 0, spilling?.column ?? 0));
  if (!cells || i === undefined) return undefined;
  return XmlElement.read(cells.xml.slice(cells.starts[i], cells.ends[i])).attribute('cm');
}

function filterNote({ book: { getters } }: OpenBook): string[] {
  const isFiltered = getters.getSheetIds().some((id) => {
    const rows = Array.from({ length: getters.getNumberRows(id) }, (_, row) => row);
    return rows.some((row) => getters.isRowFiltered(id, row));
  });
  return isFiltered ? ['Filters are not saved: the file shows all rows.'] : [];
}
