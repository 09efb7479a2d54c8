import { requestFullCalculation } from '../../xlsx/fullCalculation.js';
import { patchSheet, type SheetChanges } from '../../xlsx/patchSheet.js';
import type { Sheet, Workbook } from '../../xlsx/workbook.js';
import { XmlElement } from '../../xlsx/xml/element.js';
import { type Packed, writeArchive } from '../../xlsx/zip/writeArchive.js';
import { packPieces } from './packPieces.js';

/**
 * The workbook's file with stored values changed: parts without a change keep their packed bytes. `calculateOnOpening`:
 * some value in it is not right.
 */
export async function writeWorkbook(
  workbook: Workbook,
  changes: Map<Sheet, SheetChanges>,
  { calculateOnOpening = false } = {},
): Promise<Uint8Array> {
  const opened = workbook.package;
  const parts = new Map<string, Uint8Array | Packed>();
  const list = opened.entry(workbook.part);
  if (calculateOnOpening && list) {
    const part = XmlElement.part(opened.xml(list.name) ?? '');
    requestFullCalculation(part.root);
    parts.set(list.name, opened.codec.toBytes(String(part)));
  }
  for (const [sheet, cells] of changes) {
    const entry = opened.entry(sheet.part);
    if (!sheet.cells || !entry) continue;
    const packed = await packPieces(patchSheet(sheet.cells, cells));
    if (packed) parts.set(entry.name, packed);
  }
  return writeArchive(opened.archive, { replaced: parts }, opened.codec);
}
