import { refuseWorkbook } from '../refusal/refusal.js';

export interface Directory {
  start: number;
  count: number;
  comment: Uint8Array;
}

const END = 0x06054b50;
const END_64 = 0x06064b50;
const LOCATOR_64 = 0x07064b50;

/** Finds the end record of a zip archive, or says in one sentence what the file is instead. */
export function findDirectory(bytes: Uint8Array, view: DataView): Directory {
  const earliest = Math.max(0, bytes.length - 22 - 0xffff);
  for (let at = bytes.length - 22; at >= earliest; at--) {
    if (view.getUint32(at, true) !== END) continue;
    if (at + 22 + view.getUint16(at + 20, true) !== bytes.length) continue;
    const comment = bytes.slice(at + 22);
    return { ...(largeDirectory(view, at) ?? smallDirectory(view, at)), comment };
  }
  return refuseOther(bytes);
}

function smallDirectory(view: DataView, at: number): { start: number; count: number } {
  const directory = { start: view.getUint32(at + 16, true), count: view.getUint16(at + 10, true) };
  if (directory.start > at)
    refuseWorkbook('The file is cut off or damaged: get a fresh copy, or open and save it again.');
  return directory;
}

function largeDirectory(view: DataView, end: number): { start: number; count: number } | undefined {
  const locator = end - 20;
  if (locator < 0 || view.getUint32(locator, true) !== LOCATOR_64) return undefined;
  const at = Number(view.getBigUint64(locator + 8, true));
  if (at + 56 > locator || view.getUint32(at, true) !== END_64) return undefined;
  const start = Number(view.getBigUint64(at + 48, true));
  const count = Number(view.getBigUint64(at + 32, true));
  if (start > at)
    refuseWorkbook('The file is cut off or damaged: get a fresh copy, or open and save it again.');
  return { start, count };
}

const startsWith = (bytes: Uint8Array, signature: number[]) =>
  signature.every((byte, i) => bytes[i] === byte);

function refuseOther(bytes: Uint8Array): never {
  if (bytes.length === 0) refuseWorkbook('The file is empty.');
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    const encrypted = holdsUtf16(bytes, 'EncryptedPackage');
    refuseWorkbook(
      encrypted
        ? 'The workbook is protected with a password: save a copy without one and try again.'
        : 'The file is in the old .xls format: save it as .xlsx and try again.',
    );
  }
  if (startsWith(bytes, [0x50, 0x4b])) {
    refuseWorkbook('The file is cut off or damaged: get a fresh copy, or open and save it again.');
  }
  return refuseWorkbook('The file is not an .xlsx workbook: save it as .xlsx and try again.');
}

function holdsUtf16(bytes: Uint8Array, text: string): boolean {
  const wanted = [...text].flatMap((letter) => [letter.charCodeAt(0), 0]);
  const first = wanted[0] as number;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (wanted.every((byte, i) => bytes[at + i] === byte)) return true;
  }
  return false;
}
