import { limits } from '../refusal/limits.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import type { Pausing } from '../pausing.js';
import type { Codec } from './codec.js';
import { checkSum } from './inPieces.js';
import type { ZipArchive, ZipEntry } from './readArchive.js';

/** Unpacks one entry, counting what comes out: a wrong declared size ends the reading at once. */
export function* unpack(archive: ZipArchive, entry: ZipEntry, codec: Codec): Pausing<Uint8Array> {
  checkDeclared(entry);
  const packed = archive.bytes.subarray(entry.dataStart, entry.dataStart + entry.packedSize);
  if (entry.method !== 0 && entry.method !== 8) {
    refuseWorkbook(
      `The file is refused: part ${JSON.stringify(entry.name)} is packed in a way that .xlsx does not use.`,
    );
  }
  const whole = entry.method === 0 ? packed : yield* inflate(packed, entry, codec);
  if (whole.length !== entry.size || (yield* checkSum(whole, codec)) !== entry.crc) {
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

function* inflate(packed: Uint8Array, entry: ZipEntry, codec: Codec): Pausing<Uint8Array> {
  let whole: Uint8Array | undefined;
  try {
    whole = yield* codec.inflate(packed, entry.size);
  } catch {
    return refuseWorkbook(`The file is damaged: part ${JSON.stringify(entry.name)} cannot be unpacked.`);
  }
  return whole ?? refuseBomb(entry);
}
