import type { SheetCell, SheetContent, SheetRow } from '../../core/stock/sheet/sheetCell.js';

/** A plan's sheet as text: each of its lists in columns. */
export function stockText({ rows }: SheetContent): string {
  const lines: string[] = [];
  let list: SheetRow[] = [];
  const flush = () => {
    for (const line of aligned(list)) lines.push(line);
    list = [];
  };
  for (const row of rows) {
    if (row.length > 1) list.push(row);
    else {
      flush();
      lines.push(row.map(shown).join(''));
    }
  }
  flush();
  return `${lines.join('\n')}\n`;
}

function aligned(rows: readonly SheetRow[]): string[] {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, at) => (widths[at] = Math.max(widths[at] ?? 0, shown(cell).length)));
  return rows.map((row) =>
    row
      .map((cell, at) => padded(cell, widths[at] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}

function padded(cell: SheetCell, width: number): string {
  const isNumber = cell !== null && typeof cell.value === 'number';
  return isNumber ? shown(cell).padStart(width) : shown(cell).padEnd(width);
}

function shown(cell: SheetCell): string {
  if (cell === null) return '';
  switch (cell.kind) {
    case 'money':
      return cell.value.toFixed(2);
    case 'mass':
      return cell.value.toFixed(1);
    case 'share':
      return `${(cell.value * 100).toFixed(1)}%`;
    case 'angle':
      return `${cell.value}°`;
    default:
      return String(cell.value);
  }
}
