import { limits } from '../refusal/limits.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import { findDirectory } from './directory.js';

/*
 * Zip archives, as workbook packages use them: read once, refused where they are not what they say, written
 * with the packed bytes of what did not change.
 */

/** One entry of a zip archive; the offsets point into the archive's bytes. */
export interface ZipEntry {
  name: string;
  method: number;
  crc: number;
  packedSize: number;
  size: number;
  /** Where the local header starts, where the packed data starts. */
  headerStart: number;
  dataStart: number;
  /** The entry's record in the central directory. */
  centralStart: number;
  centralEnd: number;
}

export interface ZipArchive {
  bytes: Uint8Array;
  view: DataView;
  entries: ZipEntry[];
  /** Where the central directory starts, and the archive comment. */
  directoryStart: number;
  comment: Uint8Array;
}

const CENTRAL = 0x02014b50;
const LOCAL = 0x04034b50;
const NO_ROOM = 0xffffffff;
const cutOff = 'The file is cut off or damaged: get a fresh copy, or open and save it again.';

/** Reads the directory of a zip archive, nothing of its contents, and checks it against the limits. */
export function readArchive(file: Uint8Array): ZipArchive {
  // A Node Buffer's slice shares memory where a Uint8Array's copies; the writer counts on copies.
  const bytes = new Uint8Array(file.buffer, file.byteOffset, file.byteLength);
  if (bytes.length > limits.file)
    refuseWorkbook('The file is larger than 512 MB, more than a workbook may be here.');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const directory = findDirectory(bytes, view);
  if (directory.count > limits.entries)
    refuseWorkbook('The file holds more than 20,000 parts, more than a workbook may have here.');
  const entries: ZipEntry[] = [];
  let at = directory.start;
  for (let i = 0; i < directory.count; i++) {
    const entry = readEntry(bytes, view, at);
    entries.push(entry);
    at = entry.centralEnd;
  }
  checkEntries(entries, directory.start);
  return { bytes, view, entries, directoryStart: directory.start, comment: directory.comment };
}

function readEntry(bytes: Uint8Array, view: DataView, at: number): ZipEntry {
  if (at + 46 > bytes.length || view.getUint32(at, true) !== CENTRAL) refuseWorkbook(cutOff);
  const flags = view.getUint16(at + 8, true);
  const nameLength = view.getUint16(at + 28, true);
  const extraLength = view.getUint16(at + 30, true);
  const centralEnd = at + 46 + nameLength + extraLength + view.getUint16(at + 32, true);
  if (centralEnd > bytes.length) refuseWorkbook(cutOff);
  if (flags & 1)
    refuseWorkbook('The file is an encrypted zip archive: save it without a password and try again.');
  const sizes = {
    size: view.getUint32(at + 24, true),
    packedSize: view.getUint32(at + 20, true),
    headerStart: view.getUint32(at + 42, true),
  };
  readLargeSizes(view, at + 46 + nameLength, extraLength, sizes);
  const local = sizes.headerStart;
  if (local + 30 > bytes.length || view.getUint32(local, true) !== LOCAL) refuseWorkbook(cutOff);
  const dataStart = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  const name = new TextDecoder(flags & 0x800 ? 'utf-8' : 'windows-1252').decode(
    bytes.subarray(at + 46, at + 46 + nameLength),
  );
  return {
    name,
    method: view.getUint16(at + 10, true),
    crc: view.getUint32(at + 16, true),
    ...sizes,
    dataStart,
    centralStart: at,
    centralEnd,
  };
}

interface Sizes {
  size: number;
  packedSize: number;
  headerStart: number;
}

/** Some writers always use the 64-bit size fields, even for small files. */
function readLargeSizes(view: DataView, start: number, length: number, sizes: Sizes): void {
  let at = start;
  const end = start + length;
  while (at + 4 <= end) {
    const id = view.getUint16(at, true);
    let field = at + 4;
    const fieldEnd = Math.min(end, field + view.getUint16(at + 2, true));
    if (id === 1) {
      for (const key of ['size', 'packedSize', 'headerStart'] as const) {
        if (sizes[key] !== NO_ROOM) continue;
        if (field + 8 > fieldEnd) refuseWorkbook(cutOff);
        sizes[key] = Number(view.getBigUint64(field, true));
        field += 8;
      }
    }
    at = fieldEnd;
  }
}

/** What makes two names the same part: some writers put \\ where / belongs, and case does not count. */
export const partKey = (name: string): string => name.replaceAll('\\', '/').toLowerCase();

function checkEntries(entries: ZipEntry[], directoryStart: number): void {
  let declared = 0;
  let previousEnd = 0;
  const names = new Set<string>();
  for (const entry of [...entries].sort((a, b) => a.headerStart - b.headerStart)) {
    const end = entry.dataStart + entry.packedSize;
    if (end > directoryStart) refuseWorkbook(cutOff);
    if (entry.headerStart < previousEnd) {
      refuseWorkbook('The file is refused: parts of its zip archive overlap, as only crafted files do.');
    }
    previousEnd = end;
    declared += entry.size;
    const key = partKey(entry.name);
    if (names.has(key))
      refuseWorkbook(`The file is refused: it holds two parts named ${JSON.stringify(entry.name)}.`);
    names.add(key);
  }
  if (declared > limits.declared)
    refuseWorkbook('The file is refused: unpacked it would be larger than 2 GB.');
}
