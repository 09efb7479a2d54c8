import { isBlank } from '../../../core/quantity/cellValue.js';
import { assumptionWords } from '../../../core/say/assumptionWords.js';
import { settingRows } from '../../../core/shop/settings.js';
import { nameKey } from '../../../core/shop/table.js';
import type { ShopState } from '../../shared/shopState.js';
import type { ReportRow } from './lists.js';
import { namedMarks } from './marks.js';

/** Something that was taken where rows or shop do not say, with the marks of the rows. */
export interface Assumption {
  text: string;
  rows: number;
  marks: string;
}

/** Marks named beside an assumption; the first page has to hold them all. */
const mostMarks = 12;

/** What the shop leaves to usual values, then what the rows assumed, most often first. */
export function assumptionsOf(
  rows: readonly ReportRow[],
  { shop, tables }: Extract<ShopState, { kind: 'ready' }>,
): Assumption[] {
  const found = new Map<string, string[]>();
  for (const { result, mark } of rows) {
    const texts = result.readings.flatMap((reading) => assumptionWords(reading, shop.unit));
    for (const text of new Set(texts)) found.set(text, [...(found.get(text) ?? []), mark]);
  }
  const ofRows = [...found]
    .sort(([, a], [, b]) => b.length - a.length)
    .map(([text, marks]) => ({
      text: capital(text),
      rows: marks.length,
      marks: namedMarks(marks, mostMarks),
    }));
  const given = new Set(
    (tables.settings?.values ?? []).filter((row) => !isBlank(row[1])).map(([name]) => nameKey(name)),
  );
  const usual = Object.values(settingRows)
    .map(({ name }) => name)
    .filter((name) => !given.has(nameKey(name)));
  const ofShop = [
    ...(shop.tools ? [] : ['The shop has no list of tools, so tools were not checked']),
    ...(usual.length > 0 ? [`Usual values for: ${usual.join(', ')}`] : []),
  ];
  return [...ofShop.map((text) => ({ text, rows: 0, marks: '' })), ...ofRows];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
