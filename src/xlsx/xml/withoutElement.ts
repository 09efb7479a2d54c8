import { XmlReader } from './reader.js';
import { decodeText } from './text.js';

/** XML without the element of a name whose attribute has a value. */
export function withoutElement(xml: string, element: string, attribute: string, value: string): string {
  const reader = new XmlReader(xml);
  while (reader.next()) {
    if (reader.closing || reader.name !== element) continue;
    const found = decodeText(reader.attribute(attribute) ?? '');
    if (found.toLowerCase() !== value.toLowerCase()) continue;
    const start = reader.tagStart;
    reader.skipElement();
    return xml.slice(0, start) + xml.slice(reader.position);
  }
  return xml;
}
