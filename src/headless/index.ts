/*
 * Recalculates workbooks without a spreadsheet program. `recalculate` does it, `engine` evaluates formulas,
 * `functions` calls ours as the host does, `files` and `command` are for the terminal.
 */

export { calc } from './command/calc.js';
export { cards } from './command/cards.js';
export { recalc } from './command/recalc.js';
export { stock } from './command/stock.js';
export type { CommandSetting } from './command/output.js';
export { builtFunctions } from './functions/builtFunctions.js';
export { writeFileWhole } from './files/writeFile.js';
export { FormulaCalculator, type FormulaResult } from './recalculate/formulaCalculator.js';
export { loadFunctions } from './functions/loadFunctions.js';
export type { LoadedFunction, LoadedFunctions } from './functions/scriptHost.js';
export type { FunctionMetadata, FunctionsMetadata } from './functions/metadata.js';
export type { InputChange } from './recalculate/changes.js';
export { recalculateWorkbook, type RecalculateOptions } from './recalculate/recalculate.js';
export type { RecalcReport } from './recalculate/report.js';
export { readSheetValues } from '../xlsx/readSheetValues.js';
export { WorkbookRefused } from '../xlsx/refusal/refusal.js';
export { type CellError, type StoredValue as CellValue } from '../sheet/cellValue.js';
