import type { Table } from '../sheet/table.js';
import { parseZone } from '../sheet/address.js';
import { XmlReader } from './xml/reader.js';
import { unescapeString } from './xml/text.js';

/** Reads a table part; undefined when it lacks what a table needs. */
export function readTable(xml: string, sheet: number): Table | undefined {
  const reader = new XmlReader(xml);
  let table: Table | undefined;
  while (reader.next()) {
    if (reader.closing) continue;
    if (reader.name === 'table') {
      const zone = parseZone(reader.attribute('ref') ?? '');
      const name = reader.attribute('displayName') ?? reader.attribute('name');
      const headerRows = Number(reader.attribute('headerRowCount') ?? 1);
      const totalsRows = Number(reader.attribute('totalsRowCount') ?? 0);
      const areRows = [headerRows, totalsRows].every((count) => Number.isInteger(count) && count >= 0);
      // A table whose counts make no sense is none that formulas could name.
      if (!zone || !name || !areRows || headerRows + totalsRows > zone.bottom - zone.top + 1)
        return undefined;
      table = {
        name,
        sheet,
        zone,
        headerRows,
        totalsRows,
        columns: [],
      };
    } else if (reader.name === 'tableColumn')
      table?.columns.push(unescapeString(reader.attribute('name') ?? ''));
  }
  return table;
}
