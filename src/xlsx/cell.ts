import { parseZone } from '../sheet/address.js';
import type { StoredValue } from '../sheet/cellValue.js';
import { serialFromIso } from '../sheet/isoDate.js';
import { readStringItem } from './sharedStrings.js';
import { addCell, type StoredFormula, type Worksheet } from './storedCells.js';
import type { XmlReader } from './xml/reader.js';
import { unescapeString } from './xml/text.js';

/** What a cell's reading needs from the rest of the workbook. */
export interface CellContext {
  strings: string[];
  date1904: boolean;
  /** Numbers of the cell metadata records that mark a formula as one that spills. */
  dynamicMetadata: Set<string>;
}

/** Reads the cell whose opening tag was just read. */
export function readCell(
  reader: XmlReader,
  sheet: Worksheet,
  row: number,
  column: number,
  shared: Map<string, StoredFormula>,
  context: CellContext,
): void {
  const start = reader.tagStart;
  const type = reader.attributeBounds('t') ? (reader.attribute('t') as string) : 'n';
  if (reader.empty) {
    addCell(sheet, row, column, start, reader.tagEnd, null, undefined);
    return;
  }
  const metadata = reader.attributeBounds('cm') ? (reader.attribute('cm') as string) : '';
  let formula: StoredFormula | undefined;
  let value: StoredValue = null;
  while (reader.next() && !(reader.closing && reader.name === 'c')) {
    if (reader.closing) continue;
    if (reader.name === 'v') value = readValue(reader, type, context);
    else if (reader.name === 'f') {
      formula = readFormula(reader, row, column, shared);
      if (formula.kind === 'array' && context.dynamicMetadata.has(metadata)) formula.kind = 'dynamic';
    } else if (reader.name === 'is') value = readStringItem(reader);
    else reader.skipElement();
  }
  if (formula) formula.cached = value !== null;
  addCell(sheet, row, column, start, reader.tagEnd, value, formula);
}

function readValue(reader: XmlReader, type: string, context: CellContext): StoredValue {
  const text = reader.text();
  switch (type) {
    case 's':
      return context.strings[Number(text)] ?? null;
    case 'str':
    case 'inlineStr':
      return unescapeString(text);
    case 'b':
      return text.trim() === '1' || text.trim() === 'true';
    case 'e':
      return { error: text.trim() || '#VALUE!' };
    case 'd':
      return serialFromIso(text.trim(), context.date1904) ?? text;
    default: {
      const number = Number(text);
      return text.trim() === '' || !Number.isFinite(number) ? null : number;
    }
  }
}

function readFormula(
  reader: XmlReader,
  row: number,
  column: number,
  shared: Map<string, StoredFormula>,
): StoredFormula {
  const type = reader.attribute('t') ?? 'normal';
  const id = reader.attribute('si');
  const ref = parseZone(reader.attribute('ref') ?? '');
  const text = unescapeString(reader.text()).trim();
  const formula: StoredFormula = { text, kind: 'plain', baseRow: row, baseColumn: column, cached: false };
  if (type === 'array' || type === 'dataTable') {
    formula.kind = type === 'array' ? 'array' : 'table';
    formula.ref = ref ?? { top: row, bottom: row, left: column, right: column };
  } else if (type === 'shared' && id !== undefined) {
    if (text !== '') {
      formula.shares = true;
      shared.set(id, formula);
    }
    const master = shared.get(id);
    if (master)
      Object.assign(formula, { text: master.text, baseRow: master.baseRow, baseColumn: master.baseColumn });
  }
  return formula;
}
