import type { Content } from '../../../src/workbook/content.js';
import type { Area } from '../../../src/workbook/area.js';
import { TellingOwnWrites } from '../../../src/workbook/ownWrites.js';
import type { Hands, UnderTest } from '../../workbook/contract/underTest.js';
import { typed } from '../../workbook/support/typedText.js';
import { MemoryWorkbook } from './memoryWorkbook.js';

/** The workbook in memory, with an empty sheet Parts, as the pane has it: what the host does not tell is told on the way. */
export async function openMemory(): Promise<UnderTest> {
  const workbook = new MemoryWorkbook('Parts');
  const told = MemoryWorkbook.tellsOwnWrites ? workbook : new TellingOwnWrites(workbook);
  return { workbook: told, hands: handsOn(workbook) };
}

function handsOn(workbook: MemoryWorkbook): Hands {
  const { memory } = workbook;
  const enter = (sheet: string, row: number, column: number, input: string | number | null) => {
    if (input === null) return;
    const { value, format, formula, error } = typed(input, memory.cell(sheet, row, column).format);
    const content: Content =
      formula !== undefined ? { formula } : error ? { error: String(value) } : value === '' ? null : value;
    memory.set(sheet, row, column, { content, format, value });
  };
  const each = ({ row, column, rows, columns }: Area, at: (down: number, right: number) => void) => {
    for (let down = 0; down < rows; down += 1)
      for (let right = 0; right < columns; right += 1) at(row + down, column + right);
  };
  return {
    addSheet: async (name) => void memory.sheets.set(name, new Map()),
    type: async (area, rows) =>
      each(area, (row, column) =>
        enter(area.sheet, row, column, rows[row - area.row]?.[column - area.column] ?? null),
      ),
    format: async (area, format) =>
      each(area, (row, column) => memory.set(area.sheet, row, column, { format })),
    addTable: async (name, area) => void memory.act({ kind: 'table', name, area }),
    addName: async (name, area) => void memory.act({ kind: 'name', name, area }),
    merge: async (area) => void memory.merged.push(area),
    hide: async (sheet, rows) => void memory.hidden.set(sheet, [...rows]),
    merged: (sheet) => memory.merged.filter((area) => area.sheet === sheet),
    protect: async (sheet) => void memory.protectedSheets.add(sheet),
    unprotect: async (sheet) => void memory.protectedSheets.delete(sheet),
    select: async (area) => workbook.select(area),
    edit: async (area, input, author) => {
      enter(area.sheet, area.row, area.column, input);
      workbook.tell({ kind: 'cells', areas: [area], author, ours: false });
    },
    calculate: async (area) => workbook.tell({ kind: 'calculated', areas: [area] }),
    width: (sheet, column) => memory.widths.get(`${sheet},${column}`),
    look: (sheet, row, column) => {
      const { content, format, value } = memory.cell(sheet, row, column);
      const formula =
        typeof content === 'object' && content !== null && 'formula' in content ? content.formula : undefined;
      return { value: value ?? '', format, ...(formula === undefined ? {} : { formula }) };
    },
  };
}
