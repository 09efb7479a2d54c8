import type { Codec } from './codec.js';
import { concatenate } from './concatenate.js';
import type { ZipArchive, ZipEntry } from './readArchive.js';

interface Piece {
  bytes: Uint8Array;
  central: Uint8Array;
}

/**
 * The archive with some entries' contents replaced. Every other entry keeps its packed bytes, header
 * and place; so do names, dates, attributes and the archive comment.
 */
export function writeArchive(
  archive: ZipArchive,
  replaced: Map<string, Uint8Array>,
  codec: Codec,
): Uint8Array {
  if (replaced.size === 0) return archive.bytes.slice();
  const byPlace = [...archive.entries].sort((a, b) => a.headerStart - b.headerStart);
  const pieces = new Map<ZipEntry, Piece>();
  let offset = 0;
  byPlace.forEach((entry, i) => {
    const content = replaced.get(entry.name);
    const next = byPlace[i + 1]?.headerStart ?? archive.directoryStart;
    const piece = content ? rewritten(archive, entry, content, codec) : kept(archive, entry, next);
    new DataView(piece.central.buffer).setUint32(42, offset, true);
    pieces.set(entry, piece);
    offset += piece.bytes.length;
  });
  const centrals = archive.entries.map((entry) => (pieces.get(entry) as Piece).central);
  const end = endRecord(archive, offset, centrals);
  return concatenate([...byPlace.map((entry) => (pieces.get(entry) as Piece).bytes), ...centrals, end]);
}

function kept(archive: ZipArchive, entry: ZipEntry, end: number): Piece {
  return {
    bytes: archive.bytes.subarray(entry.headerStart, end),
    central: smallCentral(archive, entry, entry),
  };
}

function rewritten(archive: ZipArchive, entry: ZipEntry, content: Uint8Array, codec: Codec): Piece {
  const packed = entry.method === 0 ? content : codec.deflate(content);
  const sizes = { packedSize: packed.length, size: content.length, crc: codec.crc32(content) };
  const nameLength = archive.view.getUint16(entry.headerStart + 26, true);
  const header = archive.bytes.slice(entry.headerStart, entry.headerStart + 30 + nameLength);
  const view = new DataView(header.buffer);
  view.setUint16(6, view.getUint16(6, true) & ~8, true);
  view.setUint32(14, sizes.crc, true);
  view.setUint32(18, sizes.packedSize, true);
  view.setUint32(22, sizes.size, true);
  view.setUint16(28, 0, true);
  const central = smallCentral(archive, entry, sizes);
  const centralView = new DataView(central.buffer);
  centralView.setUint16(8, centralView.getUint16(8, true) & ~8, true);
  return { bytes: concatenate([header, packed]), central };
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

function endRecord(archive: ZipArchive, start: number, centrals: Uint8Array[]): Uint8Array {
  const end = new Uint8Array(22 + archive.comment.length);
  const view = new DataView(end.buffer);
  view.setUint32(0, 0x06054b50, true);
  view.setUint16(8, centrals.length, true);
  view.setUint16(10, centrals.length, true);
  view.setUint32(
    12,
    centrals.reduce((sum, record) => sum + record.length, 0),
    true,
  );
  view.setUint32(16, start, true);
  view.setUint16(20, archive.comment.length, true);
  end.set(archive.comment, 22);
  return end;
}
