import { entriesInTurn, type Pausing } from './pausing.js';
import { XmlReader } from './xml/reader.js';
import { unescapeString } from './xml/text.js';

/**
 * Reads the text of a string item (`si` or `is`) whose opening tag was just read: rich text runs are
 * joined, phonetic guides left out.
 */
export function readStringItem(reader: XmlReader): string {
  if (reader.empty) return '';
  const item = reader.name;
  let text = '';
  while (reader.next()) {
    if (reader.closing) {
      if (reader.name === item) break;
      continue;
    }
    if (reader.name === 't') text += reader.text();
    else if (reader.name === 'rPh' || reader.name === 'rPr') reader.skipElement();
  }
  return unescapeString(text);
}

/** The shared strings of a workbook in order; none when the part is missing. */
export function* readSharedStrings(xml: string | undefined): Pausing<string[]> {
  const strings: string[] = [];
  if (xml === undefined) return strings;
  const reader = new XmlReader(xml);
  while (reader.next()) {
    if (reader.closing || reader.name !== 'si') continue;
    strings.push(readStringItem(reader));
    if (strings.length % entriesInTurn === 0) yield;
  }
  return strings;
}
