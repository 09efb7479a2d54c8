import type { UID } from '@odoo/o-spreadsheet';
import { cellKey, type Sheet, type Worksheet } from '../../xlsx';
import { patchSheet } from '../../xlsx/patchSheet';
import { scanWorksheet } from '../../xlsx/worksheet';
import { XmlReader } from '../../xlsx/xml/reader';
import type { GivenLook, OpenBook } from '../open/openBook';
import { sheetId, stylesPart, type OpenedFormula } from '../open/workbookData';
import { finishCells } from './finishCells';
import { PackageParts } from './packageParts';
import { sheetChanges, type SheetChanges, type Sides } from './sheetChanges';
import { AddedStyles } from './styles/addedStyles';
import { CellStyles } from './styles/cellStyles';
import { addTable, changedTable } from './tables';
import { staleSentence } from './stale';
import { withNames, withSheet, withSheetName } from './workbookPart';

export interface SavedBook {
  bytes: Uint8Array;
  /** What the user should know about the file, a sentence each. */
  notes: string[];
}

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const sheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
const nothing = { strings: [], date1904: false, dynamicMetadata: new Set<string>() };

/** The file the book came from with everything changed in it; what did not change keeps its bytes. */
export function saveBook(open: OpenBook): SavedBook {
  return new Saving(open).save();
}

class Saving {
  private readonly parts: PackageParts;
  private readonly workbookPart: string;
  private readonly styles: AddedStyles;
  private readonly mark: string | undefined;
  private formulasWent = false;

  constructor(private readonly open: OpenBook) {
    const { package: opened } = open.workbook;
    this.parts = new PackageParts(opened);
    const link = opened.relationships('').find(({ type }) => type === 'officeDocument');
    this.workbookPart = link?.target ?? 'xl/workbook.xml';
    this.styles = new AddedStyles(this.parts, this.workbookPart, stylesPart(opened));
    this.mark = spillMark(open);
  }

  save(): SavedBook {
    const { book, workbook } = this.open;
    const known = new Set(workbook.sheets.map((_, position) => sheetId(position)));
    workbook.sheets.forEach((sheet, position) => this.saveSheet(sheet, position));
    for (const id of book.getters.getSheetIds()) if (!known.has(id)) this.addSheet(id);
    this.saveTables();
    this.styles.write();
    const workbookXml = this.parts.xml(this.workbookPart) ?? '';
    this.parts.set(this.workbookPart, withNames(workbookXml, workbook.names, book.names()));
    // A list of formulas that names cells without any would be taken for damage.
    if (this.formulasWent) this.parts.forget(this.workbookPart, 'calcChain');
    return { bytes: this.parts.toBytes(), notes: this.notes() };
  }

  private saveSheet(sheet: Sheet, position: number): void {
    const { book } = this.open;
    const id = sheetId(position);
    const name = book.sheetName(id);
    if (name === undefined || !sheet.cells) return;
    if (name !== sheet.name) {
      const xml = this.parts.xml(this.workbookPart) ?? '';
      this.parts.set(this.workbookPart, withSheetName(xml, position, name));
    }
    const formulas = this.open.formulas.filter((formula) => formula.sheet === position);
    this.parts.set(sheet.part, this.sheetXml(id, sheet.cells, formulas, this.open.looks.get(id)));
  }

  private sheetXml(
    id: UID,
    file: Worksheet,
    formulas: readonly OpenedFormula[],
    looks: ReadonlyMap<number, GivenLook> | undefined,
  ): string {
    const { book, namespace } = this.open;
    const sides: Sides = {
      book,
      sheetId: id,
      file,
      formulas: new Map(formulas.map((formula) => [cellKey(formula.row, formula.column), formula])),
      styles: new CellStyles(this.open, id, file.xml, looks, this.styles),
      namespace,
    };
    const changes = sheetChanges(sides);
    if (changes.removed.length > 0) this.formulasWent = true;
    if (changes.values.some(({ replacesFormula }) => replacesFormula)) this.formulasWent = true;
    return withChanges(file, changes, this.mark);
  }

  private addSheet(id: UID): void {
    const part = this.parts.freeName('xl/worksheets/sheet', '.xml');
    this.parts.add(part, `<worksheet xmlns="${main}"><sheetData/></worksheet>`, sheetType);
    const file = scanWorksheet(this.parts.xml(part) ?? '', nothing);
    this.parts.set(part, this.sheetXml(id, file, [], undefined));
    this.added.set(id, part);
    const link = this.parts.relate(this.workbookPart, 'worksheet', part);
    const name = this.open.book.sheetName(id) ?? '';
    this.parts.set(this.workbookPart, withSheet(this.parts.xml(this.workbookPart) ?? '', name, link));
  }

  private readonly added = new Map<UID, string>();

  private saveTables(): void {
    const { book, workbook } = this.open;
    const { package: opened } = workbook;
    const found = new Set<string>();
    let greatest = 0;
    workbook.sheets.forEach((sheet) => {
      for (const { type, target } of opened.relationships(sheet.part)) {
        const xml = type === 'table' ? this.parts.xml(target) : undefined;
        if (xml === undefined) continue;
        const { name, id } = tableHead(xml);
        greatest = Math.max(greatest, id);
        const table = book.tables.find(name);
        if (!table) continue;
        found.add(name.toLowerCase());
        this.parts.set(target, changedTable(xml, table));
      }
    });
    for (const table of book.tables.all()) {
      if (found.has(table.name.toLowerCase())) continue;
      const position = workbook.sheets.findIndex((_, at) => sheetId(at) === table.sheetId);
      const part = this.added.get(table.sheetId) ?? workbook.sheets[position]?.part;
      if (part !== undefined) addTable(this.parts, part, table, ++greatest);
    }
  }

  private notes(): string[] {
    const { book, workbook } = this.open;
    const gone = workbook.sheets.filter((_, at) => book.getters.tryGetSheetName(sheetId(at)) === undefined);
    const tables = workbook.tables.filter(({ name }) => !book.tables.find(name));
    return [
      ...gone.map(
        ({ name }) => `The sheet ${name} is still in the file: sheets are not removed from files here.`,
      ),
      ...tables.map(({ name }) => `The table ${name} is still in the file.`),
      ...staleSentence(this.open),
    ];
  }
}

function withChanges(
  file: Worksheet,
  { removed, values, finishes }: SheetChanges,
  mark: string | undefined,
): string {
  const cleared = removed.length > 0 ? scanWorksheet(patchSheet(file, removed), nothing) : file;
  return finishCells(patchSheet(cleared, values), [...finishes.values()], mark);
}

function tableHead(xml: string): { name: string; id: number } {
  const reader = new XmlReader(xml);
  while (reader.next())
    if (reader.name === 'table')
      return {
        name: reader.attribute('displayName') ?? reader.attribute('name') ?? '',
        id: Number(reader.attribute('id') ?? 0),
      };
  return { name: '', id: 0 };
}

/** The number that marks formulas that spill, from one that does. */
function spillMark({ workbook, formulas }: OpenBook): string | undefined {
  const spilling = formulas.find(({ stored }) => stored.kind === 'dynamic');
  const cells = spilling && workbook.sheets[spilling.sheet]?.cells;
  const i = cells?.index.get(cellKey(spilling?.row ?? 0, spilling?.column ?? 0));
  if (!cells || i === undefined) return undefined;
  const reader = new XmlReader(cells.xml.slice(cells.starts[i], cells.ends[i]));
  return reader.next() ? reader.attribute('cm') : undefined;
}
