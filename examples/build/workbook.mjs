import { listSheet } from './listSheet.mjs';
import { packedWorkbook } from './package.mjs';
import { quoteSheet } from './quoteSheet.mjs';
import { SharedStrings } from './sheet.mjs';
import { shopSheet, stampCell } from './shopSheet.mjs';
import { summarySheet } from './summarySheet.mjs';
import { mainSpace, part } from './xml.mjs';

/** The bytes of the example workbook without the values of its formulas, the same for the same sources. */
export function quoteWorkbook(folder, verdicts) {
  const strings = new SharedStrings();
  const quote = quoteSheet(folder, strings);
  const sheets = [
    quote,
    shopSheet(folder, strings),
    summarySheet(folder, strings, verdicts),
    listSheet(quote.parts, strings),
  ];
  return packedWorkbook({ sheets, strings, names: [['ShopStamp', stampCell]] });
}

/** The bytes of a workbook with one empty sheet, in the same style. */
export function emptyWorkbook() {
  const sheet = { name: 'Sheet1', tables: [] };
  const xml = part(
    `<worksheet xmlns="${mainSpace}"><sheetFormatPr defaultRowHeight="13.5"/><sheetData/></worksheet>`,
  );
  return packedWorkbook({ sheets: [{ sheet, xml }], strings: new SharedStrings() });
}
