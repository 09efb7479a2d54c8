import { type Piece, readPieces } from '../../sheet/formula/pieces.js';
import { sameName } from '../../sheet/names.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import type { Sheet, Workbook } from '../workbook.js';
import { attributeCut, applyEdits, cutElements, elementCuts, type TextEdit } from '../xml/cutElements.js';
import { XmlReader } from '../xml/reader.js';
import { isFormulaList } from './formulaList.js';
import { formulaCuts } from './frozenSheet.js';
import { callsAny, callsUs } from '../../sheet/formula/ourCalls.js';
import type { PackageParts } from '../packageParts.js';
import { removeSheets, withoutNames } from './removeSheets.js';
import { usedStrings, withoutUnusedStrings } from './sharedStrings.js';

const checks = ['ROWCHECK', 'LISTCHECK'];

/** The sheets a customer does not get: those the SHOP formula reads, with all that stands on them, and lists of formulas. */
export function shopSheets({ sheets, tables, names }: Workbook): Sheet[] {
  const calls = sheets.flatMap(({ cells }, at) =>
    (cells?.formulas ?? []).flatMap((formula) =>
      formula && callsAny(formula.text, ['SHOP']) ? { pieces: readPieces(formula.text), at } : [],
    ),
  );
  return sheets.filter((sheet, at) => {
    if (isFormulaList(sheet)) return true;
    const own = tables.filter((table) => table.sheet === at).map(({ name }) => name);
    const namesOfSheet = names.filter(({ text }) => namesSheet(readPieces(text), sheet.name));
    const known = [...own, ...namesOfSheet.map(({ name }) => name)];
    return calls.some(({ pieces, at: from }) => {
      const byName = pieces.some(
        (piece) =>
          (piece.kind === 'table' || piece.kind === 'name') &&
          known.some((name) => sameName(name, piece.name)),
      );
      const isOnlyLocal = pieces.every(
        (piece) => piece.kind !== 'table' && (!('sheet' in piece) || piece.sheet === undefined),
      );
      return byName || namesSheet(pieces, sheet.name) || (from === at && own.length === 0 && isOnlyLocal);
    });
  });
}

/** Whether a formula names a sheet. */
function namesSheet(pieces: readonly Piece[], name: string): boolean {
  return pieces.some((piece) => 'sheet' in piece && piece.sheet !== undefined && sameName(piece.sheet, name));
}

function hasWord(text: string, word: string): boolean {
  return text.split(/[^\p{L}\p{N}_.\\]+/u).includes(word);
}

/** Turns a package into a customer's copy; gives the names that were taken out. */
export function makeCustomerCopy(
  parts: PackageParts,
  workbook: Workbook,
  removed: readonly Sheet[],
): string[] {
  const kept = workbook.sheets.filter((sheet) => !removed.includes(sheet));
  refuseMixed(removed, kept);
  const tables = workbook.tables.filter((table) => removed.includes(workbook.sheets[table.sheet] as Sheet));
  const gone = [
    ...removed.map(({ name }) => name),
    ...tables.map(({ name }) => name),
    ...workbook.names.map(({ name }) => name),
  ];
  for (const sheet of kept) {
    cleanSheet(parts, sheet, gone);
    dropPrinterSettings(parts, sheet);
  }
  removeSheets(parts, workbook, removed);
  const part = parts.workbookPart();
  const { xml, names } = withoutNames(parts.needed(part), (name) => !name.startsWith('_xlnm.'));
  parts.set(
    part,
    cutElements(xml, ({ name }) => name === 'externalReferences'),
  );
  const unwanted = ['calcChain', 'externalLink', 'xlExternalLinkPath', 'customXml', 'connections'];
  parts.drop(part, ({ type }) => unwanted.includes(type));
  const outer = [
    'webextensiontaskpanes',
    'extended-properties',
    'custom-properties',
    'core-properties',
    'thumbnail',
    'customXml',
  ];
  parts.drop('', ({ type }) => outer.includes(type));
  emptyStrings(parts, part, kept);
  parts.removeUnreachable();
  return names;
}

function refuseMixed(removed: readonly Sheet[], kept: readonly Sheet[]): void {
  if (kept.length === 0)
    refuseWorkbook(
      'A copy for a customer would have no sheet: put the shop tables on a sheet of their own first.',
    );
  const mixed = removed.find(({ cells }) =>
    cells?.formulas.some((formula) => formula && callsAny(formula.text, checks)),
  );
  if (mixed)
    refuseWorkbook(
      `The shop tables stand on the sheet ${JSON.stringify(mixed.name)} together with checked parts: move them to a sheet of their own first.`,
    );
}

/** Values only: no formulas, no table formulas, no rules or links that mention what is gone. */
function cleanSheet(parts: PackageParts, sheet: Sheet, gone: readonly string[]): void {
  const { cells, part } = sheet;
  if (!cells) return;
  const rules = ['dataValidation', 'conditionalFormatting', 'hyperlink', 'sparklineGroup'];
  const dead = elementCuts(
    cells.xml,
    (reader) => rules.includes(reader.name) && mentions(elementText(reader), gone),
  );
  const cut = applyEdits(cells.xml, [...formulaCuts(cells, () => true), ...dead]);
  parts.set(part, withoutEmptyRules(cut));
  for (const { type, target } of parts.relationships(part)) {
    const xml = type === 'table' ? parts.xml(target) : undefined;
    if (xml !== undefined) parts.set(target, plainTable(xml));
  }
}

/** What a printer was set to names the printer, and often the network it is in. */
function dropPrinterSettings(parts: PackageParts, { part }: Sheet): void {
  const links = parts.relationships(part).filter(({ type }) => type === 'printerSettings');
  const xml = parts.xml(part);
  if (links.length === 0 || xml === undefined) return;
  const ids = links.map(({ id }) => id);
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  while (reader.next()) {
    if (reader.closing || reader.name !== 'pageSetup' || !ids.includes(reader.attribute('id') ?? ''))
      continue;
    edits.push(...attributeCut(reader, 'id'));
  }
  parts.set(part, applyEdits(xml, edits));
  parts.drop(part, ({ id }) => ids.includes(id));
}

function elementText(reader: XmlReader): string {
  const inner = new XmlReader(reader.xml.slice(reader.tagStart));
  inner.next();
  inner.skipElement();
  return inner.xml.slice(0, inner.position);
}

function mentions(text: string, gone: readonly string[]): boolean {
  const plain = text.replace(/&apos;/g, "'").toLowerCase();
  return (
    gone.some((name) => hasWord(plain, name.toLowerCase()) || plain.includes(`'${name.toLowerCase()}'!`)) ||
    callsUs(text)
  );
}

/** The elements around rules go when no rule is left, and their counts are set right. */
function withoutEmptyRules(xml: string): string {
  const counted = ['dataValidations', 'hyperlinks', 'sparklineGroups'];
  const edits: TextEdit[] = [];
  const reader = new XmlReader(xml);
  while (reader.next()) {
    if (reader.closing || reader.empty || !counted.includes(reader.name)) continue;
    const start = reader.tagStart;
    const bounds = reader.attributeBounds('count');
    const text = elementText(reader);
    const item = reader.name.slice(0, -1);
    const count = elementCuts(text, ({ name }) => name === item).length;
    if (count === 0) {
      reader.skipElement();
      edits.push({ start, end: reader.position, text: '' });
    } else if (bounds) edits.push({ ...bounds, text: String(count) });
  }
  return applyEdits(xml, edits);
}

/** A table without the formulas of its columns and of its total row. */
function plainTable(xml: string): string {
  const formulas = elementCuts(
    xml,
    ({ name }) => name === 'calculatedColumnFormula' || name === 'totalsRowFormula',
  );
  const reader = new XmlReader(xml);
  const totals: TextEdit[] = [];
  while (reader.next()) {
    if (!reader.closing && reader.name === 'tableColumn')
      totals.push(...attributeCut(reader, 'totalsRowFunction'));
  }
  return applyEdits(xml, [...formulas, ...totals]);
}

function emptyStrings(parts: PackageParts, workbookPart: string, kept: readonly Sheet[]): void {
  const link = parts.relationships(workbookPart).find(({ type }) => type === 'sharedStrings');
  const xml = link && parts.xml(link.target);
  if (!link || xml === undefined) return;
  const used = usedStrings(kept.flatMap(({ cells }) => cells ?? []));
  parts.set(link.target, withoutUnusedStrings(xml, used));
}
