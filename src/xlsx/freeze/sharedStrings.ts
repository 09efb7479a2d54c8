import type { Worksheet } from '../storedCells.js';
import { applyEdits, type TextEdit } from '../xml/cutElements.js';
import { XmlReader } from '../xml/reader.js';

/** The places in the table of shared texts that cells of these sheets use. */
export function usedStrings(sheets: readonly Worksheet[]): Set<number> {
  const used = new Set<number>();
  for (const { xml, starts, ends } of sheets) {
    starts.forEach((start, at) => {
      const reader = new XmlReader(xml.slice(start, ends[at]));
      reader.next();
      if (reader.attribute('t') !== 's') return;
      while (reader.next()) if (!reader.closing && reader.name === 'v') used.add(Number(reader.text()));
    });
  }
  return used;
}

/** The table with the texts nobody uses emptied; the others keep their places. */
export function withoutUnusedStrings(xml: string, used: ReadonlySet<number>): string {
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  let place = 0;
  while (reader.next()) {
    if (reader.closing || reader.name !== 'si') continue;
    const { tagStart: start, prefix } = reader;
    reader.skipElement();
    const text = `<${prefix}si><${prefix}t/></${prefix}si>`;
    if (!used.has(place++)) edits.push({ start, end: reader.position, text });
  }
  return applyEdits(xml, edits);
}
