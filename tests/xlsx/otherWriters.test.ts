import { describe, expect, it } from 'vitest';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import { MAIN, workbookParts, zipParts } from './support/buildWorkbook.js';

const sheet = (data: string, root = `<worksheet xmlns="${MAIN}">`, close = '</worksheet>') =>
  `${root}${data}${close}`;

function values(data: string, extra: Record<string, string> = {}) {
  const parts = { ...workbookParts([{ name: 'Quote' }]), 'xl/worksheets/sheet1.xml': sheet(data), ...extra };
  return readSheetValues(zipParts(parts), 'quote');
}

const withStrings = (xml: string) => {
  const parts = workbookParts([{ name: 'Quote' }]);
  const rels = (parts['xl/_rels/workbook.xml.rels'] as string).replace(
    '</Relationships>',
    '<Relationship Id="rIdS" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sharedStrings" Target="/xl/strings.xml"/></Relationships>',
  );
  return { 'xl/_rels/workbook.xml.rels': rels, 'xl/strings.xml': `<sst>${xml}</sst>` };
};

describe('cells as various writers store them', () => {
  it('of every type', () => {
    const data =
      '<sheetData><row r="1"><c r="A1"><v>1.5</v></c><c r="B1" t="n"><v>2</v></c><c r="C1" t="b"><v>1</v></c><c r="D1" t="e"><v>#N/A</v></c><c r="E1" t="str"><f>"x"</f><v>x</v></c><c r="F1" t="inlineStr"><is><t>in</t></is></c><c r="G1" t="d"><v>2026-03-15T12:00:00</v></c><c r="H1"/><c r="I1" s="1"></c><c r="J1"><v></v></c></row></sheetData>';
    expect(values(data)).toEqual([[1.5, 2, true, { error: '#N/A' }, 'x', 'in', 46096.5, null, null, null]]);
  });

  it('without addresses, one after the other', () => {
    const data =
      '<sheetData><row><c><v>1</v></c><c><v>2</v></c></row><row r="4"><c><v>3</v></c></row><row><c r="C5"><v>4</v></c><c><v>5</v></c></row></sheetData>';
    expect(values(data)).toEqual([[1, 2], [], [], [3], [null, null, 4, 5]]);
  });

  it('with shared strings: rich text joined, phonetic guides left out, escapes and spaces kept', () => {
    const strings =
      '<si><t xml:space="preserve"> a &amp; b </t></si><si><r><rPr><b/></rPr><t>base </t></r><r><t>plate</t></r></si><si><t>課</t><rPh sb="0" eb="1"><t>カ</t></rPh></si><si><t>one_x000D_two_x005F_x0041_</t></si><si><t/></si><si/><si><t><![CDATA[<x> & y]]></t></si>';
    const cells = Array.from({ length: 7 }, (_, i) => `<c t="s"><v>${i}</v></c>`).join('');
    expect(values(`<sheetData><row>${cells}</row></sheetData>`, withStrings(strings))).toEqual([
      [' a & b ', 'base plate', '課', 'one\rtwo_x0041_', '', '', '<x> & y'],
    ]);
  });

  it('text stays text', () => {
    const texts = ['0012', '1e3', '=1+1', 'TRUE', '1/2', '#N/A', "'x"];
    const cells = texts.map((text) => `<c t="inlineStr"><is><t>${text}</t></is></c>`).join('');
    expect(values(`<sheetData><row>${cells}</row></sheetData>`)).toEqual([texts]);
  });

  it('with prefixed names, comments and processing instructions', () => {
    const parts = workbookParts([{ name: 'Quote' }]);
    parts['xl/worksheets/sheet1.xml'] =
      `<?xml version="1.0"?><!-- <c r="A9"> --><x:worksheet xmlns:x="${MAIN}"><x:sheetData><x:row r="1"><x:c r="A1"><x:f>1+1</x:f><!-- > --><x:v>2</x:v></x:c><?pi <c?></x:row></x:sheetData></x:worksheet>`;
    const workbook = openWorkbook(zipParts(parts));
    expect(workbook.sheets[0]?.cells?.values).toEqual([2]);
    expect(workbook.sheets[0]?.cells?.formulas[0]?.text).toBe('1+1');
  });

  it('with a greater-than sign inside an attribute', () => {
    expect(values('<sheetData><row r="1" x="a>b"><c r="A1" y=\'">\'><v>7</v></c></row></sheetData>')).toEqual(
      [[7]],
    );
  });
});

describe('packages as various writers store them', () => {
  it('without metadata, with the workbook in another place and absolute targets', () => {
    const parts = workbookParts([{ name: 'Quote', rows: [[3]] }]);
    const moved: Record<string, string> = {
      '[Content_Types].xml': parts['[Content_Types].xml'] as string,
      '_rels/.rels': (parts['_rels/.rels'] as string).replace('xl/workbook.xml', '/book/main.xml'),
      'book/main.xml': parts['xl/workbook.xml'] as string,
      'book/_rels/main.xml.rels': (parts['xl/_rels/workbook.xml.rels'] as string).replace(
        'worksheets/sheet1.xml',
        '/data/one.xml',
      ),
      'data/one.xml': parts['xl/worksheets/sheet1.xml'] as string,
    };
    expect(readSheetValues(zipParts(moved), 'Quote')).toEqual([[3]]);
  });

  it('in the strict dialect', () => {
    const parts = workbookParts([{ name: 'Quote', rows: [[3]] }]);
    const strict = Object.fromEntries(
      Object.entries(parts).map(([name, text]) => [
        name,
        text
          .replaceAll(
            'http://schemas.openxmlformats.org/officeDocument/2006',
            'http://purl.oclc.org/ooxml/officeDocument',
          )
          .replaceAll(MAIN, 'http://purl.oclc.org/ooxml/spreadsheetml/main'),
      ]),
    );
    expect(readSheetValues(zipParts(strict), 'Quote')).toEqual([[3]]);
  });

  it('with a chart sheet and a hidden sheet', () => {
    const parts = workbookParts([
      { name: 'Quote', rows: [[3]] },
      { name: 'Chart' },
      { name: 'Shop', state: 'hidden' },
    ]);
    const rels = parts['xl/_rels/workbook.xml.rels'] as string;
    parts['xl/_rels/workbook.xml.rels'] = rels.replace(
      /worksheet(" Target="worksheets\/sheet2)/,
      'chartsheet$1',
    );
    const { sheets } = openWorkbook(zipParts(parts));
    expect(sheets.map(({ cells }) => cells !== undefined)).toEqual([true, false, true]);
    expect(sheets.map(({ visibility }) => visibility)).toEqual(['visible', 'visible', 'hidden']);
  });
});
