import { MAX_COLUMNS } from '../../../sheet/address.js';
import { XmlElement } from '../../../xlsx/xml/element.js';
import type { HeaderMap } from './headerMap.js';

/** A column as the file has it: the element it came from, and that element for no column in particular. */
interface Column {
  from: number;
  text: string;
}

/** Has the columns where they are now; new columns in between are told by themselves. False where none is left. */
export function moveColumns(cols: XmlElement, map: HeaderMap): boolean {
  const moved: (Column | undefined)[] = [];
  columnsOf(cols).forEach((column, at) => {
    const place = map.place(at);
    if (place !== undefined) moved[place] = column;
  });
  write(cols, moved);
  return moved.length > 0;
}

/** Changes columns of a sheet; the others keep what they have. */
export function changeColumns(
  sheet: XmlElement,
  changes: ReadonlyMap<number, Readonly<Record<string, string | number | undefined>>>,
): void {
  if (changes.size === 0) return;
  const cols = sheet.made('cols');
  const columns = columnsOf(cols);
  for (const [at, attributes] of changes) {
    const column = XmlElement.read(columns[at]?.text ?? '<col min="0" max="0"/>').set(attributes);
    // A hidden column without a width has none when it is shown again.
    if (column.attribute('width') === undefined) column.set({ width: '8.43' });
    columns[at] = { from: -1 - at, text: String(column) };
  }
  write(cols, columns);
}

function columnsOf(cols: XmlElement): (Column | undefined)[] {
  const columns: (Column | undefined)[] = [];
  cols.children.forEach((element, from) => {
    const [first, last] = [Number(element.attribute('min') ?? 1), Number(element.attribute('max') ?? 1)];
    const column = { from, text: String(element.set({ min: 0, max: 0 })) };
    for (let at = first - 1; at < Math.min(last, MAX_COLUMNS); at++) columns[at] = column;
  });
  return columns;
}

/** Writes columns beside each other that came from one element as one again. */
function write(cols: XmlElement, columns: readonly (Column | undefined)[]): void {
  cols.keep(() => false);
  for (let first = 0; first < columns.length; first++) {
    const column = columns[first];
    if (!column) continue;
    let last = first;
    while (columns[last + 1] === column) last++;
    cols.insert(column.text).set({ min: first + 1, max: last + 1 });
    first = last;
  }
}
