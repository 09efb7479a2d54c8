import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellAddress, cellKey } from '../../src/sheet/address.js';
import type { StoredValue } from '../../src/sheet/cellValue.js';
import { PartCells } from '../../src/xlsx/partCells.js';
import { patchSheet } from '../../src/xlsx/patchSheet.js';
import { atOnce } from '../../src/xlsx/pausing.js';
import { scanWorksheet } from '../../src/xlsx/worksheet.js';
import { type CellChange, writeCell } from '../../src/xlsx/writeCell.js';
import { XmlElement } from '../../src/xlsx/xml/element.js';
import { sheetChanges } from './support/sheetChanges.js';

/** The same changes by the elements of the whole part: slow, and the way that every other change of a part goes. */
function byElements(xml: string, changes: readonly CellChange[]): string {
  const part = XmlElement.part(xml);
  const cells = new PartCells(part.root);
  for (const change of changes) {
    const isNew = !cells.has(change.row, change.column);
    if (!isNew || change.value !== null) writeCell(cells.cell(change.row, change.column), change, isNew);
  }
  return String(part);
}

const cellForms = [
  (address: string) => `<c r="${address}"/>`,
  (address: string) => `<c r="${address}" s="3"/>`,
  (address: string) => `<c r="${address}"></c>`,
  (address: string) => `<c r="${address}"><v>12</v></c>`,
  (address: string) => `<c r="${address}" s="1" t="s"><v>0</v></c>`,
  (address: string) => `<c t="b" r="${address}"><f>A1&amp;"x"</f><v>1</v></c>`,
  (address: string) => `<c r="${address}" t="str"><f t="array" ref="${address}">A1:A2</f><v>a</v></c>`,
  (address: string) => `<c r="${address}"><f t="shared" si="0"/></c>`,
  (address: string) => `<c r="${address}" t="inlineStr"><is><t>old</t></is></c>`,
  (address: string) => `<c r='${address}' t='e' ><v>#N/A</v></c>`,
  (address: string) => `<c r="${address}"> <f>1</f>\n<v>2</v><extLst><ext/></extLst></c>`,
];

/** A sheet of some rows with some cells, written as different programs do. */
const sheets = fc
  .record({
    rows: fc.uniqueArray(fc.nat(12), { maxLength: 8 }),
    forms: fc.array(fc.nat(3 * cellForms.length), { minLength: 96, maxLength: 96 }),
    space: fc.constantFrom('', '\n  '),
    end: fc.constantFrom('', '<extLst><ext/></extLst>'),
    dimension: fc.constantFrom('', '<dimension ref="A1"/>', '<dimension ref="B2:D9"/>'),
    prefix: fc.constantFrom('', '', '', 'x:'),
  })
  .map(({ rows, forms, space, end, dimension, prefix }) => {
    const lines = rows
      .sort((a, b) => a - b)
      .map((row, at) => {
        const cells = Array.from({ length: 8 }, (_, column) => {
          const form = cellForms[forms[(at * 8 + column) % forms.length] as number];
          return form ? space + form(cellAddress(row, column)) : '';
        });
        const inside = cells.join('') + (cells.join('') === '' ? '' : end);
        return inside === '' ? `<row r="${row + 1}"/>` : `<row r="${row + 1}" s="1">${inside}${space}</row>`;
      });
    const xml = `<worksheet xmlns="m">${dimension}<sheetData>${lines.join(space)}</sheetData><mergeCells/></worksheet>`;
    return prefix === '' ? xml : xml.replaceAll(/<(\/?)\b/g, `<$1${prefix}`).replace('xmlns=', 'xmlns:x=');
  });

const values: fc.Arbitrary<StoredValue> = fc.oneof(
  fc.constantFrom<StoredValue>(
    null,
    true,
    false,
    { error: '#N/A' },
    { error: '#SPILL!' },
    'a & b',
    ' space ',
  ),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.string({ unit: 'grapheme' }),
);

const changeLists = fc.uniqueArray(
  fc.record(
    {
      row: fc.nat(14),
      column: fc.nat(10),
      value: values,
      replacesFormula: fc.constant(true),
      ref: fc.constant({ top: 0, left: 0, bottom: 3, right: 2 }),
    },
    { requiredKeys: ['row', 'column', 'value'] },
  ),
  { selector: ({ row, column }) => cellKey(row, column), maxLength: 30 },
);

/** A sheet after changes. */
function patched(xml: string, changes: readonly CellChange[]): string {
  const sheet = atOnce(scanWorksheet(xml, context));
  return [...patchSheet(sheet, sheetChanges(sheet, changes))].join('') || xml;
}

const context = { strings: ['text'], date1904: false, dynamicMetadata: new Set<string>() };

describe('a sheet patched by the places of its cells', () => {
  it('comes out as by its elements, byte for byte', () => {
    fc.assert(
      fc.property(sheets, changeLists, (xml, unsorted) => {
        const changes = [...unsorted].sort((a, b) => cellKey(a.row, a.column) - cellKey(b.row, b.column));
        expect(patched(xml, changes)).toBe(byElements(xml, changes));
      }),
      { numRuns: 1000 },
    );
  });

  it('comes out the same in whatever order the changes come', () => {
    fc.assert(
      fc.property(sheets, changeLists, (xml, changes) => {
        const inOrder = [...changes].sort((a, b) => cellKey(a.row, a.column) - cellKey(b.row, b.column));
        expect(patched(xml, changes)).toBe(patched(xml, inOrder));
      }),
      { numRuns: 300 },
    );
  });
});
