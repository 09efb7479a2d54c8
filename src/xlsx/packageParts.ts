import { type Package, type Relationship, relationshipsPart } from './package.js';
import { atOnce, type Pausing } from './pausing.js';
import { refuseWorkbook } from './refusal/refusal.js';
import { XmlElement, type XmlPart } from './xml/element.js';
import { packText } from './zip/inPieces.js';
import { type Packed, writingArchive } from './zip/writeArchive.js';

const contentTypes = '[Content_Types].xml';
const relationshipTypes = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const noRelationships = `${xmlHead}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>`;

/** A part that may be changed, and its text before. */
type OpenedPart = XmlPart & { was: string };

/** The parts of a package on their way to becoming another: as they are until changed, removed or added. */
export class PackageParts {
  private readonly changed = new Map<string, string>();
  private readonly opened = new Map<string, OpenedPart>();
  private readonly added = new Map<string, string>();
  private readonly gone = new Set<string>();
  private readonly dropped = new Map<string, Set<string>>();

  /** @param known the texts of parts that somebody has unpacked already */
  constructor(
    private readonly source: Package,
    private readonly known: ReadonlyMap<string, string> = new Map(),
  ) {}

  /** The names of parts that are taken out. */
  get removed(): readonly string[] {
    return [...this.gone];
  }

  /** The name as the package spells it; undefined where it has no such part. */
  named(part: string): string | undefined {
    return this.source.entry(part)?.name ?? (this.added.has(part) ? part : undefined);
  }

  /** A part as it stands now. */
  xml(part: string): string | undefined {
    const name = this.named(part);
    if (name === undefined || this.gone.has(name)) return undefined;
    return (
      this.opened.get(name)?.toString() ??
      this.added.get(name) ??
      this.changed.get(name) ??
      this.known.get(name) ??
      this.source.xml(name)
    );
  }

  /** The outermost element of a part, for changing it; undefined where there is no such part. */
  find(part: string): XmlElement | undefined {
    const name = this.named(part) ?? part;
    const before = this.gone.has(name) ? undefined : this.opened.get(name);
    if (before) return before.root;
    const was = this.xml(name);
    if (was === undefined) return undefined;
    const opened = { ...XmlElement.part(was), was };
    this.opened.set(name, opened);
    return opened.root;
  }

  /** The same, of a part that must be there. */
  root(part: string): XmlElement {
    return (
      this.find(part) ?? refuseWorkbook(`The file is damaged: its part ${JSON.stringify(part)} is missing.`)
    );
  }

  /** Reads a large part with rests, so that `root` has its elements and those inside them. */
  *readingRoot(part: string): Pausing<void> {
    const name = this.named(part) ?? part;
    const was = this.opened.has(name) ? undefined : this.xml(name);
    if (was === undefined) return;
    const opened = { ...(yield* XmlElement.readingPart(was)), was };
    this.opened.set(name, opened);
    yield* opened.root.readingInside();
    for (const child of opened.root.children) yield* child.readingInside();
  }

  set(part: string, xml: string): void {
    const name = this.named(part) ?? part;
    if (xml === this.xml(name)) return;
    this.opened.delete(name);
    this.keep(name, xml);
  }

  private keep(name: string, xml: string): void {
    if (this.source.entry(name)) this.changed.set(name, xml);
    else this.added.set(name, xml);
  }

  /** Adds a part with its content type. */
  add(part: string, xml: string, contentType: string): void {
    this.set(part, xml.startsWith('<?xml') ? xml : xmlHead + xml);
    this.root(contentTypes).insert(`<Override PartName="/${part}" ContentType="${contentType}"/>`);
  }

  remove(part: string): void {
    const name = this.named(part);
    if (name !== undefined) this.gone.add(name);
  }

  /** A free name such as `xl/tables/table7.xml`. */
  freeName(before: string, after: string): string {
    for (let number = 1; ; number++) {
      const name = `${before}${number}${after}`;
      if (this.named(name) === undefined) return name;
    }
  }

  /** The part that lists the sheets. */
  workbookPart(): string {
    const link = this.source.relationships('').find(({ type }) => type === 'officeDocument');
    return this.named(link?.target ?? 'xl/workbook.xml') ?? 'xl/workbook.xml';
  }

  /** The relationships that a part of the opened package still has. */
  relationships(part: string): Relationship[] {
    const dropped = this.dropped.get(part);
    return this.source.relationships(part).filter(({ id }) => !dropped?.has(id));
  }

  /** Relates a part to another; gives the id of the relationship. */
  relate(from: string, type: string, to: string): string {
    const part = relationshipsPart(from);
    if (this.xml(part) === undefined) this.set(part, noRelationships);
    const links = this.root(part);
    const taken = new Set(links.children.map((link) => link.attribute('Id')));
    let number = 1;
    while (taken.has(`rId${number}`)) number++;
    const target = relativeTarget(from, to);
    links.insert(`<Relationship Id="rId${number}" Type="${relationshipTypes}/${type}" Target="${target}"/>`);
    return `rId${number}`;
  }

  /** Takes out relationships of a part; what they led to stays. */
  drop(from: string, unwanted: (link: Relationship) => boolean): void {
    const ids = this.relationships(from)
      .filter(unwanted)
      .map(({ id }) => id);
    if (ids.length === 0) return;
    this.dropped.set(from, new Set([...(this.dropped.get(from) ?? []), ...ids]));
    this.root(relationshipsPart(from)).keep((link) => !ids.includes(link.attribute('Id') ?? ''));
  }

  /** Takes out relationships of a part, and the parts that nothing else leads to. */
  unrelate(from: string, unwanted: (link: Relationship) => boolean): void {
    const before = this.reached();
    this.drop(from, unwanted);
    const after = this.reached();
    for (const part of before) {
      if (after.has(part)) continue;
      this.remove(part);
      this.remove(relationshipsPart(part));
    }
  }

  /** Removes every part that nothing leads to any more. */
  removeUnreachable(): void {
    const reached = this.reached();
    const links = ['', ...reached].map((part) => relationshipsPart(part).toLowerCase());
    for (const { name } of this.source.archive.entries) {
      const isKept = name === contentTypes || reached.has(name) || links.includes(name.toLowerCase());
      if (!isKept && !name.endsWith('/')) this.gone.add(name);
    }
  }

  private reached(): Set<string> {
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
    return reached;
  }

  toBytes(): Uint8Array {
    return atOnce(this.packing());
  }

  /** The same, with rests. */
  *packing(): Pausing<Uint8Array> {
    this.removeContentTypes();
    const { archive, codec } = this.source;
    const [replaced, added] = [new Map<string, Packed>(), new Map<string, Packed>()];
    for (const name of new Set([...this.changed.keys(), ...this.added.keys(), ...this.opened.keys()])) {
      const pieces = this.gone.has(name) ? undefined : yield* this.written(name);
      if (pieces) (this.source.entry(name) ? replaced : added).set(name, yield* packText(pieces, codec));
    }
    return yield* writingArchive(archive, { replaced, removed: this.gone, added }, codec);
  }

  /** A part as it is to be written; undefined where nothing became of it. */
  private *written(name: string): Pausing<readonly string[] | undefined> {
    const opened = this.opened.get(name);
    const pieces = opened && (yield* opened.writing());
    if (pieces && !isText(opened.was, pieces)) return pieces;
    const text = this.added.get(name) ?? this.changed.get(name);
    return text === undefined ? undefined : [text];
  }

  private removeContentTypes(): void {
    const names = new Set([...this.gone].map((name) => `/${name}`.toLowerCase()));
    if (names.size === 0) return;
    this.root(contentTypes).keep((type) => !names.has((type.attribute('PartName') ?? '').toLowerCase()));
  }
}

/** Whether the pieces are the text. */
function isText(text: string, pieces: readonly string[]): boolean {
  let at = 0;
  return (
    pieces.reduce((sum, { length }) => sum + length, 0) === text.length &&
    pieces.every((piece) => text.startsWith(piece, (at += piece.length) - piece.length))
  );
}

/** A part as seen from another: `../tables/table1.xml`. Some readers take targets from the root for missing. */
function relativeTarget(from: string, to: string): string {
  const [here, there] = [from.split('/').slice(0, -1), to.split('/')];
  let shared = 0;
  while (shared < here.length && here[shared] === there[shared]) shared++;
  return [...here.slice(shared).map(() => '..'), ...there.slice(shared)].join('/');
}
