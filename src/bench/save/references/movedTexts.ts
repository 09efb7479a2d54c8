import { applyEdits, type TextEdit } from '../../../xlsx/xml/cutElements.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { encodeString } from '../../../xlsx/xml/text.js';

/** A part with the texts of some elements changed; cells are passed over. */
export function withTexts(
  xml: string,
  elements: readonly string[],
  change: (text: string) => string,
): string {
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  while (reader.next()) {
    if (reader.closing || reader.empty) continue;
    if (reader.name === 'sheetData') reader.skipElement();
    else if (elements.includes(reader.name)) {
      const start = reader.tagEnd;
      const before = reader.text();
      const after = change(before);
      if (after !== before) edits.push({ start, end: reader.tagStart, text: encodeString(after) });
    }
  }
  return applyEdits(xml, edits);
}
