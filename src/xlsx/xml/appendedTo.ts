import { refuseWorkbook } from '../refusal/refusal.js';
import { XmlReader } from './reader.js';

/** Puts text before the closing tag of the first element of a name; the text is given the element's prefix. */
export function appendedTo(xml: string, element: string, text: (prefix: string) => string): string {
  const reader = new XmlReader(xml);
  while (reader.next()) {
    if (reader.name !== element) continue;
    const { prefix, tagStart, tagEnd, empty, closing } = reader;
    if (closing) return xml.slice(0, tagStart) + text(prefix) + xml.slice(tagStart);
    if (empty)
      return `${xml.slice(0, tagEnd - 2).trimEnd()}>${text(prefix)}</${prefix}${element}>${xml.slice(tagEnd)}`;
  }
  return refuseWorkbook(`The file is damaged: it has no element ${element} where one belongs.`);
}
