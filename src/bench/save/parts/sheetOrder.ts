/** The order of what a worksheet has: ECMA-376 Part 1, 18.3.1.99 (worksheet), from memory. */
export const sheetOrder: readonly string[] = `
  sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios
  autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations
  hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches
  ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF picture oleObjects controls webPublishItems
  tableParts extLst
`
  .trim()
  .split(/\s+/);
