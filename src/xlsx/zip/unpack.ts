import { Inflate } from 'fflate';
import { limits } from '../limits';
import { refuseWorkbook } from '../refusal';
import { crc32 } from './crc32';
import type { ZipArchive, ZipEntry } from './readArchive';

const step = 16 * 1024;

/** Unpacks one entry, counting what comes out: a wrong declared size ends the reading at once. */
export function unpack(archive: ZipArchive, entry: ZipEntry): Uint8Array {
  checkDeclared(entry);
  const packed = archive.bytes.subarray(entry.dataStart, entry.dataStart + entry.packedSize);
  if (entry.method !== 0 && entry.method !== 8) {
    refuseWorkbook(
      `The file is refused: part ${JSON.stringify(entry.name)} is packed in a way that .xlsx does not use.`,
    );
  }
  const whole = entry.method === 0 ? packed : inflate(packed, entry);
  if (whole.length !== entry.size || crc32(whole) !== entry.crc) {
    refuseWorkbook(`The file is damaged: part ${JSON.stringify(entry.name)} does not match its check sum.`);
  }
  return whole;
}

function checkDeclared(entry: ZipEntry): void {
  const tooLarge = entry.size > limits.part;
  const tooDense = entry.size > limits.ratioFrom && entry.size > limits.ratio * entry.packedSize;
  if (tooLarge || tooDense) refuseBomb(entry);
}

function refuseBomb(entry: ZipEntry): never {
  return refuseWorkbook(
    `The file is refused: part ${JSON.stringify(entry.name)} unpacks to more than a workbook may hold here.`,
  );
}

function inflate(packed: Uint8Array, entry: ZipEntry): Uint8Array {
  const out = new Uint8Array(entry.size);
  let length = 0;
  const stream = new Inflate((chunk) => {
    if (length + chunk.length > entry.size) refuseBomb(entry);
    out.set(chunk, length);
    length += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length; at += step) {
      stream.push(packed.subarray(at, at + step), at + step >= packed.length);
    }
  } catch (error) {
    if (error instanceof Error && error.name === 'WorkbookRefused') throw error;
    refuseWorkbook(`The file is damaged: part ${JSON.stringify(entry.name)} cannot be unpacked.`);
  }
  return length === entry.size ? out : out.subarray(0, length);
}
