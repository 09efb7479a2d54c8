import { parseZone } from '../../sheet/address.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import { rgbOf } from './color.js';

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
  /** Heights in points of rows that were given one. */
  heights: Map<number, number>;
  frozen: { rows: number; columns: number };
  gridLines: boolean;
  /** The colour of its tab. */
  color: string | undefined;
  rules: ColourRule[];
}

/** Reads a worksheet part for its columns, frozen panes and colour rules; the cells are passed over. */
export function readLayout(xml: string): Layout {
  const layout: Layout = {
    columns: [],
    heights: readHeights(xml),
    frozen: { rows: 0, columns: 0 },
    gridLines: true,
    color: undefined,
    rules: [],
  };
  const reader = new XmlReader(xml);
  let ranges: string[] = [];
  while (reader.next()) {
    if (reader.closing) continue;
    if (reader.name === 'sheetData') reader.position = endOfCells(reader);
    else if (reader.name === 'pane') layout.frozen = readPane(reader);
    else if (reader.name === 'sheetView') layout.gridLines = !isFalse(reader.attribute('showGridLines'));
    else if (reader.name === 'tabColor') layout.color = rgbOf(reader);
    else if (reader.name === 'col') layout.columns.push(readColumn(reader));
    else if (reader.name === 'conditionalFormatting')
      ranges = (reader.attribute('sqref') ?? '').split(/\s+/).filter((range) => parseZone(range));
    else if (reader.name === 'cfRule' && reader.attribute('type') === 'expression')
      readRule(reader, ranges, layout);
  }
  return layout;
}

const isTrue = (text: string | undefined) => text === '1' || text === 'true';
const isFalse = (text: string | undefined) => text === '0' || text === 'false';

function readHeights(xml: string): Layout['heights'] {
  const heights = new Map<number, number>();
  for (const [tag] of xml.matchAll(/<(?:\w+:)?row\s[^>]*\sht\s*=[^>]*>/g)) {
    const reader = new XmlReader(tag);
    reader.next();
    const row = Number(reader.attribute('r')) - 1;
    if (row >= 0 && isTrue(reader.attribute('customHeight')))
      heights.set(row, Number(reader.attribute('ht')));
  }
  return heights;
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
    hidden: isTrue(reader.attribute('hidden')),
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
