import { cellAddress, parseCell, parseZone, zoneAddress } from '../../../sheet/address.js';
import { applyEdits, type TextEdit } from '../../../xlsx/xml/cutElements.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { encodeString, attributeText } from '../../../xlsx/xml/text.js';
import { withAttribute } from '../parts/cellMarks.js';
import { movedColumns } from '../headers/columns.js';
import { withoutEmptyLists } from './withoutEmptyLists.js';
import { movedZone, type SheetMove } from '../headers/sheetMoves.js';

/** Elements that go when nothing is left of the cells they are about. */
const about = [
  'mergeCell',
  'hyperlink',
  'conditionalFormatting',
  'dataValidation',
  'protectedRange',
  'ignoredError',
  'autoFilter',
  'sortState',
  'sortCondition',
  'cellWatch',
  'inputCells',
];
const formulas = ['formula', 'formula1', 'formula2', 'f'];
const references = ['ref', 'sqref', 'activeCell', 'topLeftCell', 'r1', 'r2'];

/** A sheet's part with everything in it where rows and columns are now; values and formulas of cells stay. */
export function movedSheet(xml: string, move: SheetMove, adapt: (formula: string) => string): string {
  return withoutEmptyLists(new SheetMover(xml, move, adapt).moved());
}

class SheetMover {
  private readonly reader: XmlReader;
  private readonly edits: TextEdit[] = [];
  private row = -1;
  private column = -1;
  private breaks: 'rows' | 'columns' = 'rows';
  private inCells = false;

  constructor(
    private readonly xml: string,
    private readonly move: SheetMove,
    private readonly adapt: (formula: string) => string,
  ) {
    this.reader = new XmlReader(xml);
  }

  moved(): string {
    while (this.reader.next()) {
      const { name, closing } = this.reader;
      if (name === 'sheetData') this.inCells = !closing && !this.reader.empty;
      if (!closing) this.element(name);
    }
    return applyEdits(this.xml, this.edits);
  }

  private element(name: string): void {
    if (name === 'row' && this.inCells) return this.rowElement();
    if (name === 'c' && this.inCells) return this.cellElement();
    if (name === 'cols') return this.columns();
    if (name === 'rowBreaks' || name === 'colBreaks') this.breaks = name === 'rowBreaks' ? 'rows' : 'columns';
    if (name === 'brk') return this.pageBreak();
    if (!this.inCells && formulas.includes(name)) return this.text(this.adapt);
    if (name === 'sqref') return this.text((text) => this.ranges(text) ?? text);
    this.attributes(name);
  }

  private rowElement(): void {
    const { reader, xml } = this;
    this.row = Number(reader.attribute('r') ?? this.row + 2) - 1;
    this.column = -1;
    const place = this.move.rows.place(this.row);
    if (place === undefined) return this.cut();
    const tag = xml.slice(reader.tagStart, reader.tagEnd);
    const text = withAttribute(withAttribute(tag, 'spans', undefined), 'r', String(place + 1));
    this.edits.push({ start: reader.tagStart, end: reader.tagEnd, text });
  }

  private cellElement(): void {
    const { reader, xml, move } = this;
    this.column = parseCell(reader.attribute('r') ?? '')?.column ?? this.column + 1;
    const [row, column] = [move.rows.place(this.row), move.columns.place(this.column)];
    if (row === undefined || column === undefined) return this.cut();
    const tag = xml.slice(reader.tagStart, reader.tagEnd);
    const text = withAttribute(tag, 'r', cellAddress(row, column));
    this.edits.push({ start: reader.tagStart, end: reader.tagEnd, text });
  }

  private columns(): void {
    const { reader, xml, move } = this;
    const start = reader.tagStart;
    reader.skipElement();
    const end = reader.position;
    if (move.columns.moved)
      this.edits.push({ start, end, text: movedColumns(xml.slice(start, end), move.columns) });
  }

  private pageBreak(): void {
    const bounds = this.reader.attributeBounds('id');
    if (!bounds) return;
    const place = this.move[this.breaks].place(Number(this.xml.slice(bounds.start, bounds.end)));
    if (place === undefined) return this.cut();
    this.edits.push({ ...bounds, text: String(place) });
  }

  private attributes(name: string): void {
    const edits: TextEdit[] = [];
    const alone = name === 'cellWatch' || name === 'inputCells' ? ['r'] : [];
    for (const attribute of [...references, ...alone]) {
      const bounds = this.reader.attributeBounds(attribute);
      if (!bounds) continue;
      const before = this.xml.slice(bounds.start, bounds.end);
      const text = this.ranges(before);
      if (text === undefined && about.includes(name)) return this.cut();
      edits.push({ ...bounds, text: text ?? 'A1' });
    }
    this.edits.push(...edits, ...this.link());
  }

  /** The place in the workbook that a link leads to. */
  private link(): TextEdit[] {
    const { reader } = this;
    const bounds = reader.name === 'hyperlink' ? reader.attributeBounds('location') : undefined;
    const before = bounds && reader.attribute('location');
    if (!bounds || before === undefined) return [];
    const after = this.adapt(before);
    return after === before ? [] : [{ ...bounds, text: attributeText(after) }];
  }

  /** Ranges with spaces between them; undefined where nothing is left of them. */
  private ranges(text: string): string | undefined {
    const left = text.split(/\s+/).flatMap((range) => {
      const zone = parseZone(range);
      if (!zone) return [range];
      const moved = movedZone(zone, this.move);
      return moved ? [zoneAddress(moved)] : [];
    });
    return left.length > 0 ? left.join(' ') : undefined;
  }

  private text(change: (text: string) => string): void {
    const { reader } = this;
    if (reader.empty) return;
    const start = reader.tagEnd;
    const before = reader.text();
    const after = change(before);
    if (after !== before) this.edits.push({ start, end: reader.tagStart, text: encodeString(after) });
  }

  private cut(): void {
    const { reader } = this;
    const start = reader.tagStart;
    reader.skipElement();
    this.edits.push({ start, end: reader.position, text: '' });
  }
}
