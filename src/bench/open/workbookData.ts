import type { Place } from '../../sheet/formula/referenceReader.js';
import { parseFormula } from '../../sheet/formula/parse.js';
import type { Scope } from '../../sheet/formula/scope.js';
import { supportedFunctions } from '../../headless/engine/supportedFunctions.js';
import { whyPinned } from '../../headless/recalculate/pins.js';
import { cellAddress, cellKey, zoneAddress, type Zone } from '../../sheet/address.js';
import { sheetPrefix } from '../../sheet/names.js';
import type { Sheet, Workbook } from '../../xlsx/workbook.js';
import type { StoredFormula, Worksheet } from '../../xlsx/storedCells.js';
import { entriesInTurn, type Pausing } from '../../xlsx/pausing.js';
import type { Table } from '../../sheet/table.js';
import type { Package } from '../../xlsx/package.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import { displayFormula, engineSheetName, NotWritten, translateFormula } from '../book/translate.js';
import { rangeOfName } from '../../sheet/formula/rangeOfName.js';
import { keptFormula } from '../engine/keptFormula.js';
import { constantContent, engineFormat, isTextFormat, resultInText } from '../engine/cellContent.js';
import { layoutData } from './layoutData.js';
import type { CellLook } from './cellLook.js';
import { sheetLook, SharedLooks } from './sheetLook.js';
import { readStyles, type Styles } from './styles.js';

/** A formula of the file: as people write it, and why it is not calculated here, if so. */
export interface OpenedFormula {
  sheet: number;
  row: number;
  column: number;
  display: string;
  kept: string | undefined;
  /** The ranges it reads. */
  references: { sheet: number; zone: Zone }[];
  stored: StoredFormula;
  ours: boolean;
  /** It is one call of our functions, and nothing else. */
  isOneCall: boolean;
}

export interface OpenedWorkbook {
  /** What the engine opens. */
  data: Record<string, unknown>;
  formulas: OpenedFormula[];
  workbook: Workbook;
  scope: Scope;
  styles: Styles;
  /** For each sheet the number of the style of each of its cells. */
  styleNumbers: number[][];
}

export const sheetId = (position: number): string => `sheet${position + 1}`;

/** The part that holds the styles. */
export function stylesPart(opened: Package): string {
  const main = opened.relationships('').find(({ type }) => type === 'officeDocument')?.target;
  const link = opened.relationships(main ?? 'xl/workbook.xml').find(({ type }) => type === 'styles');
  return link?.target ?? 'xl/styles.xml';
}

/** Rows and columns left free below and right of what a file uses. */
const spare = { rows: 100, columns: 8 };

/** The engine's own form of a workbook file. */
export function* workbookData(workbook: Workbook, scope: Scope): Pausing<OpenedWorkbook> {
  const styles = readStyles(workbook.package, stylesPart(workbook.package));
  const formulas: OpenedFormula[] = [];
  const shared = new SharedLooks();
  const height = Math.max(...workbook.sheets.map(({ cells }) => cells?.height ?? 0)) + spare.rows;
  const building = { workbook, scope, styles, formulas, shared, height };
  const sheets: Record<string, unknown>[] = [];
  const styleNumbers: number[][] = [];
  for (const [position, sheet] of workbook.sheets.entries()) {
    const numbers = sheet.cells ? yield* stylesOfCells(sheet.cells) : [];
    styleNumbers.push(numbers);
    sheets.push(yield* sheetData(sheet, position, numbers, building));
  }
  const { styles: cellStyles, borders, formats } = shared;
  const data = { sheets, styles: cellStyles, borders, formats, namedRanges: namedRanges(workbook) };
  return { data, formulas, workbook, scope, styles, styleNumbers };
}

interface Building {
  workbook: Workbook;
  scope: Scope;
  styles: Styles;
  formulas: OpenedFormula[];
  shared: SharedLooks;
  height: number;
}

function* sheetData(
  sheet: Sheet,
  position: number,
  numbers: readonly number[],
  building: Building,
): Pausing<Record<string, unknown>> {
  const base = {
    id: sheetId(position),
    name: engineSheetName(sheet.name),
    isVisible: sheet.visibility === 'visible',
    rowNumber: building.height,
  };
  if (!sheet.cells) return { ...base, colNumber: 26 };
  const contents: Record<string, string> = {};
  const look = sheetLook(building.shared);
  const owned = spilledCells(sheet.cells, position, building);
  const { rows, columns } = sheet.cells;
  for (let i = 0; i < rows.length; i++) {
    if (i % entriesInTurn === 0) yield;
    const [row, column] = [rows[i] as number, columns[i] as number];
    const cellLook = building.styles.cells[numbers[i] ?? 0] ?? {};
    const { content, format } = owned.has(cellKey(row, column))
      ? { content: '', format: engineFormat(cellLook.format) }
      : cellContent(sheet.cells, i, position, cellLook, building);
    const address = cellAddress(row, column);
    if (content !== '') contents[address] = content;
    look.add(address, numbers[i] ?? 0, cellLook, format);
  }
  const tables = building.workbook.tables.filter((table) => table.sheet === position);
  return {
    ...base,
    colNumber: Math.max(26, sheet.cells.width + spare.columns),
    cells: contents,
    ...look.zones(),
    merges: sheet.cells.merged.map(zoneAddress),
    tables: tables.map(tableData),
    ...layoutData(sheet.cells, building.styles, {
      rows: building.height,
      columns: sheet.cells.width + spare.columns,
    }),
  };
}

function cellContent(
  cells: Worksheet,
  i: number,
  sheet: number,
  look: CellLook,
  building: Building,
): { content: string; format: string | undefined } {
  const stored = cells.formulas[i];
  const format = engineFormat(look.format);
  const value = cells.values[i] ?? null;
  if (!stored) return constantContent(value, format);
  const [row, column] = [cells.rows[i] as number, cells.columns[i] as number];
  const opened = openFormula(stored, { sheet, row, column }, building);
  building.formulas.push(opened.formula);
  const kept = typeof value === 'object' && value !== null ? { error: value.error } : value;
  const content = opened.engine ?? keptFormula(opened.formula.display, kept);
  return { content, format: isTextFormat(format) ? resultInText : format };
}

function openFormula(
  stored: StoredFormula,
  cell: { sheet: number; row: number; column: number },
  { workbook, scope }: Building,
): { formula: OpenedFormula; engine: string | undefined } {
  const shift = { rows: cell.row - stored.baseRow, columns: cell.column - stored.baseColumn };
  const place: Place = { ...cell, shift };
  const parsed = parseFormula(stored.text, place, scope);
  const display = `=${displayFormula(stored.text, place, scope)}`;
  const isOneCall = parsed.node.kind === 'call' && parsed.node.name.startsWith(`${scope.namespace}.`);
  const formula = { ...cell, display, references: parsed.references, stored, ours: parsed.ours, isOneCall };
  const why =
    whyPinned(parsed, stored, workbook, supportedFunctions) ??
    (stored.kind === 'array' ? 'It fills a fixed range.' : undefined);
  if (why !== undefined) return { formula: { ...formula, kept: why }, engine: undefined };
  try {
    const engine = `=${translateFormula(stored.text, place, scope)}`;
    return { formula: { ...formula, kept: undefined }, engine };
  } catch (error) {
    if (!(error instanceof NotWritten)) throw error;
    return { formula: { ...formula, kept: error.message }, engine: undefined };
  }
}

/** Cells whose value came from the spill of a formula elsewhere, which will fill them again. */
function spilledCells(cells: Worksheet, sheet: number, { workbook, scope }: Building): Set<number> {
  const owned = new Set<number>();
  cells.formulas.forEach((stored, i) => {
    if (stored?.kind !== 'dynamic' || !stored.ref) return;
    const [row, column] = [cells.rows[i] as number, cells.columns[i] as number];
    const place = { sheet, row, column, shift: { rows: 0, columns: 0 } };
    if (whyPinned(parseFormula(stored.text, place, scope), stored, workbook, supportedFunctions)) return;
    const { top, left, bottom, right } = stored.ref;
    for (let r = top; r <= bottom; r++)
      for (let c = left; c <= right; c++) if (r !== row || c !== column) owned.add(cellKey(r, c));
  });
  return owned;
}

/** The number of the style of each cell. */
export function* stylesOfCells({ xml, starts, ends }: Worksheet): Pausing<number[]> {
  const numbers: number[] = [];
  for (const [i, start] of starts.entries()) {
    const reader = new XmlReader(xml.slice(start, xml.indexOf('>', start) + 1 || ends[i]));
    numbers.push(reader.next() ? Number(reader.attribute('s') ?? 0) : 0);
    if (i % entriesInTurn === 0) yield;
  }
  return numbers;
}

function tableData({ zone, headerRows, totalsRows }: Table): Record<string, unknown> {
  return { range: zoneAddress(zone), type: 'static', config: tableConfig(headerRows, totalsRows > 0) };
}

export const tableConfig = (headings: number, hasTotals: boolean) => ({
  hasFilters: true,
  totalRow: hasTotals,
  firstColumn: false,
  lastColumn: false,
  numberOfHeaders: headings,
  bandedRows: true,
  bandedColumns: false,
  automaticAutofill: true,
  styleId: 'TableStyleLight9',
});

/** Names that stand for a range of the workbook; the others are written out where they are used. */
function namedRanges(workbook: Workbook): Record<string, string> {
  const known = new Set(workbook.sheets.map(({ name }) => name.toLowerCase()));
  const named = workbook.names.filter(
    ({ sheet, text }) => sheet === undefined && known.has(rangeOfName(text)?.sheet.toLowerCase() ?? ''),
  );
  return Object.fromEntries(
    named.map(({ name, text }) => {
      const { sheet, zone } = rangeOfName(text) as { sheet: string; zone: Zone };
      return [name, `${sheetPrefix(engineSheetName(sheet))}!${zoneAddress(zone)}`];
    }),
  );
}
