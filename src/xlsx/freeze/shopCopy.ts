import { freeName } from '../../sheet/names.js';
import type { Workbook } from '../workbook.js';
import { anchorsOf } from '../../sheet/keptFormulas/anchor.js';
import { type ListedFormula, listSheetXml } from './formulaList.js';
import { listSheetName } from '../../sheet/keptFormulas/formulaList.js';
import { filledCells, takeFormulasOut, type FrozenFormula } from './frozenSheet.js';
import type { PackageParts } from '../packageParts.js';
import { addListedSheet } from '../sheetList.js';
import { sheetCellsOf } from './sheetCells.js';

const sheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';

/** Turns our formulas into values and keeps them on a sheet of their own. */
export function makeShopCopy(
  parts: PackageParts,
  workbook: Workbook,
  formulas: readonly FrozenFormula[],
  goes: (formula: string) => boolean,
): void {
  for (const { cells, part } of workbook.sheets) {
    if (cells) takeFormulasOut(parts.root(part), cells, goes);
  }
  parts.drop(parts.workbookPart(), ({ type, target }) => {
    if (type === 'calcChain') parts.remove(target);
    return type === 'calcChain';
  });
  if (formulas.length > 0) addListSheet(parts, workbook, listSheetXml(anchored(workbook, formulas)));
}

function anchored(workbook: Workbook, formulas: readonly FrozenFormula[]): ListedFormula[] {
  const sheets = sheetCellsOf(workbook);
  return sheets.flatMap((sheet) => {
    const own = formulas.filter(({ sheet: name }) => name === sheet.name);
    const filled = own.map((formula) => ({ ...filledCells(formula), formula: formula.text }));
    const anchors = anchorsOf(sheet, filled, sheets);
    return own.map((formula, at) => ({ ...formula, anchor: anchors[at] ?? { row: '', sizes: '' } }));
  });
}

function addListSheet(parts: PackageParts, workbook: Workbook, xml: string): void {
  const workbookPart = parts.workbookPart();
  const folder = workbookPart.slice(0, workbookPart.lastIndexOf('/') + 1);
  const wanted = `${folder}worksheets/tonrowFormulas`;
  const part = parts.named(`${wanted}.xml`) === undefined ? `${wanted}.xml` : parts.freeName(wanted, '.xml');
  parts.add(part, xml, sheetType);
  const link = parts.relate(workbookPart, 'worksheet', part);
  const name = freeName(
    listSheetName,
    workbook.sheets.map((sheet) => sheet.name),
  );
  addListedSheet(parts.root(workbookPart), name, link);
}
