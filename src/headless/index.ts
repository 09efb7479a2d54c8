export { loadFunctions, type LoadedFunctions } from './functions/loadFunctions';
export type { FunctionMetadata, FunctionsMetadata } from './functions/metadata';
export type { InputChange } from './recalculate/changes';
export { recalculateWorkbook, type RecalculateOptions } from './recalculate/recalculate';
export type { RecalcReport } from './recalculate/report';
export { readSheetValues, WorkbookRefused, type CellError, type CellValue } from '../xlsx';
