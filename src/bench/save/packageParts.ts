import { zipSync, type Zippable } from 'fflate';
import type { Package } from '../../xlsx/package';
import { decodeText, encodeString } from '../../xlsx/xml/text';
import { XmlReader } from '../../xlsx/xml/reader';
import { unpack } from '../../xlsx/zip/unpack';
import { writeArchive } from '../../xlsx/zip/writeArchive';

const relationshipTypes = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** The parts of a package as they will be written: changed ones replaced, new ones added. */
export class PackageParts {
  private readonly changed = new Map<string, string>();
  private readonly added = new Map<string, string>();

  constructor(private readonly opened: Package) {}

  /** A part as it stands now. */
  xml(part: string): string | undefined {
    const name = this.opened.entry(part)?.name ?? part;
    return this.changed.get(name) ?? this.added.get(name) ?? this.opened.xml(part);
  }

  set(part: string, xml: string): void {
    const name = this.opened.entry(part)?.name;
    if (name === undefined) this.added.set(part, xml);
    else if (xml !== this.opened.xml(part)) this.changed.set(name, xml);
  }

  /** A free name such as `xl/tables/table7.xml`. */
  freeName(before: string, after: string): string {
    for (let number = 1; ; number++) {
      const name = `${before}${number}${after}`;
      if (!this.opened.entry(name) && !this.added.has(name)) return name;
    }
  }

  /** Adds a part with its content type. */
  add(part: string, xml: string, contentType: string): void {
    this.added.set(part, xmlHead + xml);
    const types = '[Content_Types].xml';
    const override = `<Override PartName="/${part}" ContentType="${contentType}"/>`;
    this.set(types, insertBefore(this.xml(types) ?? '', 'Types', override));
  }

  /** Relates a part to another; gives the id of the relationship. */
  relate(from: string, type: string, to: string): string {
    const slash = from.lastIndexOf('/') + 1;
    const part = `${from.slice(0, slash)}_rels/${from.slice(slash)}.rels`;
    const before =
      this.xml(part) ??
      `${xmlHead}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>`;
    const taken = new Set([...before.matchAll(/\bId\s*=\s*["']([^"']*)/g)].map((match) => match[1]));
    let number = 1;
    while (taken.has(`rId${number}`)) number++;
    const relationship = `<Relationship Id="rId${number}" Type="${relationshipTypes}/${type}" Target="/${to}"/>`;
    this.set(part, insertBefore(before, 'Relationships', relationship));
    return `rId${number}`;
  }

  /** Takes out the relationship to a part and its content type; the part itself is then read by nobody. */
  forget(from: string, type: string): void {
    const link = this.opened.relationships(from).find((one) => one.type === type);
    if (!link) return;
    const slash = from.lastIndexOf('/') + 1;
    const rels = `${from.slice(0, slash)}_rels/${from.slice(slash)}.rels`;
    this.set(rels, withoutElement(this.xml(rels) ?? '', 'Relationship', 'Id', link.id));
    const types = '[Content_Types].xml';
    this.set(types, withoutElement(this.xml(types) ?? '', 'Override', 'PartName', `/${link.target}`));
  }

  toBytes(): Uint8Array {
    const { archive, codec } = this.opened;
    const replaced = new Map([...this.changed].map(([name, xml]) => [name, codec.toBytes(xml)]));
    if (this.added.size === 0) return writeArchive(archive, replaced, codec);
    const all: Zippable = {};
    for (const entry of archive.entries)
      all[entry.name] = replaced.get(entry.name) ?? unpack(archive, entry, codec);
    for (const [name, xml] of this.added) all[name] = codec.toBytes(xml);
    return zipSync(all, { level: 6 });
  }
}

/** Text for an attribute's value. */
export const attributeText = (text: string): string =>
  encodeString(text).replaceAll('"', '&quot;').replaceAll('\n', '&#10;');

/** XML with something put in as the last child of the first element of a name. */
export function insertBefore(xml: string, element: string, text: string): string {
  const reader = new XmlReader(xml);
  while (reader.next()) {
    if (reader.name !== element) continue;
    const { prefix, tagStart, tagEnd, empty, closing } = reader;
    if (empty)
      return `${xml.slice(0, tagEnd - 2).trimEnd()}>${text}</${prefix}${element}>${xml.slice(tagEnd)}`;
    if (closing) return xml.slice(0, tagStart) + text + xml.slice(tagStart);
  }
  return xml;
}

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
