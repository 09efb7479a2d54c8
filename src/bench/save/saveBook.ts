import type { UID } from '@odoo/o-spreadsheet';
import type { Sheet } from '../../xlsx/workbook.js';
import { withFullCalculation } from '../../xlsx/fullCalculation.js';
import { scanWorksheet } from '../../xlsx/worksheet.js';
import type { OpenBook } from '../open/openBook.js';
import { rangeOfName } from '../../sheet/formula/rangeOfName.js';
import { sheetId, stylesPart } from '../open/workbookData.js';
import { moveOthers } from './references/moveOthers.js';
import { movedFormula } from './references/movedFormula.js';
import { hasMoved, sheetMoves, type SheetMove } from './headers/sheetMoves.js';
import { PackageParts } from '../../xlsx/packageParts.js';
import { refuseUnsavable } from './refuseUnsavable.js';
import { saveTables } from './saveTables.js';
import { withNameTexts, withoutEmptyNames, withSheetList, type ListedSheet } from './sheetList.js';
import { sheetPart, type FileSheet } from './sheetPart.js';
import { spillMark } from './spillMark.js';
import { staleSentence } from './stale.js';
import { AddedStyles } from './styles/addedStyles.js';
import { withNames, withSheetName } from './workbookPart.js';
import { withSheet } from '../../xlsx/withSheet.js';

/*
 * The file is edited, not made anew: `headers` are rows and columns, `references` what names cells, `sheet`
 * what else a worksheet has, `styles` the looks of cells, `parts` the order of elements.
 */

export interface SavedBook {
  bytes: Uint8Array;
  /** What the user should know about the file, a sentence each. */
  notes: string[];
}

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const sheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
const nothing = { strings: [], date1904: false, dynamicMetadata: new Set<string>() };

/**
 * The file the book came from with everything changed in it; what did not change keeps its bytes. Throws
 * `WorkbookRefused` where the format has no room for something.
 */
export function saveBook(open: OpenBook): SavedBook {
  return new Saving(open).save();
}

class Saving {
  private readonly parts: PackageParts;
  private readonly workbookPart: string;
  private readonly styles: AddedStyles;
  private readonly moves: readonly SheetMove[];
  private readonly mark: string | undefined;
  /** The parts of sheets that the file lacks, in the order they are added. */
  private readonly added = new Map<UID, string>();
  private formulasWent = false;

  constructor(private readonly open: OpenBook) {
    const { package: opened } = open.workbook;
    this.parts = new PackageParts(opened);
    const link = opened.relationships('').find(({ type }) => type === 'officeDocument');
    this.workbookPart = link?.target ?? 'xl/workbook.xml';
    this.styles = new AddedStyles(this.parts, this.workbookPart, stylesPart(opened));
    this.moves = sheetMoves(open);
    this.mark = spillMark(open);
  }

  save(): SavedBook {
    refuseUnsavable(this.open);
    const { book, workbook } = this.open;
    const known = new Set(workbook.sheets.map((_, position) => sheetId(position)));
    workbook.sheets.forEach((sheet, position) => this.saveSheet(sheet, position));
    for (const id of book.getters.getSheetIds()) if (!known.has(id)) this.addSheet(id);
    saveTables(this.open, this.parts, this.added);
    this.styles.write();
    this.saveNames();
    this.changeList();
    const changed = this.moves.some((move) => hasMoved(move) || move.name !== move.before);
    if (changed) moveOthers(this.parts, workbook.sheets, this.moves);
    // A list of formulas that names cells without any would be taken for damage.
    if (this.formulasWent || changed)
      this.parts.unrelate(this.workbookPart, ({ type }) => type === 'calcChain');
    const stale = staleSentence(this.open, this.moves);
    if (stale.length > 0) this.changeWorkbook(withFullCalculation);
    return { bytes: this.parts.toBytes(), notes: this.notes(stale) };
  }

  private notes(stale: readonly string[]): string[] {
    const { getters } = this.open.book;
    const filtered = getters
      .getSheetIds()
      .some((id) =>
        Array.from({ length: getters.getNumberRows(id) }, (_, row) => row).some((row) =>
          getters.isRowFiltered(id, row),
        ),
      );
    return [...stale, ...(filtered ? ['Filters are not saved: the file shows all rows.'] : [])];
  }

  private adapt(position: number | undefined): (formula: string) => string {
    const home = position === undefined ? undefined : this.moves[position];
    return (formula) => movedFormula(formula, home, this.moves);
  }

  private changeWorkbook(change: (xml: string) => string): void {
    this.parts.set(this.workbookPart, change(this.parts.xml(this.workbookPart) ?? ''));
  }

  private saveSheet({ name: before, part, cells }: Sheet, position: number): void {
    const id = sheetId(position);
    const name = this.open.book.sheetName(id);
    if (name === undefined) return;
    if (name !== before) this.changeWorkbook((xml) => withSheetName(xml, position, name));
    if (!cells) return;
    const formulas = this.open.formulas.filter((formula) => formula.sheet === position);
    const looks = this.open.looks.get(id) ?? new Map();
    const [given, move] = [this.open.sheets.get(id), this.moves[position]];
    this.write(id, part, { file: cells, formulas, looks, given, move, adapt: this.adapt(position) });
  }

  private addSheet(id: UID): void {
    const part = this.parts.freeName('xl/worksheets/sheet', '.xml');
    this.parts.add(part, `<worksheet xmlns="${main}"><sheetData/></worksheet>`, sheetType);
    const file = scanWorksheet(this.parts.xml(part) ?? '', nothing);
    const adapt = (formula: string) => formula;
    this.write(id, part, { file, formulas: [], looks: new Map(), given: undefined, move: undefined, adapt });
    this.added.set(id, part);
    const link = this.parts.relate(this.workbookPart, 'worksheet', part);
    const name = this.open.book.sheetName(id) ?? '';
    this.changeWorkbook((xml) => withSheet(xml, name, link));
  }

  private write(id: UID, part: string, sheet: FileSheet): void {
    const { xml, formulasWent } = sheetPart(this.open, id, sheet, this.styles, this.mark);
    this.parts.set(part, xml);
    this.formulasWent ||= formulasWent;
  }

  private saveNames(): void {
    const { book, workbook } = this.open;
    this.changeWorkbook((xml) => withoutEmptyNames(withNames(xml, workbook.names, book.names())));
    // Names of ranges the grid keeps itself.
    this.changeWorkbook((xml) =>
      withNameTexts(xml, (text, sheet) =>
        sheet === undefined && rangeOfName(text) ? text : this.adapt(sheet)(text),
      ),
    );
  }

  /** The order of the sheets, which are shown, and which are gone. */
  private changeList(): void {
    const { book, workbook, sheets } = this.open;
    const before = [...workbook.sheets.map((_, position) => sheetId(position)), ...this.added.keys()];
    const wanted = book.getters.getSheetIds().map((id): ListedSheet => {
      const visible = book.getters.isSheetVisible(id);
      const was = sheets.get(id)?.visible ?? true;
      return { from: before.indexOf(id), visible: visible === was ? undefined : visible };
    });
    this.changeWorkbook((xml) => withSheetList(xml, wanted));
    const gone = workbook.sheets.filter((_, position) => this.moves[position]?.name === undefined);
    const targets = new Set(gone.map(({ part }) => part));
    this.parts.unrelate(this.workbookPart, ({ target }) => targets.has(target));
  }
}
