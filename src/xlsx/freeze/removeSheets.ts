import type { Sheet, Workbook } from '../workbook.js';
import { applyEdits, cutElements, type TextEdit } from '../xml/cutElements.js';
import { XmlReader } from '../xml/reader.js';
import type { PackageParts } from '../packageParts.js';

/** Takes sheets out of the list of sheets, with the relationships that lead to them. */
export function removeSheets(parts: PackageParts, workbook: Workbook, removed: readonly Sheet[]): void {
  const part = parts.workbookPart();
  const goes = new Set(removed.map(({ name }) => name));
  parts.set(part, withoutSheets(parts.needed(part), workbook, goes));
  const targets = new Set(removed.map((sheet) => sheet.part.toLowerCase()));
  parts.drop(part, ({ target }) => targets.has(target.toLowerCase()));
}

function withoutSheets(xml: string, { sheets }: Workbook, goes: ReadonlySet<string>): string {
  const place = new Map<number, number>();
  sheets.forEach(({ name }, at) => {
    if (!goes.has(name)) place.set(at, place.size);
  });
  const cut = cutElements(xml, (reader) => {
    if (reader.name === 'sheet') return goes.has(reader.attribute('name') ?? '');
    const local = reader.name === 'definedName' ? reader.attribute('localSheetId') : undefined;
    return local !== undefined && !place.has(Number(local));
  });
  return renumbered(cut, place);
}

/** Where sheets are named by their place: names known on one sheet, and what each window shows. */
function renumbered(xml: string, place: ReadonlyMap<number, number>): string {
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  const wanted: Record<string, string[]> = {
    definedName: ['localSheetId'],
    workbookView: ['activeTab', 'firstSheet'],
  };
  while (reader.next()) {
    if (reader.closing) continue;
    for (const attribute of wanted[reader.name] ?? []) {
      const bounds = reader.attributeBounds(attribute);
      const at = bounds && place.get(Number(xml.slice(bounds.start, bounds.end)));
      if (bounds) edits.push({ ...bounds, text: String(at ?? 0) });
    }
  }
  return applyEdits(xml, edits);
}

/** Takes out defined names, and the element around them when none is left. */
export function withoutNames(
  xml: string,
  goes: (name: string, text: string) => boolean,
): { xml: string; names: string[] } {
  const names: string[] = [];
  let kept = 0;
  const cut = cutElements(xml, (reader) => {
    if (reader.name !== 'definedName') return false;
    const name = reader.attribute('name') ?? '';
    const inner = new XmlReader(xml.slice(reader.tagStart));
    inner.next();
    const unwanted = goes(name, inner.text());
    if (unwanted) names.push(name);
    else kept += 1;
    return unwanted;
  });
  return { xml: kept > 0 ? cut : cutElements(cut, (reader) => reader.name === 'definedNames'), names };
}
