import { applyEdits, cutElements, type TextEdit } from '../../xlsx/xml/cutElements.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import { encodeString } from '../../xlsx/xml/text.js';
import { childElements } from './parts/childElements.js';
import { withAttribute } from './parts/cellMarks.js';

/** A sheet as the workbook is to list it. */
export interface ListedSheet {
  /** Its place in the list as it is. */
  from: number;
  /** Undefined where that was not changed. */
  visible: boolean | undefined;
}

/** The workbook's part with its sheets in another order, hidden, shown or gone. */
export function withSheetList(xml: string, wanted: readonly ListedSheet[]): string {
  const list = childElements(xml).find(({ name }) => name === 'sheets');
  if (!list) return xml;
  const sheets = childElements(list.text);
  const same =
    sheets.length === wanted.length &&
    wanted.every(({ from, visible }, at) => from === at && visible === undefined);
  if (same) return xml;
  const elements = wanted.map(({ from, visible }) => {
    const element = sheets[from]?.text ?? '';
    return visible === undefined ? element : withAttribute(element, 'state', visible ? undefined : 'hidden');
  });
  const [first, last] = [sheets[0], sheets[sheets.length - 1]];
  if (!first || !last) return xml;
  const text = list.text.slice(0, first.start) + elements.join('') + list.text.slice(last.end);
  const listed = xml.slice(0, list.start) + text + xml.slice(list.end);
  const shown = elements.findIndex((element) => !/\sstate\s*=/.test(element));
  const places = new Map(wanted.map(({ from }, at) => [from, at]));
  return renumbered(withoutLostNames(listed, places), places, (at) =>
    at === undefined || /\sstate\s*=/.test(elements[at] ?? '') ? shown : at,
  );
}

/** Names known only on sheets that are gone. */
function withoutLostNames(xml: string, places: ReadonlyMap<number, number>): string {
  return cutElements(xml, (reader) => {
    const local = reader.name === 'definedName' ? reader.attribute('localSheetId') : undefined;
    return local !== undefined && !places.has(Number(local));
  });
}

/** Where sheets are named by their place: names known on one sheet, and what each window shows. */
function renumbered(
  xml: string,
  places: ReadonlyMap<number, number>,
  window: (place: number | undefined) => number,
): string {
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  while (reader.next()) {
    if (reader.closing) continue;
    if (reader.name === 'definedName') {
      const bounds = reader.attributeBounds('localSheetId');
      const place = bounds && places.get(Number(xml.slice(bounds.start, bounds.end)));
      if (bounds && place !== undefined) edits.push({ ...bounds, text: String(place) });
    } else if (reader.name === 'workbookView') {
      const { tagStart: start, tagEnd: end } = reader;
      const active = window(places.get(Number(reader.attribute('activeTab') ?? 0)));
      // The tabs are shown from the first one on.
      const tag = withAttribute(xml.slice(start, end), 'firstSheet', undefined);
      edits.push({
        start,
        end,
        text: withAttribute(tag, 'activeTab', active > 0 ? String(active) : undefined),
      });
    }
  }
  return applyEdits(xml, edits);
}

/** Defined names that the grid does not keep, with their texts changed; those that come to nothing go. */
export function withNameTexts(
  xml: string,
  change: (text: string, sheet: number | undefined) => string,
): string {
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  while (reader.next()) {
    if (reader.closing || reader.empty || reader.name !== 'definedName') continue;
    const { tagStart: start, tagEnd } = reader;
    const local = reader.attribute('localSheetId');
    const before = reader.text();
    const after = change(before, local === undefined ? undefined : Number(local));
    if (after === before) continue;
    const lost = after.includes('#REF!') && !before.includes('#REF!');
    if (lost) edits.push({ start, end: reader.position, text: '' });
    else edits.push({ start: tagEnd, end: reader.tagStart, text: encodeString(after) });
  }
  return withoutEmptyNames(applyEdits(xml, edits));
}

export function withoutEmptyNames(xml: string): string {
  const names = childElements(xml).find(({ name }) => name === 'definedNames');
  if (!names || childElements(names.text).length > 0) return xml;
  return xml.slice(0, names.start) + xml.slice(names.end);
}
