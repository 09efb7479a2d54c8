import { parseZone } from '../../xlsx';
import { XmlReader } from '../../xlsx/xml/reader';

/** A rule that colours cells where a formula holds. */
export interface ColourRule {
  ranges: string[];
  formula: string;
  difference: number;
  stops: boolean;
}

/** What the grid shows of a sheet besides its cells. */
export interface Layout {
  /** Widths in characters by column, `[first, last, width, hidden]`. */
  columns: { first: number; last: number; width: number | undefined; hidden: boolean }[];
  frozen: { rows: number; columns: number };
  rules: ColourRule[];
}

/** Reads a worksheet part for its columns, frozen panes and colour rules; the cells are passed over. */
export function readLayout(xml: string): Layout {
  const layout: Layout = { columns: [], frozen: { rows: 0, columns: 0 }, rules: [] };
  const reader = new XmlReader(xml);
  let ranges: string[] = [];
  while (reader.next()) {
    if (reader.closing) continue;
    if (reader.name === 'sheetData') reader.position = endOfCells(reader);
    else if (reader.name === 'pane') layout.frozen = readPane(reader);
    else if (reader.name === 'col') layout.columns.push(readColumn(reader));
    else if (reader.name === 'conditionalFormatting')
      ranges = (reader.attribute('sqref') ?? '').split(/\s+/).filter((range) => parseZone(range));
    else if (reader.name === 'cfRule' && reader.attribute('type') === 'expression')
      readRule(reader, ranges, layout);
  }
  return layout;
}

function endOfCells(reader: XmlReader): number {
  if (reader.empty) return reader.position;
  const end = reader.xml.indexOf(`</${reader.prefix}sheetData>`, reader.position);
  return end < 0 ? reader.position : end;
}

function readPane(reader: XmlReader): Layout['frozen'] {
  if (!reader.attribute('state')?.startsWith('frozen')) return { rows: 0, columns: 0 };
  return { rows: Number(reader.attribute('ySplit') ?? 0), columns: Number(reader.attribute('xSplit') ?? 0) };
}

function readColumn(reader: XmlReader): Layout['columns'][number] {
  const width = reader.attribute('width');
  return {
    first: Number(reader.attribute('min') ?? 1) - 1,
    last: Number(reader.attribute('max') ?? 1) - 1,
    width: width === undefined ? undefined : Number(width),
    hidden: reader.attribute('hidden') === '1',
  };
}

function readRule(reader: XmlReader, ranges: string[], layout: Layout): void {
  const difference = Number(reader.attribute('dxfId'));
  const stops = reader.attribute('stopIfTrue') === '1';
  while (reader.next() && !(reader.closing && reader.name === 'cfRule')) {
    if (reader.closing || reader.name !== 'formula') continue;
    layout.rules.push({ ranges, formula: reader.text(), difference, stops });
  }
}
