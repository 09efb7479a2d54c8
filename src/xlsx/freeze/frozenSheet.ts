import type { FilledCells } from '../../sheet/keptFormulas/sheetCells.js';
import { cellAddress, parseCell, parseZone } from '../../sheet/address.js';
import type { StoredValue } from '../../sheet/cellValue.js';
import type { Sheet } from '../workbook.js';
import type { Worksheet } from '../storedCells.js';
import { PartCells } from '../partCells.js';
import type { XmlElement } from '../xml/element.js';
import { XmlReader } from '../xml/reader.js';
import { moveFormula } from '../../sheet/formula/moveFormula.js';

/** A formula that became a value, and what is needed to bring it back. */
export interface FrozenFormula {
  sheet: string;
  cell: string;
  /** As the file stores it, without the equals sign. */
  text: string;
  /** The attributes of its element: `t="array" ref="A2:C9"`; empty for an ordinary one. */
  attributes: string;
  /** The number of the cell's metadata record, for one that spills. */
  metadata: string;
  value: StoredValue;
}

/** Every formula that is to go, in file order. */
export function frozenFormulas(sheet: Sheet, goes: (formula: string) => boolean): FrozenFormula[] {
  const { cells } = sheet;
  if (!cells) return [];
  return cells.formulas.flatMap((formula, at): FrozenFormula[] => {
    if (!formula || !goes(formula.text)) return [];
    const [row, column] = [cells.rows[at] ?? 0, cells.columns[at] ?? 0];
    return [
      {
        sheet: sheet.name,
        cell: cellAddress(row, column),
        text: moveFormula(formula.text, row - formula.baseRow, column - formula.baseColumn),
        ...storedAs(cells, at),
        value: cells.values[at] ?? null,
      },
    ];
  });
}

/** How many of the formulas that are to go hold no value yet. */
export function neverCalculated(sheet: Sheet, goes: (formula: string) => boolean): number {
  return (sheet.cells?.formulas ?? []).filter((formula) => formula && goes(formula.text) && !formula.cached)
    .length;
}

/** Takes formulas out of a sheet's part; the values stay where they are, as they are stored. */
export function takeFormulasOut(
  root: XmlElement,
  { formulas, rows, columns }: Worksheet,
  goes: (formula: string) => boolean,
): void {
  const cells = new PartCells(root);
  formulas.forEach((formula, at) => {
    if (!formula || !goes(formula.text)) return;
    const cell = cells.cell(rows[at] ?? 0, columns[at] ?? 0);
    cell.set({ cm: undefined }).keep(({ name }) => name !== 'f');
  });
}

/** Formulas stored for several cells together come back one by one. */
function storedAs(
  { xml, starts, ends }: Worksheet,
  at: number,
): Pick<FrozenFormula, 'attributes' | 'metadata'> {
  const reader = new XmlReader(xml.slice(starts[at], ends[at]));
  reader.next();
  const metadata = reader.attribute('cm') ?? '';
  while (reader.next() && (reader.closing || reader.name !== 'f'));
  if (reader.attribute('t') === 'shared') return { attributes: '', metadata };
  const tag = reader.xml.slice(
    reader.tagStart + reader.prefix.length + 2,
    reader.tagEnd - (reader.empty ? 2 : 1),
  );
  return { attributes: tag.trim(), metadata };
}

/** The cells a formula filled: those its array reached to, or its own. */
export function filledCells({ cell, attributes }: FrozenFormula): FilledCells {
  const place = parseCell(cell) ?? { row: 0, column: 0 };
  const ref = /\bref="([A-Z\d:]+)"/.exec(attributes)?.[1];
  const zone = attributes.includes('t="array"') && ref ? parseZone(ref) : undefined;
  return {
    ...place,
    rows: zone ? zone.bottom - zone.top + 1 : 1,
    columns: zone ? zone.right - zone.left + 1 : 1,
  };
}
