/** The order of what elements have inside: ECMA-376 Part 1, 18.2 to 18.8, from memory. */
export const elementOrder: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  Object.entries({
    workbook: `fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups
      externalReferences definedNames calcPr oleSize customWorkbookViews pivotCaches smartTagPr smartTagTypes
      webPublishing fileRecoveryPr webPublishObjects extLst`,
    worksheet: `sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges
      scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting
      dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties
      cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF picture oleObjects controls
      webPublishItems tableParts extLst`,
    sheetPr: 'tabColor outlinePr pageSetUpPr',
    sheetView: 'pane selection pivotSelection extLst',
    table: 'autoFilter sortState tableColumns tableStyleInfo extLst',
    styleSheet: 'numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst',
    // As desktop programs write them.
    font: 'b i strike condense extend outline shadow u vertAlign sz color name family charset scheme',
    border: 'start left end right top bottom diagonal vertical horizontal',
    xf: 'alignment protection extLst',
    c: 'f v is extLst',
  }).map(([name, inside]) => [name, inside.split(/\s+/)]),
);
