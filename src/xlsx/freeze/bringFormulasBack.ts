import { findPlaces } from '../../sheet/keptFormulas/findPlaces.js';
import { PlaceNotFound } from '../../sheet/keptFormulas/listedPlace.js';
import { sameName } from '../../sheet/names.js';
import { cellAddress, cellKey, parseZone, zoneAddress } from '../../sheet/address.js';
import { sameStored } from '../../sheet/cellValue.js';
import { isFormulaList, type ListedFormula, readFormulaList } from './formulaList.js';
import { filledCells } from './frozenSheet.js';
import { requestFullCalculation } from '../fullCalculation.js';
import { PackageParts } from '../packageParts.js';
import { unlistSheets } from '../sheetList.js';
import { plain, sheetCellsOf } from './sheetCells.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import { PartCells } from '../partCells.js';
import { writeCell } from '../writeCell.js';
import { openWorkbook, type Sheet, type Workbook } from '../workbook.js';
import type { XmlElement } from '../xml/element.js';
import { encodeString } from '../xml/text.js';
import { portableCodec, type Codec } from '../zip/codec.js';

export interface FormulasBack {
  bytes: Uint8Array;
  /** Formulas that are back, each compared with the list. */
  restored: number;
  /** Those of them that went to another cell than they came from, since rows or columns moved. */
  moved: number;
  /** Cells whose row was deleted: their formula is not back. */
  gone: string[];
  /** Cells that somebody changed in the copy: their formula is back, what was typed is not. */
  changed: string[];
}

/** A formula with the cell it goes to. */
interface Placed extends ListedFormula {
  row: number;
  column: number;
}

/**
 * Brings the formulas of a values copy back, each into its row and column, which are found by what is typed there and
 * by the heading, and the list sheet goes. Refuses a file without a list, and one where the place of a formula cannot
 * be told; then nothing is changed.
 */
export function bringFormulasBack(bytes: Uint8Array, codec: Codec = portableCodec): FormulasBack {
  const workbook = openWorkbook(bytes, codec);
  const list = workbook.sheets.find(isFormulaList);
  if (!list) return refuseWorkbook('The file holds no list of formulas: it is no copy made for the shop.');
  const { formulas, problems } = readFormulaList(list);
  const [problem] = problems;
  if (problem !== undefined) refuseWorkbook(`The formulas were not brought back. ${problem}`);
  const { placed, gone } = placedFormulas(formulas, workbook);
  const parts = new PackageParts(workbook.package);
  const changed: string[] = [];
  for (const sheet of workbook.sheets) {
    const own = placed.filter(({ sheet: name }) => sameName(name, sheet.name));
    if (own.length > 0) bringBack(parts.root(sheet.part), sheet, own, changed);
  }
  unlistSheets(parts, workbook, [list]);
  const moved = placed.filter(({ cell, row, column }) => cell !== cellAddress(row, column)).length;
  if (changed.length + moved + gone.length > 0) requestFullCalculation(parts.root(workbook.part));
  parts.remove(list.part);
  const back = parts.toBytes();
  refuseDifferent(openWorkbook(back, codec), placed);
  return { bytes: back, restored: placed.length, moved, gone, changed };
}

function placedFormulas(
  formulas: readonly ListedFormula[],
  workbook: Workbook,
): { placed: Placed[]; gone: string[] } {
  const listed = formulas.map((formula) => ({
    ...filledCells(formula),
    sheet: formula.sheet,
    formula: formula.text,
    value: plain(formula.value),
    anchor: formula.anchor,
  }));
  try {
    const places = findPlaces(listed, sheetCellsOf(workbook));
    const gone: string[] = [];
    const placed = formulas.flatMap((formula, at): Placed[] => {
      const place = places[at];
      if (!place) {
        gone.push(`${formula.sheet}!${formula.cell}`);
        return [];
      }
      const attributes = movedRef(formula.attributes, place.row - (listed[at]?.row ?? place.row));
      return [{ ...formula, attributes, text: place.formula, row: place.row, column: place.column }];
    });
    return { placed, gone };
  } catch (error) {
    if (!(error instanceof PlaceNotFound)) throw error;
    return refuseWorkbook(`The formulas were not brought back: ${error.message}`);
  }
}

/** The range an array filled, some rows further down. */
function movedRef(attributes: string, down: number): string {
  return attributes.replace(/\bref="([A-Z\d:]+)"/, (whole, ref: string) => {
    const zone = parseZone(ref);
    return zone
      ? `ref="${zoneAddress({ ...zone, top: zone.top + down, bottom: zone.bottom + down })}"`
      : whole;
  });
}

function bringBack(
  root: XmlElement,
  { cells, name }: Sheet,
  formulas: readonly Placed[],
  changed: string[],
): void {
  if (!cells) return refuseWorkbook(`The sheet ${JSON.stringify(name)} holds no cells.`);
  const written = new PartCells(root);
  for (const { row, column, value, text, attributes, metadata } of formulas) {
    const now = cells.values[cells.index.get(cellKey(row, column)) ?? -1] ?? null;
    if (!sameStored(now === '' ? null : now, value === '' ? null : value))
      changed.push(`${name}!${cellAddress(row, column)}`);
    // A program leaves out a cell that shows nothing.
    const isNew = !written.has(row, column);
    const cell = written.cell(row, column);
    if (isNew) writeCell(cell, { row, column, value: '' }, isNew);
    // A text that was typed meanwhile is kept as the formula's last value.
    if (metadata !== '') cell.set({ cm: metadata });
    cell.put('f', `<f${attributes && ' '}${attributes}>${encodeString(text)}</f>`);
  }
}

function refuseDifferent({ sheets }: Workbook, formulas: readonly Placed[]): void {
  const byName = new Map(sheets.map((sheet) => [sheet.name.toLowerCase(), sheet.cells]));
  for (const { sheet, row, column, text } of formulas) {
    const cells = byName.get(sheet.toLowerCase());
    const found = cells?.formulas[cells.index.get(cellKey(row, column)) ?? -1];
    if (found?.text !== text)
      refuseWorkbook(
        `The formulas were not brought back: ${sheet}!${cellAddress(row, column)} did not come out the same.`,
      );
  }
}
