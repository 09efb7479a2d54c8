import { XmlReader } from '../../../xlsx/xml/reader.js';

/** The style of cells that a sheet does not list: that of their row, or of their column. */
export function usualStyles(xml: string): (row: number, column: number) => number {
  const rows = new Map<number, number>();
  const columns: { first: number; last: number; style: number }[] = [];
  const tags = /<(?:\w+:)?(?:row|col)\s[^>]*\b(?:s|style)\s*=[^>]*>/g;
  for (const [tag] of xml.matchAll(tags)) {
    const reader = new XmlReader(tag);
    reader.next();
    const number = (name: string) => Number(reader.attribute(name) ?? 0);
    if (reader.name === 'col')
      columns.push({ first: number('min') - 1, last: number('max') - 1, style: number('style') });
    else if (number('s') > 0 && reader.attribute('r')) rows.set(number('r') - 1, number('s'));
  }
  return (row, column) =>
    rows.get(row) ?? columns.find(({ first, last }) => column >= first && column <= last)?.style ?? 0;
}
