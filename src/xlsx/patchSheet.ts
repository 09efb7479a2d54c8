import { PartCells } from './partCells.js';
import { writeCell, type CellChange } from './writeCell.js';
import { XmlElement } from './xml/element.js';

/** A worksheet part with stored values changed; every other byte stays as it was. */
export function patchSheet(xml: string, changes: readonly CellChange[]): string {
  const part = XmlElement.part(xml);
  const cells = new PartCells(part.root);
  for (const change of changes) {
    const isNew = !cells.has(change.row, change.column);
    if (!isNew || change.value !== null) writeCell(cells.cell(change.row, change.column), change, isNew);
  }
  return String(part);
}
