import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { readSheetValues, recalculateWorkbook } from '../../src/headless/index.js';
import { readArchive } from '../../src/xlsx/zip/readArchive.js';
import { sampleFunctions } from './support/sample.js';
import { styledWorkbook } from './support/styledWorkbook.js';

let source: Uint8Array;
let result: Uint8Array;

beforeAll(async () => {
  source = await styledWorkbook();
  const untouched = source.slice();
  ({ bytes: result } = await recalculateWorkbook(source, sampleFunctions()));
  expect(source).toEqual(untouched);
});

const sheetPart = 'xl/worksheets/sheet1.xml';

describe('a recalculated file', () => {
  it('has the new values', () => {
    expect(readSheetValues(result, 'Quote').slice(1, 4)).toEqual([
      ['P1', 1, 2, 3],
      ['P2', 2, 4, 5],
      ['P3', 3, 6, 7],
    ]);
  });

  it('differs from its source in one worksheet part only', () => {
    const [before, after] = [unzipSync(source), unzipSync(result)];
    expect(Object.keys(after)).toEqual(Object.keys(before));
    const different = Object.keys(before).filter((name) => !same(before[name], after[name]));
    expect(different).toEqual([sheetPart]);
    for (const kind of ['comments', 'customXml', 'webextension', 'calcChain', 'styles', 'theme', 'photo']) {
      expect(
        Object.keys(before).some((name) => name.includes(kind)),
        kind,
      ).toBe(true);
    }
  });

  it('differs in that part only inside value elements', () => {
    const withoutValues = (bytes: Uint8Array) =>
      strFromU8(unzipSync(bytes)[sheetPart] as Uint8Array)
        .replace(/(<f>[^<]*<\/f>)<v>[^<]*<\/v>/g, '$1')
        .replace(/(<c [^>]*?) t="n"/g, '$1');
    expect(withoutValues(result)).toBe(withoutValues(source));
    expect(withoutValues(result)).toContain('<conditionalFormatting');
    expect(withoutValues(result)).toContain('<dataValidation');
  });

  it('keeps the packed bytes, dates and order of every other entry', () => {
    const [before, after] = [readArchive(source), readArchive(result)];
    expect(after.entries.map(({ name }) => name)).toEqual(before.entries.map(({ name }) => name));
    before.entries.forEach((entry, i) => {
      const other = after.entries[i] as typeof entry;
      if (entry.name === sheetPart) return;
      const record = (archive: typeof before, { headerStart, dataStart, packedSize }: typeof entry) =>
        archive.bytes.slice(headerStart, dataStart + packedSize);
      expect(same(record(before, entry), record(after, other)), entry.name).toBe(true);
    });
  });

  it('recalculated again is the same file, byte for byte', async () => {
    const { bytes, report } = await recalculateWorkbook(result, sampleFunctions());
    expect(report.changed).toBe(0);
    expect(same(bytes, result)).toBe(true);
  });
});

function same(a: Uint8Array | undefined, b: Uint8Array | undefined): boolean {
  return a !== undefined && b !== undefined && Buffer.compare(a, b) === 0;
}
