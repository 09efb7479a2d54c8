import { refuseWorkbook } from '../refusal/refusal.js';
import type { Package, Relationship } from '../package.js';
import { cutElements } from '../xml/cutElements.js';
import { XmlReader } from '../xml/reader.js';

export const contentTypes = '[Content_Types].xml';

/** The parts of a package on their way to becoming another: as they are until changed, removed or added. */
export class Parts {
  private readonly changed = new Map<string, string>();
  private readonly gone = new Set<string>();
  private readonly fresh = new Map<string, string>();
  private readonly dropped = new Map<string, Set<string>>();

  constructor(readonly source: Package) {}

  get names(): string[] {
    const kept = this.source.archive.entries.map(({ name }) => name).filter((name) => !this.gone.has(name));
    return [...kept, ...this.fresh.keys()];
  }

  /** The name as the package spells it. */
  named(part: string): string | undefined {
    return this.source.entry(part)?.name ?? (this.fresh.has(part) ? part : undefined);
  }

  text(part: string): string | undefined {
    const name = this.named(part);
    if (name === undefined || this.gone.has(name)) return undefined;
    return this.fresh.get(name) ?? this.changed.get(name) ?? this.source.xml(name);
  }

  needed(part: string): string {
    return (
      this.text(part) ?? refuseWorkbook(`The file is damaged: its part ${JSON.stringify(part)} is missing.`)
    );
  }

  put(part: string, text: string): void {
    const name = this.named(part) ?? part;
    if (text === this.text(name)) return;
    if (this.source.entry(name)) this.changed.set(name, text);
    else this.fresh.set(name, text);
  }

  remove(part: string): void {
    const name = this.named(part);
    if (name !== undefined) this.gone.add(name);
  }

  /** The part that lists the sheets. */
  workbookPart(): string {
    const link = this.source.relationships('').find(({ type }) => type === 'officeDocument');
    return this.named(link?.target ?? 'xl/workbook.xml') ?? 'xl/workbook.xml';
  }

  get removed(): readonly string[] {
    return [...this.gone];
  }

  /** What the archive's writer is to do. */
  edits() {
    const bytes = (parts: Map<string, string>) =>
      new Map(
        [...parts]
          .filter(([name]) => !this.gone.has(name))
          .map(([name, text]): [string, Uint8Array] => [name, this.source.codec.toBytes(text)]),
      );
    return { replaced: bytes(this.changed), removed: this.gone, added: bytes(this.fresh) };
  }

  /** Those that are left. */
  relationships(part: string): Relationship[] {
    const dropped = this.dropped.get(part);
    return this.source.relationships(part).filter(({ id }) => !dropped?.has(id));
  }

  dropRelationships(part: string, unwanted: (link: Relationship) => boolean): void {
    const ids = this.relationships(part)
      .filter(unwanted)
      .map(({ id }) => id);
    if (ids.length === 0) return;
    this.dropped.set(part, new Set([...(this.dropped.get(part) ?? []), ...ids]));
    const goes = new Set(ids);
    const kept = cutElements(
      this.needed(relationshipsPart(part)),
      (reader) => reader.name === 'Relationship' && goes.has(reader.attribute('Id') ?? ''),
    );
    this.put(relationshipsPart(part), kept);
  }

  /** Removes a part that nothing leads to any more, with its own relationships and its content type. */
  removeUnreachable(): void {
    const reached = new Set<string>();
    const waiting = [''];
    for (let part = waiting.pop(); part !== undefined; part = waiting.pop()) {
      for (const { target, external } of this.relationships(part)) {
        const name = external ? undefined : this.named(target);
        if (name === undefined || reached.has(name)) continue;
        reached.add(name);
        waiting.push(name);
      }
    }
    const kept = new Set([...reached].map(relationshipsPart).concat(relationshipsPart('')));
    const lower = new Set([...kept].map((name) => name.toLowerCase()));
    for (const name of this.names) {
      const stays = name === contentTypes || reached.has(name) || lower.has(name.toLowerCase());
      if (!stays && !this.fresh.has(name) && !name.endsWith('/')) this.gone.add(name);
    }
    this.removeContentTypes();
  }

  removeContentTypes(): void {
    this.put(contentTypes, withoutContentTypes(this.needed(contentTypes), this.removed));
  }
}

export function relationshipsPart(part: string): string {
  const slash = part.lastIndexOf('/') + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

/** Takes out the content types of parts that are gone. */
function withoutContentTypes(xml: string, gone: readonly string[]): string {
  const names = new Set(gone.map((name) => `/${name}`.toLowerCase()));
  return cutElements(
    xml,
    (reader) => reader.name === 'Override' && names.has((reader.attribute('PartName') ?? '').toLowerCase()),
  );
}

/** Puts text before the closing tag of the outermost element. */
export function appendedTo(xml: string, element: string, text: (prefix: string) => string): string {
  const reader = new XmlReader(xml);
  let prefix = '';
  while (reader.next()) {
    if (reader.name !== element) continue;
    prefix = reader.prefix;
    if (reader.closing) return xml.slice(0, reader.tagStart) + text(prefix) + xml.slice(reader.tagStart);
    if (reader.empty) {
      const open = xml.slice(reader.tagStart, reader.tagEnd - 2).trimEnd();
      return `${xml.slice(0, reader.tagStart)}${open}>${text(prefix)}</${prefix}${element}>${xml.slice(reader.tagEnd)}`;
    }
  }
  return refuseWorkbook(`The file is damaged: it has no element ${element} where one belongs.`);
}
