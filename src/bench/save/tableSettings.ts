import type { TableConfig } from '@odoo/o-spreadsheet';
import { zoneAddress, type Zone } from '../../sheet/address.js';
import { applyEdits } from '../../xlsx/xml/cutElements.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import { childElements, withChild } from './parts/childElements.js';
import { withAttribute } from './parts/cellMarks.js';

const order = ['autoFilter', 'sortState', 'tableColumns', 'tableStyleInfo', 'extLst'];
/** Styles that every desktop program knows; styles made in the grid are known to it alone. */
const known = /^TableStyle(?:Light|Medium|Dark)\d+$/;
const switches = {
  firstColumn: 'showFirstColumn',
  lastColumn: 'showLastColumn',
  bandedRows: 'showRowStripes',
  bandedColumns: 'showColumnStripes',
} as const;

/** A table's part with the settings that differ from those the grid was given. */
export function withTableSettings(
  xml: string,
  zone: Zone,
  now: TableConfig,
  given: Omit<TableConfig, 'automaticAutofill'>,
): string {
  let out = xml;
  const hasHeader = now.numberOfHeaders > 0;
  if (hasHeader !== given.numberOfHeaders > 0)
    out = withRootAttribute(out, 'headerRowCount', hasHeader ? undefined : '0');
  if (now.totalRow !== given.totalRow)
    out = withRootAttribute(out, 'totalsRowCount', now.totalRow ? '1' : undefined);
  const filters = now.hasFilters && hasHeader;
  if (filters !== (given.hasFilters && given.numberOfHeaders > 0) || now.totalRow !== given.totalRow) {
    const ref = zoneAddress({ ...zone, bottom: zone.bottom - (now.totalRow ? 1 : 0) });
    out = withChild(out, 'autoFilter', filters ? `<autoFilter ref="${ref}"/>` : undefined, order);
  }
  const style = styleInfo(out, now, given);
  return style === undefined ? out : withChild(out, 'tableStyleInfo', style, order);
}

function styleInfo(
  xml: string,
  now: TableConfig,
  given: Omit<TableConfig, 'automaticAutofill'>,
): string | undefined {
  let style =
    childElements(xml).find(({ name }) => name === 'tableStyleInfo')?.text ??
    '<tableStyleInfo showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/>';
  const before = style;
  if (now.styleId !== given.styleId && known.test(now.styleId))
    style = withAttribute(style, 'name', now.styleId);
  for (const [name, attribute] of Object.entries(switches) as [keyof typeof switches, string][])
    if (now[name] !== given[name]) style = withAttribute(style, attribute, now[name] ? '1' : '0');
  return style === before ? undefined : style;
}

function withRootAttribute(xml: string, name: string, value: string | undefined): string {
  const reader = new XmlReader(xml);
  reader.next();
  const { tagStart: start, tagEnd: end } = reader;
  return applyEdits(xml, [{ start, end, text: withAttribute(xml.slice(start, end), name, value) }]);
}
