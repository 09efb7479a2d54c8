import { promisify } from 'node:util';
import zlib from 'node:zlib';
import { concatenate } from '../../xlsx/zip/concatenate.js';
import type { Packed } from '../../xlsx/zip/writeArchive.js';

/*
 * A long text is packed while it is put together: piece by piece, in the threads that the platform has for it. Neither the
 * text nor its bytes are ever there as a whole.
 */

const deflate = promisify<zlib.InputType, zlib.ZlibOptions, Buffer>(zlib.deflateRaw);

/** How far back a packed text may refer (RFC 1951, clause 2). */
const farthest = 32 * 1024;
/** Pieces that are packed at a time while the next one is made. */
const atATime = 4;

/** Packs a text of one character per byte; undefined where there is no piece of it. */
export async function packPieces(pieces: Iterable<string>): Promise<Packed | undefined> {
  const done: Uint8Array[] = [];
  const running: Promise<Buffer>[] = [];
  let before: Buffer | undefined;
  let [size, crc] = [0, 0];
  for (const piece of pieces) {
    const bytes = Buffer.from(piece, 'latin1');
    size += bytes.length;
    crc = zlib.crc32(bytes, crc);
    // Each block ends at a whole byte and refers back into the one before, so that they make one stream.
    const dictionary = before?.subarray(-farthest);
    const options = { level: 6, finishFlush: zlib.constants.Z_SYNC_FLUSH, ...(dictionary && { dictionary }) };
    running.push(deflate(bytes, options));
    before = bytes;
    if (running.length > atATime) done.push(await (running.shift() as Promise<Buffer>));
  }
  if (before === undefined) return undefined;
  const end = zlib.deflateRawSync('');
  return { packed: concatenate([...done, ...(await Promise.all(running)), end]), size, crc };
}
