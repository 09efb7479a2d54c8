import type { Codec } from './codec.js';
import { concatenate } from './concatenate.js';
import { readArchive, type ZipArchive, type ZipEntry } from './readArchive.js';
import { writeArchive } from './writeArchive.js';

/** What is to become of an archive's entries, by name. */
export interface ArchiveEdits {
  replaced: ReadonlyMap<string, Uint8Array>;
  removed: ReadonlySet<string>;
  added: ReadonlyMap<string, Uint8Array>;
}

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const UTF8 = 0x800;
const DEFLATED = 8;
/** 1 January 1980, the earliest date of the format: a copy says nothing of when it was made. */
const DATE = 0x21;

/** The archive with entries replaced, removed and added; all others keep their packed bytes. */
export function editArchive(archive: ZipArchive, edits: ArchiveEdits, codec: Codec): Uint8Array {
  const base = writeArchive(archive, new Map(edits.replaced), codec);
  if (edits.removed.size === 0 && edits.added.size === 0) return base;
  const read = readArchive(base);
  const pieces: Uint8Array[] = [];
  const centrals: Uint8Array[] = [];
  let offset = 0;
  const push = (bytes: Uint8Array, central: Uint8Array) => {
    new DataView(central.buffer).setUint32(42, offset, true);
    pieces.push(bytes);
    centrals.push(central);
    offset += bytes.length;
  };
  const byPlace = [...read.entries].sort((a, b) => a.headerStart - b.headerStart);
  byPlace.forEach((entry, at) => {
    if (edits.removed.has(entry.name)) return;
    const end = byPlace[at + 1]?.headerStart ?? read.directoryStart;
    push(base.slice(entry.headerStart, end), centralOf(read, entry));
  });
  for (const [name, content] of edits.added) {
    const { bytes, central } = newEntry(name, content, codec);
    push(bytes, central);
  }
  return concatenate([...pieces, ...centrals, endRecord(offset, centrals, read.comment)]);
}

const centralOf = ({ bytes }: ZipArchive, entry: ZipEntry) =>
  bytes.slice(entry.centralStart, entry.centralEnd);

function newEntry(name: string, content: Uint8Array, codec: Codec) {
  const encoded = new TextEncoder().encode(name);
  const packed = codec.deflate(content);
  const fields = (view: DataView, at: number) => {
    view.setUint16(at, 20, true);
    view.setUint16(at + 2, UTF8, true);
    view.setUint16(at + 4, DEFLATED, true);
    view.setUint16(at + 8, DATE, true);
    view.setUint32(at + 10, codec.crc32(content), true);
    view.setUint32(at + 14, packed.length, true);
    view.setUint32(at + 18, content.length, true);
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
