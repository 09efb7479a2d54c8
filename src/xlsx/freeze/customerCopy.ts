import { cellKey } from '../../sheet/address.js';
import { type Piece, readPieces } from '../../sheet/formula/pieces.js';
import { sameName } from '../../sheet/names.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import type { Sheet, Workbook } from '../workbook.js';
import { keepNames, unlistSheets } from '../sheetList.js';
import type { XmlElement } from '../xml/element.js';
import { isFormulaList } from './formulaList.js';
import { takeFormulasOut } from './frozenSheet.js';
import { keysOf, type LeftOut, takeOut } from './leaveOut.js';
import { callsAny, callsUs } from '../../sheet/formula/ourCalls.js';
import type { PackageParts } from '../packageParts.js';
import { usedStrings, emptyUnused } from './sharedStrings.js';

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
  left: readonly LeftOut[],
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
    takeOut(
      parts,
      sheet,
      left.filter((each) => each.sheet === sheet.name),
    );
    dropPrinterSettings(parts, sheet);
  }
  unlistSheets(parts, workbook, removed);
  const part = parts.workbookPart();
  const names: string[] = [];
  keepNames(parts.root(part), (element) => {
    const name = element.attribute('name') ?? '';
    const stays = name.startsWith('_xlnm.');
    if (!stays) names.push(name);
    return stays;
  });
  parts.root(part).put('externalReferences', undefined);
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
  emptyStrings(parts, part, kept, left);
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
  takeFormulasOut(parts.root(part), cells, () => true);
  withoutRules(parts.root(part), gone);
  for (const { type, target } of parts.relationships(part)) {
    const table = type === 'table' ? parts.find(target) : undefined;
    for (const column of table?.child('tableColumns')?.children ?? []) {
      column.set({ totalsRowFunction: undefined });
      column.keep(({ name }) => name !== 'calculatedColumnFormula' && name !== 'totalsRowFormula');
    }
  }
}

/** What a printer was set to names the printer, and often the network it is in. */
function dropPrinterSettings(parts: PackageParts, { part }: Sheet): void {
  const links = parts.relationships(part).filter(({ type }) => type === 'printerSettings');
  const ids = links.map(({ id }) => id);
  if (links.length === 0) return;
  for (const setup of parts.root(part).within('sheetData'))
    if (setup.name === 'pageSetup' && ids.includes(setup.attribute('id') ?? '')) setup.set({ id: undefined });
  parts.drop(part, ({ id }) => ids.includes(id));
}

const rules = ['dataValidation', 'conditionalFormatting', 'hyperlink', 'sparklineGroup'];

/** Takes out rules that mention what is gone; the elements around them go when none is left, and count right. */
function withoutRules(element: XmlElement, gone: readonly string[]): void {
  element.keep((child) => {
    if (child.name === 'sheetData') return true;
    if (rules.includes(child.name)) return !mentions(String(child), gone);
    withoutRules(child, gone);
    if (!rules.includes(child.name.replace(/s$/, ''))) return true;
    const { length } = child.children;
    if (child.attribute('count') !== undefined) child.set({ count: length });
    return length > 0;
  });
}

function mentions(text: string, gone: readonly string[]): boolean {
  const plain = text.replace(/&apos;/g, "'").toLowerCase();
  return (
    gone.some((name) => hasWord(plain, name.toLowerCase()) || plain.includes(`'${name.toLowerCase()}'!`)) ||
    callsUs(text)
  );
}

function emptyStrings(
  parts: PackageParts,
  workbookPart: string,
  kept: readonly Sheet[],
  left: readonly LeftOut[],
): void {
  const link = parts.relationships(workbookPart).find(({ type }) => type === 'sharedStrings');
  const texts = link && parts.find(link.target);
  const used = kept.flatMap(({ name, cells }) => {
    const empty = keysOf(left, name);
    return cells ? [{ cells, stays: (row: number, column: number) => !empty.has(cellKey(row, column)) }] : [];
  });
  if (texts) emptyUnused(texts, usedStrings(used));
}
