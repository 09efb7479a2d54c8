// Every workbook that any test writes, by whatever way, goes through the package referee once the test has ended: all of
// them are put together by the function below.
import { createHash } from 'node:crypto';
import { afterEach, expect, vi } from 'vitest';
import type { ZipArchive } from '../../src/xlsx/zip/readArchive.js';

interface Written {
  source: Uint8Array;
  bytes: Uint8Array;
}

// Test files that share modules share the first file's doubles of them, so what was written is kept for all files.
const { written } = vi.hoisted(
  () => ((globalThis as { refereed?: { written: Written[] } }).refereed ??= { written: [] }),
);

vi.mock('../../src/xlsx/zip/writeArchive.js', async (importOriginal) => {
  const original = await importOriginal<typeof import('../../src/xlsx/zip/writeArchive.js')>();
  return {
    ...original,
    writeArchive: (...call: Parameters<typeof original.writeArchive>) => {
      const bytes = original.writeArchive(...call);
      keep(call[0], bytes);
      return bytes;
    },
    *writingArchive(...call: Parameters<typeof original.writingArchive>) {
      const bytes = yield* original.writingArchive(...call);
      keep(call[0], bytes);
      return bytes;
    },
  };
});

function keep(archive: ZipArchive, bytes: Uint8Array): void {
  written.push({ source: archive.bytes, bytes });
}

/** Packed, this is some 20,000 rows: a parser that builds a tree takes minutes for more. */
const largestPackage = 400_000;
/** What is wrong with a book, by its bytes: tests open the same file, and write the same one, many times. */
const known = new Map<string, string[]>();

afterEach(async () => {
  const books = written.splice(0).filter(({ bytes }) => bytes.length <= largestPackage);
  if (books.length === 0) return;
  const { violations } = await import('./packageReferee.js');
  const judged = (bytes: Uint8Array): string[] => {
    const hash = createHash('sha1').update(bytes).digest('base64');
    const found = known.get(hash) ?? violations(bytes);
    known.set(hash, found);
    return found;
  };
  for (const { source, bytes } of books) {
    // Files made by hand leave out what their test does not need: that is not checked against what was written.
    const before = new Set(judged(bytes).length === 0 ? [] : judged(source));
    expect(judged(bytes).filter((each) => !before.has(each))).toEqual([]);
  }
});
