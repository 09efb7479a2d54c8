import { cellKey, parseCell } from './address';
import { sameStored } from './cellValue';
import { isFormulaList, readFormulaList } from './freeze/formulaList';
import { type FrozenFormula } from './freeze/frozenSheet';
import { withFullCalculation } from './fullCalculation';
import { Parts } from './freeze/parts';
import { removeSheets } from './freeze/removeSheets';
import { refuseWorkbook } from './refusal';
import { openWorkbook, type Sheet, type Workbook } from './workbook';
import { applyEdits, type TextEdit } from './xml/cutElements';
import { XmlReader } from './xml/reader';
import { encodeString } from './xml/text';
import { portableCodec, type Codec } from './zip/codec';
import { editArchive } from './zip/editArchive';

export interface FormulasBack {
  bytes: Uint8Array;
  /** Formulas that are back, each compared with the list. */
  restored: number;
  /** Cells that somebody changed in the copy: their formula is back, what was typed is not. */
  changed: string[];
}

/**
 * Brings the formulas of a values copy back: each into its cell, as it was stored, and the list sheet goes. Refuses a
 * file without a list, and one whose list names a sheet or cell that is not there; then nothing is changed.
 */
export function bringFormulasBack(bytes: Uint8Array, codec: Codec = portableCodec): FormulasBack {
  const workbook = openWorkbook(bytes, codec);
  const list = workbook.sheets.find(isFormulaList);
  if (!list) return refuseWorkbook('The file holds no list of formulas: it is no copy made for the shop.');
  const { formulas, problems } = readFormulaList(list);
  const [problem] = problems;
  if (problem !== undefined) refuseWorkbook(`The formulas were not brought back. ${problem}`);
  const parts = new Parts(workbook.package);
  const changed: string[] = [];
  for (const sheet of workbook.sheets) {
    const own = formulas.filter(({ sheet: name }) => name === sheet.name);
    if (own.length > 0) parts.put(sheet.part, withFormulas(sheet, own, changed));
  }
  refuseMissing(workbook, formulas);
  removeSheets(parts, workbook, [list]);
  if (changed.length > 0) parts.put(workbook.part, withFullCalculation(parts.needed(workbook.part)));
  parts.remove(list.part);
  parts.removeContentTypes();
  const back = editArchive(workbook.package.archive, parts.edits(), codec);
  refuseDifferent(openWorkbook(back, codec), formulas);
  return { bytes: back, restored: formulas.length, changed };
}

function refuseMissing({ sheets }: Workbook, formulas: readonly FrozenFormula[]): void {
  const names = new Set(sheets.map(({ name }) => name));
  const lost = formulas.find(({ sheet }) => !names.has(sheet));
  if (lost)
    refuseWorkbook(`The formulas were not brought back: there is no sheet ${JSON.stringify(lost.sheet)}.`);
}

function withFormulas({ cells, name }: Sheet, formulas: readonly FrozenFormula[], changed: string[]): string {
  if (!cells) return refuseWorkbook(`The sheet ${JSON.stringify(name)} holds no cells.`);
  const edits = formulas.map((formula): TextEdit => {
    const place = parseCell(formula.cell);
    const at = place && cells.index.get(cellKey(place.row, place.column));
    if (at === undefined)
      return refuseWorkbook(
        `The formulas were not brought back: the cell ${formula.cell} of ${JSON.stringify(name)} is gone.`,
      );
    if (
      !sameStored(cells.values[at] ?? null, formula.value) &&
      !(formula.value === null && cells.values[at] === '')
    )
      changed.push(`${name}!${formula.cell}`);
    const start = cells.starts[at] ?? 0;
    return {
      start,
      end: cells.ends[at] ?? start,
      text: cellWithFormula(cells.xml.slice(start, cells.ends[at]), formula),
    };
  });
  return applyEdits(cells.xml, edits);
}

/** The formula stands before the value. A text that was typed meanwhile is kept as the formula's last value. */
function cellWithFormula(cell: string, { text, attributes, metadata }: FrozenFormula): string {
  const reader = new XmlReader(cell);
  reader.next();
  const { prefix, empty, tagEnd } = reader;
  const open = cell.slice(0, tagEnd - (empty ? 2 : 1)).trimEnd();
  const mark = metadata === '' ? '' : ` cm="${metadata}"`;
  const own = attributes === '' ? '' : ` ${attributes}`;
  const formula = `<${prefix}f${own}>${encodeString(text)}</${prefix}f>`;
  const inner = empty ? '' : cell.slice(tagEnd, cell.length - `</${prefix}c>`.length);
  return `${open}${mark}>${formula}${inner}</${prefix}c>`;
}

function refuseDifferent({ sheets }: Workbook, formulas: readonly FrozenFormula[]): void {
  const byName = new Map(sheets.map((sheet) => [sheet.name, sheet.cells]));
  for (const { sheet, cell, text } of formulas) {
    const cells = byName.get(sheet);
    const place = parseCell(cell);
    const at = place && cells?.index.get(cellKey(place.row, place.column));
    const found = at === undefined ? undefined : cells?.formulas[at];
    const same = found?.text === text;
    if (!same)
      refuseWorkbook(`The formulas were not brought back: ${sheet}!${cell} did not come out the same.`);
  }
}
