import { refuse } from '../inputError.js';
import { type CellValue, isBlank, plainText } from '../quantity/cellValue.js';
import type { LengthUnit } from '../quantity/units.js';
import { type PressItemKey, pressItems } from '../press/item/pressItem.js';
import type { Press, PressValue } from '../press/press.js';
import { readPressValue } from '../press/readPressValue.js';
import { type Cells, nameKey, readTable, type Table } from './table.js';

const itemByName = new Map(pressItems.map((item) => [nameKey(item.name), item]));
const generalHeading = 'general';

/**
 * Reads the Presses table: Item, Unit, then one column per press. A cell that cannot be read is kept as
 * that item's own problem; rows with an unknown item are kept aside by name.
 */
export function readPresses(cells: Cells, unit: LengthUnit): { presses: Press[]; unknownRows: string[] } {
  const table = readTable(cells, 'Presses', ['Item', 'Unit']);
  const columns = pressColumns(table, [table.column('Item'), table.column('Unit')]);
  const values = columns.map((): Partial<Record<PressItemKey, PressValue>> => ({}));
  const unknownRows: string[] = [];
  const seen = new Set<string>();
  for (const row of table.rows) {
    const name = nameKey(table.cell(row, 'Item'));
    const item = itemByName.get(name);
    if (!item) {
      if (name !== '' && name !== generalHeading)
        unknownRows.push(`Presses, ${plainText(String(table.cell(row, 'Item')))}`);
      continue;
    }
    columns.forEach((column, index) => {
      const read = seen.has(name)
        ? twice(item.name, row[column.at])
        : readPressValue(row[column.at] ?? null, table.cell(row, 'Unit'), item, column.name, unit);
      const own = values[index];
      if (own) own[item.key] = read;
    });
    seen.add(name);
  }
  return {
    presses: columns.map((column, index) => press(column.name, values[index] ?? {}, columns)),
    unknownRows,
  };
}

function twice(name: string, cell: CellValue | undefined): PressValue {
  const failure = {
    code: 'invalid',
    argument: `Presses, ${name}`,
    received: String(cell ?? ''),
    problem: 'the row stands in the table twice.',
    allowed: 'Keep one.',
  } as const;
  return { state: 'bad', failure };
}

interface PressColumn {
  name: string;
  at: number;
}

function pressColumns({ headings, rows }: Table, taken: (number | undefined)[]): PressColumn[] {
  const columns: PressColumn[] = [];
  headings.forEach((heading, at) => {
    if (taken.includes(at)) return;
    const filled = rows.some((row) => !isBlank(row[at]));
    if (isBlank(heading)) {
      if (filled)
        refuse(
          'Presses',
          '',
          `column ${at + 1} has values but no press name.`,
          'Write the name in its first cell.',
        );
      return;
    }
    columns.push({ name: plainText(String(heading)), at });
  });
  return columns;
}

function press(name: string, values: Press['values'], columns: PressColumn[]): Press {
  const same = columns.filter((column) => nameKey(column.name) === nameKey(name)).length;
  if (same === 1) return { name, values };
  const problem = {
    code: 'invalid',
    argument: 'Presses',
    received: name,
    problem: `${same} presses are called ${name}.`,
    allowed: 'Give each its own name.',
  } as const;
  return { name, values, problem };
}
