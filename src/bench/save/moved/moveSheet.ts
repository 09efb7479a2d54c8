import { cellAddress, parseCell, parseZone, zoneAddress } from '../../../sheet/address.js';
import type { XmlElement } from '../../../xlsx/xml/element.js';
import { moveColumns } from './columns.js';
import type { SheetMove } from './sheetMove.js';

/** Elements that go when nothing is left of the cells they are about. */
const about =
  `mergeCell hyperlink conditionalFormatting dataValidation protectedRange ignoredError autoFilter sortState
  sortCondition cellWatch inputCells`.split(/\s+/);
/** Lists that go with their last element; some say how many there are. */
const lists = 'mergeCells hyperlinks dataValidations protectedRanges ignoredErrors cellWatches'.split(' ');
const formulas = ['formula', 'formula1', 'formula2', 'f'];
const references = ['ref', 'sqref', 'activeCell', 'topLeftCell', 'r1', 'r2'];

/** Has everything in a sheet where rows and columns are now; values and formulas of cells stay. */
export function moveSheet(sheet: XmlElement, move: SheetMove, adapt: (formula: string) => string): void {
  sheet.keep((child) => {
    if (child.name === 'sheetData') moveCells(child, move);
    else if (child.name === 'rowBreaks') moveBreaks(child, (row) => move.rows.place(row));
    else if (child.name === 'colBreaks') moveBreaks(child, (column) => move.columns.place(column));
    else if (child.name === 'cols') return !move.columns.moved || moveColumns(child, move.columns);
    else return stays(child, move, adapt);
    return true;
  });
}

function moveCells(data: XmlElement, move: SheetMove): void {
  const { rows, columns } = move;
  let row = -1;
  data.keep((line) => {
    row = Number(line.attribute('r') ?? row + 2) - 1;
    const place = rows.place(row);
    if (place === undefined) return false;
    line.set({ spans: undefined, r: place + 1 });
    let column = -1;
    line.keep((cell) => {
      column = parseCell(cell.attribute('r') ?? '')?.column ?? column + 1;
      const beside = columns.place(column);
      if (beside === undefined) return false;
      cell.set({ r: cellAddress(place, beside) });
      const formula = cell.child('f');
      if (formula) moveReferences(formula, move);
      return true;
    });
    return true;
  });
}

function moveBreaks(breaks: XmlElement, placeOf: (at: number) => number | undefined): void {
  breaks.keep((each) => {
    const place = placeOf(Number(each.attribute('id')));
    if (place !== undefined) each.set({ id: place });
    return place !== undefined;
  });
}

/** Moves an element with what is inside; false for one that goes. */
function stays(element: XmlElement, move: SheetMove, adapt: (formula: string) => string): boolean {
  const { name } = element;
  if (formulas.includes(name)) element.text = adapt(element.text);
  else if (name === 'sqref') element.text = movedRanges(element.text, move) ?? element.text;
  else if (!moveReferences(element, move)) return false;
  else element.keep((child) => stays(child, move, adapt));
  const location = name === 'hyperlink' ? element.attribute('location') : undefined;
  if (location !== undefined) element.set({ location: adapt(location) });
  if (!lists.includes(name)) return true;
  const { length } = element.children;
  if (element.attribute('count') !== undefined) element.set({ count: length });
  return length > 0;
}

/** False where nothing is left of what the element is about. */
function moveReferences(element: XmlElement, move: SheetMove): boolean {
  const alone = element.name === 'cellWatch' || element.name === 'inputCells' ? ['r'] : [];
  for (const name of [...references, ...alone]) {
    const before = element.attribute(name);
    if (before === undefined) continue;
    const after = movedRanges(before, move);
    if (after === undefined && about.includes(element.name)) return false;
    element.set({ [name]: after ?? 'A1' });
  }
  return true;
}

/** Ranges with spaces between them; undefined where nothing is left of them. */
function movedRanges(text: string, move: SheetMove): string | undefined {
  const left = text.split(/\s+/).flatMap((range) => {
    const zone = parseZone(range);
    if (!zone) return [range];
    const moved = move.zone(zone);
    return moved ? [zoneAddress(moved)] : [];
  });
  return left.length > 0 ? left.join(' ') : undefined;
}
