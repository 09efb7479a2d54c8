import { limits } from './refusal/limits.js';
import { refuseWorkbook } from './refusal/refusal.js';
import { atOnce, type Pausing } from './pausing.js';
import { checkUtf8 } from './xml/characters.js';
import { XmlReader } from './xml/reader.js';
import { checkWellFormed } from './xml/wellFormed.js';
import type { Codec } from './zip/codec.js';
import { partKey, readArchive, type ZipArchive, type ZipEntry } from './zip/readArchive.js';
import { unpack } from './zip/unpack.js';

export interface Relationship {
  id: string;
  /** The last word of the relationship's type, such as `worksheet`: the same in both dialects. */
  type: string;
  /** The part it leads to, from the package root, without a leading slash. */
  target: string;
  external: boolean;
}

/** An opened package: parts are unpacked when asked for, within the limits, once. */
export class Package {
  readonly archive: ZipArchive;
  private readonly byName = new Map<string, ZipEntry>();
  private readonly checked = new Set<ZipEntry>();
  private readBytes = 0;
  private cells = 0;

  constructor(
    bytes: Uint8Array,
    readonly codec: Codec,
  ) {
    this.archive = readArchive(bytes);
    for (const entry of this.archive.entries) this.byName.set(partKey(entry.name), entry);
  }

  entry(part: string): ZipEntry | undefined {
    return this.byName.get(partKey(part));
  }

  /** A part's XML with one character per byte, or undefined when the package lacks it. */
  xml(part: string): string | undefined {
    return atOnce(this.read(part));
  }

  /** The same, with rests. */
  *read(part: string): Pausing<string | undefined> {
    const entry = this.entry(part);
    if (!entry) return undefined;
    this.readBytes += entry.size;
    if (this.readBytes > limits.read)
      refuseWorkbook('The file is refused: unpacked its sheets would be larger than 512 MB.');
    const bytes = yield* unpack(this.archive, entry, this.codec);
    if (bytes[0] === 0 || bytes[1] === 0 || bytes[0] === 0xfe || bytes[0] === 0xff) {
      refuseWorkbook(`The file is refused: part ${JSON.stringify(part)} is not written in UTF-8.`);
    }
    const xml = yield* this.codec.toCharacters(bytes);
    if (!this.checked.has(entry)) yield* this.check(entry, bytes, xml);
    return xml;
  }

  /** What is read is well-formed to its end, and no larger than it may be. */
  private *check(entry: ZipEntry, bytes: Uint8Array, xml: string): Pausing<void> {
    yield* checkUtf8(bytes);
    this.cells += yield* checkWellFormed(xml);
    if (this.cells > limits.cells)
      refuseWorkbook('The file is refused: its sheets hold more than 8 million cells.');
    this.checked.add(entry);
  }

  /** The relationships of a part; of the package itself when the part is ''. */
  relationships(part: string): Relationship[] {
    const folder = part.slice(0, part.lastIndexOf('/') + 1);
    const xml = this.xml(relationshipsPart(part));
    if (xml === undefined) return [];
    const found: Relationship[] = [];
    const reader = new XmlReader(xml);
    while (reader.next()) {
      if (reader.closing || reader.name !== 'Relationship') continue;
      const type = reader.attribute('Type') ?? '';
      found.push({
        id: reader.attribute('Id') ?? '',
        type: type.slice(type.lastIndexOf('/') + 1),
        target: resolveTarget(folder, reader.attribute('Target') ?? ''),
        external: reader.attribute('TargetMode') === 'External',
      });
    }
    return found;
  }
}

/** The part that holds the relationships of a part. */
export function relationshipsPart(part: string): string {
  const slash = part.lastIndexOf('/') + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

function resolveTarget(folder: string, target: string): string {
  const path = target.replace(/\\/g, '/');
  const steps = path.startsWith('/') ? [] : folder.split('/').filter(Boolean);
  for (const step of path.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(safeDecode(step));
  }
  return steps.join('/');
}

function safeDecode(step: string): string {
  try {
    return decodeURIComponent(step);
  } catch {
    return step;
  }
}
