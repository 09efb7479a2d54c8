import { listSheet } from './listSheet.mjs';
import { packedWorkbook } from './package.mjs';
import { quoteSheet } from './quoteSheet.mjs';
import { SharedStrings } from './sheet.mjs';
import { shopSheet, stampCell } from './shopSheet.mjs';
import { summarySheet } from './summarySheet.mjs';
import { addInOfManifest, storedFunctionNames, webExtension } from './webExtension.mjs';
import { mainSpace, part } from './xml.mjs';

/**
 * The bytes of the example workbook, the same for the same sources. `offerAddIn`: the recipient's host offers the
 * add-in; a copy for a customer is made without.
 */
export function quoteWorkbook(folder, { offerAddIn = true } = {}) {
  const strings = new SharedStrings();
  const quote = quoteSheet(folder, strings);
  const sheets = [
    quote,
    shopSheet(folder, strings),
    summarySheet(folder, strings),
    listSheet(quote.parts, strings),
  ];
  const offer = offerAddIn
    ? webExtension(addInOfManifest(), storedFunctionNames(sheets.map(({ xml }) => xml)))
    : undefined;
  return packedWorkbook({ sheets, strings, names: [['ShopStamp', stampCell]], offer });
}

/** The bytes of a workbook with one empty sheet, in the same style. */
export function emptyWorkbook() {
  const sheet = { name: 'Sheet1', tables: [] };
  const xml = part(
    `<worksheet xmlns="${mainSpace}"><sheetFormatPr defaultRowHeight="13.5"/><sheetData/></worksheet>`,
  );
  return packedWorkbook({ sheets: [{ sheet, xml }], strings: new SharedStrings() });
}
