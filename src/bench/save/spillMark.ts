import { cellKey } from '../../sheet/address.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import type { OpenBook } from '../open/openBook.js';

/** The number that marks formulas that spill, from one that does. */
export function spillMark({ workbook, formulas }: OpenBook): string | undefined {
  const spilling = formulas.find(({ stored }) => stored.kind === 'dynamic');
  const cells = spilling && workbook.sheets[spilling.sheet]?.cells;
  const i = cells?.index.get(cellKey(spilling?.row ?? 0, spilling?.column ?? 0));
  if (!cells || i === undefined) return undefined;
  const reader = new XmlReader(cells.xml.slice(cells.starts[i], cells.ends[i]));
  return reader.next() ? reader.attribute('cm') : undefined;
}
