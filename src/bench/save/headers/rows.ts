import { applyEdits, type TextEdit } from '../../../xlsx/xml/cutElements.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { withAttribute } from '../parts/cellMarks.js';

/** What changes of a row: its height in points (null: as high as what is in it), and whether it is hidden. */
export interface RowChange {
  height?: number | null;
  hidden?: boolean;
}

/** A sheet's part with rows changed; the others keep what they have. */
export function withRows(xml: string, changes: ReadonlyMap<number, RowChange>): string {
  if (changes.size === 0) return xml;
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  const waiting = [...changes].sort(([a], [b]) => a - b);
  const newRows = (before: number, prefix: string): string => {
    let text = '';
    for (let next = waiting[0]; next && next[0] < before; next = waiting[0]) {
      waiting.shift();
      text += changedRow(`<${prefix}row r="${next[0] + 1}"/>`, next[1]);
    }
    return text;
  };
  let row = -1;
  while (reader.next()) {
    const { name, closing, empty, prefix, tagStart, tagEnd } = reader;
    if (name === 'sheetData' && empty) {
      const text = `<${prefix}sheetData>${newRows(Infinity, prefix)}</${prefix}sheetData>`;
      edits.push({ start: tagStart, end: tagEnd, text });
    } else if (name === 'sheetData' && closing)
      edits.push({ start: tagStart, end: tagStart, text: newRows(Infinity, prefix) });
    else if (name === 'row' && !closing) {
      row = Number(reader.attribute('r') ?? row + 2) - 1;
      let text = newRows(row, prefix);
      const change = waiting[0]?.[0] === row ? waiting.shift()?.[1] : undefined;
      const tag = xml.slice(tagStart, tagEnd);
      text += change ? changedRow(tag, change) : tag;
      if (text !== tag) edits.push({ start: tagStart, end: tagEnd, text });
    }
    if (name === 'sheetData' && (closing || empty)) break;
  }
  return applyEdits(xml, edits);
}

function changedRow(tag: string, { height, hidden }: RowChange): string {
  let out = tag;
  if (height !== undefined) {
    out = withAttribute(out, 'ht', height === null ? undefined : String(height));
    out = withAttribute(out, 'customHeight', height === null ? undefined : '1');
  }
  if (hidden !== undefined) out = withAttribute(out, 'hidden', hidden ? '1' : undefined);
  return out;
}
