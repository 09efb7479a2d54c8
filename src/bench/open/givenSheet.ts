import type { Model, UID } from '@odoo/o-spreadsheet';
import { ruleRanges, type RuleRanges } from './ruleRanges.js';

export interface GivenHeader {
  /** Pixels; undefined for a row as high as what is in it. */
  size: number | undefined;
  hidden: boolean;
}

/** What a sheet is besides its cells, as the grid has it. */
export interface GivenSheet {
  rows: GivenHeader[];
  columns: GivenHeader[];
  frozen: { rows: number; columns: number };
  gridLines: boolean;
  visible: boolean;
  color: string | undefined;
  rules: RuleRanges;
}

/** Width of columns that nobody gave one. */
export const usualColumn = 96;

export function sheetNow(model: Model, sheetId: UID): GivenSheet {
  const { getters } = model;
  const { xSplit, ySplit } = getters.getPaneDivisions(sheetId);
  const { numberOfRows, numberOfCols } = getters.getSheetSize(sheetId);
  return {
    rows: Array.from({ length: numberOfRows }, (_, row) => ({
      size: getters.getUserRowSize(sheetId, row),
      hidden: getters.isRowHiddenByUser(sheetId, row),
    })),
    columns: Array.from({ length: numberOfCols }, (_, column) => ({
      size: getters.getColSize(sheetId, column),
      hidden: getters.isColHiddenByUser(sheetId, column),
    })),
    frozen: { rows: ySplit, columns: xSplit },
    gridLines: getters.getGridLinesVisibility(sheetId),
    visible: getters.isSheetVisible(sheetId),
    color: getters.getSheet(sheetId).color,
    rules: ruleRanges(model, sheetId),
  };
}
