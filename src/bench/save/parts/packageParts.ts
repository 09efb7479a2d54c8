import type { Package, Relationship } from '../../../xlsx/package.js';
import { decodeText, encodeString } from '../../../xlsx/xml/text.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { editArchive } from '../../../xlsx/zip/editArchive.js';

const relationshipTypes = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** The parts of a package as they will be written: changed ones replaced, new ones added. */
export class PackageParts {
  private readonly changed = new Map<string, string>();
  private readonly added = new Map<string, string>();
  private readonly removed = new Set<string>();
  private readonly dropped = new Map<string, Set<string>>();

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
    const part = relationshipsPart(from);
    const before =
      this.xml(part) ??
      `${xmlHead}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>`;
    const taken = new Set([...before.matchAll(/\bId\s*=\s*["']([^"']*)/g)].map((match) => match[1]));
    let number = 1;
    while (taken.has(`rId${number}`)) number++;
    const relationship = `<Relationship Id="rId${number}" Type="${relationshipTypes}/${type}" Target="${relativeTarget(from, to)}"/>`;
    this.set(part, insertBefore(before, 'Relationships', relationship));
    return `rId${number}`;
  }

  /** Takes out the relationships of a part that are unwanted, and what nothing else leads to. */
  unrelate(from: string, unwanted: (link: Relationship) => boolean): void {
    const links = this.relationships(from).filter(unwanted);
    if (links.length === 0) return;
    const before = this.reached();
    const dropped = this.dropped.get(from) ?? new Set();
    this.dropped.set(from, dropped);
    let xml = this.xml(relationshipsPart(from)) ?? '';
    for (const { id } of links) {
      dropped.add(id);
      xml = withoutElement(xml, 'Relationship', 'Id', id);
    }
    this.set(relationshipsPart(from), xml);
    const after = this.reached();
    for (const part of before) if (!after.has(part)) this.remove(part);
  }

  /** The relationships that a part of the opened package still has. */
  relationships(part: string): Relationship[] {
    const dropped = this.dropped.get(part);
    return this.opened.relationships(part).filter(({ id }) => !dropped?.has(id));
  }

  private reached(): Set<string> {
    const reached = new Set<string>();
    const waiting = [''];
    for (let part = waiting.pop(); part !== undefined; part = waiting.pop())
      for (const { target, external } of this.relationships(part)) {
        const name = external ? undefined : this.opened.entry(target)?.name;
        if (name === undefined || reached.has(name)) continue;
        reached.add(name);
        waiting.push(name);
      }
    return reached;
  }

  private remove(part: string): void {
    this.removed.add(part);
    const own = this.opened.entry(relationshipsPart(part))?.name;
    if (own !== undefined) this.removed.add(own);
    const types = '[Content_Types].xml';
    this.set(types, withoutElement(this.xml(types) ?? '', 'Override', 'PartName', `/${part}`));
  }

  toBytes(): Uint8Array {
    const { archive, codec } = this.opened;
    const bytes = (parts: ReadonlyMap<string, string>) =>
      new Map(
        [...parts]
          .filter(([name]) => !this.removed.has(name))
          .map(([name, xml]) => [name, codec.toBytes(xml)] as const),
      );
    const edits = { replaced: bytes(this.changed), removed: this.removed, added: bytes(this.added) };
    return editArchive(archive, edits, codec);
  }
}

function relationshipsPart(part: string): string {
  const slash = part.lastIndexOf('/') + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

/** Text for an attribute's value; a line break in the format's own escape, which programs put into headings. */
export const attributeText = (text: string): string =>
  encodeString(text).replaceAll('"', '&quot;').replaceAll('\n', '_x000a_').replaceAll('\t', '_x0009_');

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

/** A part as seen from another: `../tables/table1.xml`. Some readers take targets from the root for missing. */
function relativeTarget(from: string, to: string): string {
  const [here, there] = [from.split('/').slice(0, -1), to.split('/')];
  let shared = 0;
  while (shared < here.length && here[shared] === there[shared]) shared++;
  return [...here.slice(shared).map(() => '..'), ...there.slice(shared)].join('/');
}
