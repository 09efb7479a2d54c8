import { atOnce, type Pausing } from '../pausing.js';
import type { Codec } from './codec.js';
import { concatenate } from './concatenate.js';
import { packBytes } from './inPieces.js';
import type { ZipArchive, ZipEntry } from './readArchive.js';

/** Content that is deflated already, with the size and the check sum that it has unpacked. */
export interface Packed {
  packed: Uint8Array;
  size: number;
  crc: number;
}

/** What is to become of an archive's entries, by name. */
export interface ArchiveEdits {
  replaced: ReadonlyMap<string, Uint8Array | Packed>;
  removed?: ReadonlySet<string>;
  added?: ReadonlyMap<string, Uint8Array | Packed>;
}

interface Piece {
  bytes: Uint8Array;
  central: Uint8Array;
}

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const UTF8 = 0x800;
const DEFLATED = 8;
/** 1 January 1980, the earliest date of the format: a copy says nothing of when it was made. */
const DATE = 0x21;

/**
 * The archive with entries replaced, removed and added. Every other entry keeps its packed bytes, header and place; so
 * do names, dates, attributes and the archive comment.
 */
export function writeArchive(archive: ZipArchive, edits: ArchiveEdits, codec: Codec): Uint8Array {
  return atOnce(writingArchive(archive, edits, codec));
}

/** The same, with rests. */
export function* writingArchive(
  archive: ZipArchive,
  { replaced, removed = new Set(), added = new Map() }: ArchiveEdits,
  codec: Codec,
): Pausing<Uint8Array> {
  if (replaced.size + removed.size + added.size === 0) return archive.bytes.slice();
  const pieces: Uint8Array[] = [];
  let offset = 0;
  const put = ({ bytes, central }: Piece): Uint8Array => {
    new DataView(central.buffer).setUint32(42, offset, true);
    pieces.push(bytes);
    offset += bytes.length;
    return central;
  };
  const centrals = new Map<ZipEntry, Uint8Array>();
  const byPlace = [...archive.entries].sort((a, b) => a.headerStart - b.headerStart);
  for (const [i, entry] of byPlace.entries()) {
    if (removed.has(entry.name)) continue;
    const content = replaced.get(entry.name);
    const next = byPlace[i + 1]?.headerStart ?? archive.directoryStart;
    const piece = content ? yield* rewritten(archive, entry, content, codec) : kept(archive, entry, next);
    centrals.set(entry, put(piece));
  }
  const directory = archive.entries.flatMap((entry) => centrals.get(entry) ?? []);
  for (const [name, content] of added) directory.push(put(yield* newEntry(name, content, codec)));
  return concatenate([...pieces, ...directory, endRecord(offset, directory, archive.comment)]);
}

function kept(archive: ZipArchive, entry: ZipEntry, end: number): Piece {
  return {
    bytes: archive.bytes.subarray(entry.headerStart, end),
    central: smallCentral(archive, entry, entry),
  };
}

function* rewritten(
  archive: ZipArchive,
  entry: ZipEntry,
  content: Uint8Array | Packed,
  codec: Codec,
): Pausing<Piece> {
  const { packed, size, crc } = yield* packedOf(content, codec);
  const sizes = { packedSize: packed.length, size, crc };
  const nameLength = archive.view.getUint16(entry.headerStart + 26, true);
  const header = archive.bytes.slice(entry.headerStart, entry.headerStart + 30 + nameLength);
  const view = new DataView(header.buffer);
  view.setUint16(6, view.getUint16(6, true) & ~8, true);
  deflated(view, 4);
  view.setUint32(14, sizes.crc, true);
  view.setUint32(18, sizes.packedSize, true);
  view.setUint32(22, sizes.size, true);
  view.setUint16(28, 0, true);
  const central = smallCentral(archive, entry, sizes);
  const centralView = new DataView(central.buffer);
  centralView.setUint16(8, centralView.getUint16(8, true) & ~8, true);
  deflated(centralView, 6);
  return { bytes: concatenate([header, packed]), central };
}

/** A header says that its entry is deflated, which takes version 2.0 of the format. */
function deflated(header: DataView, at: number): void {
  header.setUint16(at, Math.max(20, header.getUint16(at, true)), true);
  header.setUint16(at + 4, DEFLATED, true);
}

function* packedOf(content: Uint8Array | Packed, codec: Codec): Pausing<Packed> {
  return 'packed' in content ? content : yield* packBytes(content, codec);
}

/** The directory record with the sizes in their 32-bit fields, without the 64-bit extra field. */
function smallCentral(
  archive: ZipArchive,
  entry: ZipEntry,
  sizes: { crc: number; packedSize: number; size: number },
): Uint8Array {
  const record = archive.bytes.slice(entry.centralStart, entry.centralEnd);
  const view = new DataView(record.buffer);
  const extraStart = 46 + view.getUint16(28, true);
  const extraEnd = extraStart + view.getUint16(30, true);
  const fields: Uint8Array[] = [];
  for (let at = extraStart; at + 4 <= extraEnd; ) {
    const next = at + 4 + view.getUint16(at + 2, true);
    if (view.getUint16(at, true) !== 1) fields.push(record.subarray(at, next));
    at = next;
  }
  const extra = concatenate(fields);
  const out = concatenate([record.subarray(0, extraStart), extra, record.subarray(extraEnd)]);
  const outView = new DataView(out.buffer);
  outView.setUint32(16, sizes.crc, true);
  outView.setUint32(20, sizes.packedSize, true);
  outView.setUint32(24, sizes.size, true);
  outView.setUint16(30, extra.length, true);
  return out;
}

function* newEntry(name: string, content: Uint8Array | Packed, codec: Codec): Pausing<Piece> {
  const encoded = new TextEncoder().encode(name);
  const { packed, size, crc } = yield* packedOf(content, codec);
  const fields = (view: DataView, at: number) => {
    view.setUint16(at, 20, true);
    view.setUint16(at + 2, UTF8, true);
    view.setUint16(at + 4, DEFLATED, true);
    view.setUint16(at + 8, DATE, true);
    view.setUint32(at + 10, crc, true);
    view.setUint32(at + 14, packed.length, true);
    view.setUint32(at + 18, size, true);
    view.setUint16(at + 22, encoded.length, true);
  };
  const local = new DataView(new ArrayBuffer(30));
  local.setUint32(0, LOCAL, true);
  fields(local, 4);
  const central = new DataView(new ArrayBuffer(46));
  central.setUint32(0, CENTRAL, true);
  central.setUint16(4, 20, true);
  fields(central, 6);
  return {
    bytes: concatenate([new Uint8Array(local.buffer), encoded, packed]),
    central: concatenate([new Uint8Array(central.buffer), encoded]),
  };
}

function endRecord(start: number, centrals: readonly Uint8Array[], comment: Uint8Array): Uint8Array {
  const view = new DataView(new ArrayBuffer(22));
  view.setUint32(0, END, true);
  view.setUint16(8, centrals.length, true);
  view.setUint16(10, centrals.length, true);
  view.setUint32(12, concatenate(centrals).length, true);
  view.setUint32(16, start, true);
  view.setUint16(20, comment.length, true);
  return concatenate([new Uint8Array(view.buffer), comment]);
}
