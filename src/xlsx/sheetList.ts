import type { PackageParts } from './packageParts.js';
import type { Sheet, Workbook } from './workbook.js';
import { attributeText } from './xml/text.js';
import type { XmlElement } from './xml/element.js';

const relationships = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** A sheet as the workbook is to list it. */
export interface ListedSheet {
  /** Its place in the list as it is. */
  from: number;
  /** Undefined where that was not changed. */
  visible?: boolean | undefined;
}

/** Adds a sheet, which a relationship leads to, to the list of the workbook's part. */
export function addListedSheet(workbook: XmlElement, name: string, link: string): void {
  const list = workbook.made('sheets');
  const sheets = list.children;
  const ids = sheets.map((sheet) => Number(sheet.attribute('sheetId') ?? 0));
  const greatest = ids.reduce((most, id) => Math.max(most, id), 0);
  // As this file writes the attribute: `r:id` in most.
  const known = /\s([\w.-]+:id)\s*=/.exec(sheets.join(''))?.[1];
  const id = known ?? `xmlns:r="${relationships}" r:id`;
  list.insert(`<sheet name="${attributeText(name)}" sheetId="${greatest + 1}" ${id}="${link}"/>`);
}

/** Has the workbook's sheets in another order, hidden, shown or gone. */
export function listSheets(workbook: XmlElement, wanted: readonly ListedSheet[]): void {
  const list = workbook.child('sheets');
  const before = list?.children ?? [];
  const isSame = ({ from, visible }: ListedSheet, at: number) => from === at && visible === undefined;
  if (!list || (before.length === wanted.length && wanted.every(isSame))) return;
  const sheets = wanted.flatMap(({ from, visible }) => {
    if (visible !== undefined) before[from]?.set({ state: visible ? undefined : 'hidden' });
    return before[from] ?? [];
  });
  list.holds(sheets);
  const places = new Map(wanted.map(({ from }, at) => [from, at]));
  // Names known only on one sheet tell it by its place, and go with it.
  keepNames(workbook, (name) => {
    const local = name.attribute('localSheetId');
    const place = local === undefined ? undefined : places.get(Number(local));
    if (place !== undefined) name.set({ localSheetId: place });
    return local === undefined || place !== undefined;
  });
  const isShown = (at: number | undefined) =>
    at !== undefined && sheets[at]?.attribute('state') === undefined;
  const shown = sheets.findIndex((_, at) => isShown(at));
  for (const view of workbook.child('bookViews')?.children ?? []) {
    const at = places.get(Number(view.attribute('activeTab') ?? 0));
    const active = isShown(at) ? (at as number) : shown;
    // The tabs are shown from the first one on.
    view.set({ firstSheet: undefined, activeTab: active > 0 ? active : undefined });
  }
}

/** Takes sheets out of the list of sheets, with the relationships that lead to them. */
export function unlistSheets(parts: PackageParts, { sheets }: Workbook, gone: readonly Sheet[]): void {
  const part = parts.workbookPart();
  listSheets(
    parts.root(part),
    sheets.flatMap((sheet, from) => (gone.includes(sheet) ? [] : { from })),
  );
  const targets = new Set(gone.map((sheet) => sheet.part.toLowerCase()));
  parts.drop(part, ({ target }) => targets.has(target.toLowerCase()));
}

/** Takes out defined names that do not pass, and what is around them with the last. */
export function keepNames(workbook: XmlElement, stays: (name: XmlElement) => boolean): void {
  const names = workbook.child('definedNames');
  if (names?.keep(stays).children.length === 0) workbook.put('definedNames', undefined);
}
