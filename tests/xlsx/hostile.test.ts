import { deflateSync, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { WorkbookRefused } from '../../src/xlsx/refusal/refusal.js';
import { buildWorkbook, MAIN, workbookParts, zipParts } from './support/buildWorkbook.js';
import { processorMs } from '../support/processorMs.js';

/** One sentence: it ends with a full stop, and no other sentence starts within. */
const isSentence = (text: string) => /^[A-Z].*\.$/.test(text) && !/[.!?]\s+[A-Z]/.test(text);

/** The sentence a file is refused with; fails when it is not refused or takes more than one sentence. */
function refusal(bytes: Uint8Array): string {
  try {
    openWorkbook(bytes);
  } catch (error) {
    expect(error).toBeInstanceOf(WorkbookRefused);
    const { message } = error as WorkbookRefused;
    expect(message).toSatisfy(isSentence);
    return message;
  }
  throw new Error('The file was not refused.');
}

const ordinary = () =>
  buildWorkbook([
    {
      name: 'Quote',
      rows: [
        ['Mark', 1],
        ['A1', 2],
      ],
    },
  ]);

describe('files that are no .xlsx workbook', () => {
  it.each([
    ['nothing', new Uint8Array(0), 'The file is empty.'],
    ['text', strToU8('Mark,Qty\nA1,2\n'), 'The file is not an .xlsx workbook'],
    ['a zip of something else', zipSync({ 'a.txt': strToU8('x') }), 'zip archive, but not an .xlsx workbook'],
    ['an .ods', zipSync({ mimetype: strToU8('x'), 'content.xml': strToU8('<x/>') }), 'OpenDocument'],
    [
      'an .xls',
      Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Array<number>(600).fill(0)),
      'old .xls format',
    ],
  ])('%s is refused in one sentence', (_, bytes, part) => {
    expect(refusal(bytes)).toContain(part);
  });

  it('a workbook with a password is told apart', () => {
    const name = [...'EncryptedPackage'].flatMap((letter) => [letter.charCodeAt(0), 0]);
    const bytes = Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, ...new Array<number>(512).fill(0), ...name, 0, 0);
    expect(refusal(bytes)).toContain('password');
  });

  it('a text document is told apart', () => {
    const parts = workbookParts([{ name: 'Quote' }]);
    parts['_rels/.rels'] = (parts['_rels/.rels'] as string).replace('xl/workbook.xml', 'word/document.xml');
    parts['word/document.xml'] = '<w/>';
    expect(refusal(zipParts(parts))).toContain('not a workbook');
  });
});

const parts = { name: 'Parts', ref: 'A1:B1', columns: ['Mark', '1'] };

describe('truncated and damaged files', () => {
  it('cut at any place are refused in one sentence', () => {
    const whole = ordinary();
    for (let length = 0; length < whole.length; length += 7) refusal(whole.subarray(0, length));
  });

  it('with any byte of a packed part changed are refused or read without harm', () => {
    const whole = ordinary();
    let refused = 0;
    for (let at = 0; at < whole.length; at += 5) {
      const bytes = whole.slice();
      bytes[at] = (bytes[at] as number) ^ 0xff;
      try {
        openWorkbook(bytes);
      } catch (error) {
        expect(error).toBeInstanceOf(WorkbookRefused);
        refused++;
      }
    }
    expect(refused).toBeGreaterThan(whole.length / 20);
  });

  it('with broken XML are refused', () => {
    const parts = workbookParts([{ name: 'Quote', rows: [[1]] }]);
    parts['xl/worksheets/sheet1.xml'] = '<worksheet><sheetData><row r="1"><c r="A1';
    expect(refusal(zipParts(parts))).toContain('well-formed');
  });

  it('with any part that is read cut off anywhere are refused', () => {
    const whole = workbookParts([{ name: 'Quote', rows: [['Mark', 1]], tables: [parts] }]);
    for (const [name, text] of Object.entries(whole)) {
      if (name === '[Content_Types].xml') continue;
      for (let length = 1; length < text.length; length += 13)
        expect(refusal(zipParts({ ...whole, [name]: text.slice(0, length) }))).toContain('well-formed');
    }
  });
});

/** Writes the size fields of one entry, in its header and in the directory, as a liar would. */
function declareSize(bytes: Uint8Array, name: string, size: number): Uint8Array {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  const text = Buffer.from(copy);
  for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
    if (at >= 30 && view.getUint32(at - 30, true) === 0x04034b50) view.setUint32(at - 8, size, true);
    if (at >= 46 && view.getUint32(at - 46, true) === 0x02014b50) view.setUint32(at - 22, size, true);
  }
  return copy;
}

describe('bombs', () => {
  const bombParts = (megabytes: number) => {
    const filler = `<row r="1"/>`;
    const sheet = `<worksheet xmlns="${MAIN}"><sheetData>${filler.repeat((megabytes * 1_048_576) / filler.length)}</sheetData></worksheet>`;
    return { ...workbookParts([{ name: 'Quote' }]), 'xl/worksheets/sheet1.xml': sheet };
  };

  it('a part that unpacks a thousandfold is refused before it is unpacked', async () => {
    const bytes = zipParts(bombParts(24));
    expect(bytes.length).toBeLessThan(300_000);
    const spent = await processorMs(() => expect(refusal(bytes)).toContain('unpacks to more'));
    expect(spent).toBeLessThan(200);
  });

  it('a part that hides its size is stopped where its declared size ends', async () => {
    const bytes = declareSize(zipParts(bombParts(24)), 'xl/worksheets/sheet1.xml', 40_000);
    const spent = await processorMs(() => expect(refusal(bytes)).toContain('unpacks to more'));
    expect(spent).toBeLessThan(500);
  });

  it('entries that share their bytes are refused', () => {
    const bytes = ordinary();
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const end = bytes.length - 22;
    let at = view.getUint32(end + 16, true);
    const first = view.getUint32(at + 42, true);
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    view.setUint32(at + 42, first, true);
    expect(refusal(bytes)).toMatch(/overlap/);
  });

  it('more parts than any workbook has are refused', () => {
    const parts: Record<string, string> = workbookParts([{ name: 'Quote' }]);
    for (let i = 0; i < 20_001; i++) parts[`xl/media/${i}`] = '';
    expect(refusal(zipParts(parts))).toContain('20,000 parts');
  });

  it.each([
    ['<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>'],
    ['<!DOCTYPE x SYSTEM "http://192.0.2.1/x.dtd">'],
    ['<!ENTITY % x SYSTEM "file:///etc/passwd">'],
  ])('a part with %s is refused', (declaration) => {
    const parts = workbookParts([{ name: 'Quote', rows: [[1]] }]);
    for (const part of ['xl/workbook.xml', 'xl/worksheets/sheet1.xml', '_rels/.rels']) {
      const bad = { ...parts, [part]: (parts[part] as string).replace('?>', `?>${declaration}`) };
      expect(refusal(zipParts(bad))).toContain('document type or entities');
    }
  });

  it('a part in another encoding, where declarations could hide, is refused', () => {
    const files = unzipSync(ordinary());
    const text = '<?xml version="1.0" encoding="UTF-16"?><worksheet/>';
    files['xl/worksheets/sheet1.xml'] = new Uint8Array(Buffer.from(`\ufeff${text}`, 'utf16le'));
    expect(refusal(zipSync(files))).toContain('UTF-8');
  });

  it('a part that declares another encoding is refused', () => {
    const parts = workbookParts([{ name: 'Quote', rows: [['Ø']] }]);
    const sheet = 'xl/worksheets/sheet1.xml';
    parts[sheet] = (parts[sheet] as string).replace('UTF-8', 'windows-1252');
    expect(refusal(zipParts(parts))).toContain('written in windows-1252, not in UTF-8');
  });

  it('a part named with backslashes never takes the place of another', () => {
    const bytes = zipParts({
      ...workbookParts([{ name: 'Quote' }]),
      'xl\\worksheets\\sheet1.xml': '<worksheet/>',
    });
    expect(refusal(bytes)).toContain('two parts named');
  });

  it('two parts with one name are refused', () => {
    const bytes = zipParts({ ...workbookParts([{ name: 'Quote' }]), 'XL/WORKBOOK.XML': '<workbook/>' });
    expect(refusal(bytes)).toContain('two parts named');
  });

  it('deflated data that never ends is refused', () => {
    const files = workbookParts([{ name: 'Quote' }]);
    const bytes = zipParts(files);
    const packed = deflateSync(strToU8(files['xl/workbook.xml'] as string));
    const at = Buffer.from(bytes).indexOf(Buffer.from(packed.subarray(0, 40)));
    expect(at).toBeGreaterThan(0);
    bytes.fill(0xff, at, at + 30);
    refusal(bytes);
  });
});
