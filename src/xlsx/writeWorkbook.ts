import type { CellChange } from './patchCell';
import { patchSheet } from './patchSheet';
import type { Sheet, Workbook } from './workbook';
import { writeArchive } from './zip/writeArchive';

/** The workbook's file with stored values changed: parts without a change keep their packed bytes. */
export function writeWorkbook(workbook: Workbook, changes: Map<Sheet, CellChange[]>): Uint8Array {
  const parts = new Map<string, Uint8Array>();
  for (const [sheet, cells] of changes) {
    const entry = workbook.package.entry(sheet.part);
    if (!sheet.cells || !entry) continue;
    const xml = patchSheet(sheet.cells, cells);
    if (xml !== sheet.cells.xml) parts.set(entry.name, workbook.package.codec.toBytes(xml));
  }
  return writeArchive(workbook.package.archive, parts, workbook.package.codec);
}
