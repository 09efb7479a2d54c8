import ExcelJS from 'exceljs';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

/** A workbook as people make them: styles, comments, rules, lists, names, an image, and add-in parts. */
export async function styledWorkbook(): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet('Quote', { views: [{ state: 'frozen', ySplit: 1 }] });
  sheet.columns = [{ width: 14 }, { width: 9 }, { width: 22 }];
  sheet.addRow(['Mark', 'Qty', 'Double', 'More']).font = { bold: true, color: { argb: 'FF884400' } };
  for (let i = 1; i <= 6; i++) {
    sheet.addRow([
      `P${i}`,
      i,
      { formula: `_xldudf_TONROW_DOUBLE(B${i + 1})`, result: 0 },
      { formula: `C${i + 1}+1`, result: 1 },
    ]);
  }
  sheet.getCell('A2').note = 'Drawing 12, sheet 3';
  sheet.getCell('C2').numFmt = '0.00';
  sheet.getCell('C3').fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFFFEE00' } };
  sheet.getCell('B2').dataValidation = {
    type: 'whole',
    operator: 'between',
    formulae: [1, 999],
    showErrorMessage: true,
  };
  sheet.addConditionalFormatting({
    ref: 'C2:C7',
    rules: [
      {
        type: 'cellIs',
        operator: 'greaterThan',
        formulae: [5],
        priority: 1,
        style: { font: { bold: true } },
      },
    ],
  });
  sheet.mergeCells('A9:C9');
  sheet.getCell('A9').value = 'Zusammen: Größe ≤ 12 mm';
  sheet.pageSetup.printArea = 'A1:D9';
  workbook.definedNames.add('Quote!$B$2:$B$7', 'Quantities');
  const plain = workbook.addWorksheet('Notes');
  plain.addRow(['Nothing of ours here', { formula: '1+1', result: 2 }]);
  return withAddInParts(new Uint8Array(await workbook.xlsx.writeBuffer()));
}

function withAddInParts(bytes: Uint8Array): Uint8Array {
  const files = unzipSync(bytes);
  const id = '11111111-2222-4333-8444-555555555555';
  const office = 'http://schemas.microsoft.com/office';
  files['customXml/item1.xml'] = strToU8('<p xmlns="urn:tonrow">ünïcode</p>');
  files['customXml/itemProps1.xml'] = strToU8(
    '<ds:datastoreItem ds:itemID="{AAAAAAAA-2222-4333-8444-555555555555}" xmlns:ds="http://schemas.openxmlformats.org/officeDocument/2006/customXml"/>',
  );
  files['xl/webextensions/webextension1.xml'] = strToU8(
    `<we:webextension xmlns:we="${office}/webextensions/webextension/2010/11" id="{${id}}"><we:reference id="${id}" version="1.0.0.0" store="developer" storeType="Registry"/></we:webextension>`,
  );
  files['xl/webextensions/taskpanes.xml'] = strToU8(
    `<wetp:taskpanes xmlns:wetp="${office}/webextensions/taskpanes/2010/11"><wetp:taskpane dockstate="right" visibility="0" width="350" row="0"/></wetp:taskpanes>`,
  );
  files['xl/calcChain.xml'] = strToU8(
    '<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="C2" i="1"/></calcChain>',
  );
  files['xl/media/photo.bin'] = Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919) % 251);
  const rels = strFromU8(files['_rels/.rels'] as Uint8Array);
  files['_rels/.rels'] = strToU8(
    rels.replace(
      '</Relationships>',
      `<Relationship Id="rIdW" Type="${office}/2011/relationships/webextensiontaskpanes" Target="xl/webextensions/taskpanes.xml"/></Relationships>`,
    ),
  );
  return zipSync(files, { level: 6, mtime: new Date(2026, 2, 15, 8, 30) });
}
