import { cellAddress, parseCell, parseZone, zoneAddress } from '../sheet/address.js';
import type { XmlElement } from './xml/element.js';

interface Numbered {
  at: number;
  element: XmlElement;
}

/** The rows and cells of a sheet's part; those that are asked for and missing are made in their place. */
export class PartCells {
  private readonly data: XmlElement;
  private readonly rows: Numbered[];
  private readonly cells = new Map<XmlElement, Numbered[]>();

  constructor(private readonly sheet: XmlElement) {
    this.data = sheet.made('sheetData');
    this.rows = numbered(this.data, 'row', (row) => Number(row.attribute('r') ?? NaN) - 1);
  }

  row(at: number): XmlElement {
    return placed(this.rows, at, this.data, `<row r="${at + 1}"/>`);
  }

  has(row: number, column: number): boolean {
    const line = this.rows[placeOf(this.rows, row)];
    if (line?.at !== row) return false;
    const cells = this.cellsOf(line.element);
    return cells[placeOf(cells, column)]?.at === column;
  }

  cell(row: number, column: number): XmlElement {
    if (!this.has(row, column)) this.growDimension(row, column);
    const line = this.row(row);
    return placed(this.cellsOf(line), column, line, `<c r="${cellAddress(row, column)}"/>`);
  }

  private cellsOf(line: XmlElement): Numbered[] {
    const known = this.cells.get(line);
    if (known) return known;
    const cells = numbered(line, 'c', (cell) => parseCell(cell.attribute('r') ?? '')?.column ?? NaN);
    this.cells.set(line, cells);
    return cells;
  }

  /** The style of cells that the sheet does not list: that of their row, or of their column. */
  usualStyles(): (row: number, column: number) => number {
    const rows = new Map<number, number>();
    const ofRow = (row: number) => {
      const known = rows.get(row);
      if (known !== undefined) return known;
      const line = this.rows[placeOf(this.rows, row)];
      const style = line?.at === row ? Number(line.element.attribute('s') ?? 0) : 0;
      rows.set(row, style);
      return style;
    };
    const columns = this.sheet.child('cols')?.children.map((col) => ({
      first: Number(col.attribute('min')) - 1,
      last: Number(col.attribute('max')) - 1,
      style: Number(col.attribute('style') ?? 0),
    }));
    return (row, column) =>
      ofRow(row) || (columns?.find(({ first, last }) => column >= first && column <= last)?.style ?? 0);
  }

  private growDimension(row: number, column: number): void {
    const dimension = this.sheet.child('dimension');
    const zone = parseZone(dimension?.attribute('ref') ?? '');
    if (!zone) return;
    const [top, bottom] = [Math.min(zone.top, row), Math.max(zone.bottom, row)];
    const [left, right] = [Math.min(zone.left, column), Math.max(zone.right, column)];
    dimension?.set({ ref: zoneAddress({ top, bottom, left, right }) });
  }
}

/** Elements of a name by their number; one without a number follows the one before it. */
function numbered(parent: XmlElement, name: string, numberOf: (element: XmlElement) => number): Numbered[] {
  let last = -1;
  const elements = parent.children.filter((element) => element.name === name);
  return elements.map((element) => {
    const own = numberOf(element);
    last = Number.isNaN(own) ? last + 1 : own;
    return { at: last, element };
  });
}

/** The place of the first that is not before a number. */
function placeOf(list: readonly Numbered[], at: number): number {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((list[middle]?.at ?? 0) < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

function placed(list: Numbered[], at: number, parent: XmlElement, text: string): XmlElement {
  const place = placeOf(list, at);
  const next = list[place];
  if (next?.at === at) return next.element;
  const element = parent.insert(text, next?.element ?? parent.child('extLst'));
  list.splice(place, 0, { at, element });
  return element;
}
