import { XmlReader } from './xml/reader.js';

/** The elements a workbook part may have before `calcPr`, in the order of the format. */
const before = [
  'fileVersion',
  'fileSharing',
  'workbookPr',
  'workbookProtection',
  'bookViews',
  'sheets',
  'functionGroups',
  'externalReferences',
  'definedNames',
];

/**
 * The workbook part with the request that a program calculates everything when it opens the file. For files that hold
 * a value which is no longer right, and for no other: a program without our functions would put an error in place of
 * every value.
 */
export function withFullCalculation(xml: string): string {
  const reader = new XmlReader(xml);
  let place: { at: number; prefix: string } | undefined;
  while (reader.next()) {
    if (reader.closing) continue;
    const { name, prefix } = reader;
    if (name === 'calcPr') return withRequest(reader);
    if (before.includes(name)) {
      reader.skipElement();
      place = { at: reader.position, prefix };
    }
  }
  if (!place) return xml;
  const { at, prefix } = place;
  return `${xml.slice(0, at)}<${prefix}calcPr fullCalcOnLoad="1"/>${xml.slice(at)}`;
}

function withRequest(reader: XmlReader): string {
  const { xml, tagEnd, empty } = reader;
  const bounds = reader.attributeBounds('fullCalcOnLoad');
  if (bounds) return `${xml.slice(0, bounds.start)}1${xml.slice(bounds.end)}`;
  const end = tagEnd - (empty ? 2 : 1);
  return `${xml.slice(0, end).trimEnd()} fullCalcOnLoad="1"${xml.slice(end)}`;
}
