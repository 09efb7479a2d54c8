import { appendedTo } from './xml/appendedTo.js';
import { XmlReader } from './xml/reader.js';
import { attributeText } from './xml/text.js';

const relationships = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** The workbook's part with one more sheet, which a relationship leads to. */
export function withSheet(xml: string, name: string, link: string): string {
  const reader = new XmlReader(xml);
  let greatest = 0;
  let id = `xmlns:r="${relationships}" r:id`;
  while (reader.next()) {
    if (reader.closing || reader.name !== 'sheet') continue;
    greatest = Math.max(greatest, Number(reader.attribute('sheetId') ?? 0));
    // As this file writes the attribute: `r:id` in most.
    id = /\s([\w.-]+:id)\s*=/.exec(xml.slice(reader.tagStart, reader.tagEnd))?.[1] ?? id;
  }
  return appendedTo(
    xml,
    'sheets',
    (prefix) => `<${prefix}sheet name="${attributeText(name)}" sheetId="${greatest + 1}" ${id}="${link}"/>`,
  );
}
