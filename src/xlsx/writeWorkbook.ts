import { requestFullCalculation } from './fullCalculation.js';
import type { CellChange } from './writeCell.js';
import { patchSheet } from './patchSheet.js';
import { XmlElement } from './xml/element.js';
import type { Sheet, Workbook } from './workbook.js';
import { writeArchive } from './zip/writeArchive.js';

/**
 * The workbook's file with stored values changed: parts without a change keep their packed bytes. `calculateOnOpening`:
 * some value in it is not right.
 */
export function writeWorkbook(
  workbook: Workbook,
  changes: Map<Sheet, Iterable<CellChange>>,
  { calculateOnOpening = false } = {},
): Uint8Array {
  const parts = new Map<string, Uint8Array>();
  const list = workbook.package.entry(workbook.part);
  if (calculateOnOpening && list) {
    const part = XmlElement.part(workbook.package.xml(list.name) ?? '');
    requestFullCalculation(part.root);
    parts.set(list.name, workbook.package.codec.toBytes(String(part)));
  }
  for (const [sheet, cells] of changes) {
    const entry = workbook.package.entry(sheet.part);
    if (!sheet.cells || !entry) continue;
    const xml = patchSheet(sheet.cells, cells);
    if (xml !== sheet.cells.xml) parts.set(entry.name, workbook.package.codec.toBytes(xml));
  }
  return writeArchive(workbook.package.archive, { replaced: parts }, workbook.package.codec);
}
