import { applyEdits, type TextEdit } from '../../../xlsx/xml/cutElements.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { childElements } from '../parts/childElements.js';

const lists = [
  'mergeCells',
  'hyperlinks',
  'dataValidations',
  'protectedRanges',
  'ignoredErrors',
  'cellWatches',
];

/** Lists that lost all their elements go; the counts of others are set right. */
export function withoutEmptyLists(xml: string): string {
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  while (reader.next()) {
    if (reader.closing || !lists.includes(reader.name)) continue;
    const bounds = reader.attributeBounds('count');
    const start = reader.tagStart;
    reader.skipElement();
    const count = childElements(xml.slice(start, reader.position)).length;
    if (count === 0) edits.push({ start, end: reader.position, text: '' });
    else if (bounds) edits.push({ ...bounds, text: String(count) });
  }
  return applyEdits(xml, edits);
}
