import { sameName } from '../../sheet/names.js';
import type { DefinedName } from '../../sheet/formula/scope.js';
import { encodeString, attributeText } from '../../xlsx/xml/text.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import { appendedTo } from '../../xlsx/xml/appendedTo.js';
import { withoutElement } from '../../xlsx/xml/withoutElement.js';

/** The workbook's part with a sheet renamed, by its place in the list. */
export function withSheetName(xml: string, position: number, name: string): string {
  const reader = new XmlReader(xml);
  let at = 0;
  while (reader.next()) {
    if (reader.name !== 'sheet' || reader.closing || at++ !== position) continue;
    const bounds = reader.attributeBounds('name');
    return bounds ? xml.slice(0, bounds.start) + attributeText(name) + xml.slice(bounds.end) : xml;
  }
  return xml;
}

/** The same with the names of the whole workbook as they are now. */
export function withNames(xml: string, before: readonly DefinedName[], now: readonly DefinedName[]): string {
  const was = before.filter(({ sheet }) => sheet === undefined);
  const same = (a: DefinedName, b: DefinedName) => sameName(a.name, b.name);
  const bare = (text: string) => text.replace(/^=/, '').replaceAll("'", '');
  const gone = was.filter((old) => !now.some((one) => same(one, old) && bare(one.text) === bare(old.text)));
  const come = now.filter((one) => !was.some((old) => same(one, old) && bare(one.text) === bare(old.text)));
  let out = gone.reduce((text, { name }) => withoutElement(text, 'definedName', 'name', name), xml);
  for (const { name, text } of come) out = withName(out, name, text);
  return out;
}

function withName(xml: string, name: string, text: string): string {
  const reader = new XmlReader(xml);
  let after = -1;
  let prefix = '';
  while (reader.next()) {
    if (reader.name === 'definedNames')
      return appendedTo(xml, 'definedNames', (before) => element(before, name, text));
    const ends = reader.closing || reader.empty;
    if (!ends || !['sheets', 'functionGroups', 'externalReferences'].includes(reader.name)) continue;
    after = reader.tagEnd;
    prefix = reader.prefix;
  }
  if (after < 0) return xml;
  const names = `<${prefix}definedNames>${element(prefix, name, text)}</${prefix}definedNames>`;
  return xml.slice(0, after) + names + xml.slice(after);
}

const element = (prefix: string, name: string, text: string): string =>
  `<${prefix}definedName name="${attributeText(name)}">${encodeString(text.replace(/^=/, ''))}</${prefix}definedName>`;
