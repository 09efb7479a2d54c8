import { parseZone } from '../../sheet/address.js';
import type { Worksheet } from '../../xlsx/storedCells.js';
import { XmlElement } from '../../xlsx/xml/element.js';
import { ruleId } from './ruleRanges.js';
import { rgbOf, type Styles } from './styles.js';

const pixelsPerCharacter = 7.5;
const spareWidth = 5;

export const columnPixels = (characters: number) => Math.round(characters * pixelsPerCharacter + spareWidth);
export const columnCharacters = (pixels: number) => (pixels - spareWidth) / pixelsPerCharacter;
const rowPixels = (points: number) => Math.round((points * 4) / 3);
export const rowPoints = (pixels: number) => (pixels * 3) / 4;

type Headers = Record<number, { size?: number; isHidden?: boolean }>;

/** The engine's form of what a sheet shows besides its cells. */
export function layoutData(
  { xml, hiddenRows }: Worksheet,
  styles: Styles,
  size: { rows: number; columns: number },
): Record<string, unknown> {
  const sheet = XmlElement.read(withoutCells(xml));
  const view = sheet.child('sheetViews')?.child('sheetView');
  const pane = view?.child('pane');
  const isFrozen = pane?.attribute('state')?.startsWith('frozen');
  const split = (name: string) => (isFrozen ? Number(pane?.attribute(name) ?? 0) : 0);
  const color = rgbOf(sheet.child('sheetPr')?.child('tabColor'));
  const rows: Headers = {};
  for (const row of hiddenRows) if (row < size.rows) rows[row] = { isHidden: true };
  for (const [row, points] of givenHeights(xml))
    if (row < size.rows) rows[row] = { ...rows[row], size: rowPixels(points) };
  return {
    cols: columnsOf(sheet, size.columns),
    rows,
    areGridLinesVisible: !['0', 'false'].includes(view?.attribute('showGridLines') ?? ''),
    ...(color && { color }),
    panes: { xSplit: split('xSplit'), ySplit: split('ySplit') },
    conditionalFormats: colorRules(sheet, styles),
  };
}

const isTrue = (text: string | undefined) => text === '1' || text === 'true';

/** A sheet's part without its cells, which are many. */
function withoutCells(xml: string): string {
  const [start, end] = [xml.indexOf('sheetData>'), xml.lastIndexOf('sheetData>')];
  if (start === end) return xml;
  return xml.slice(0, xml.indexOf('>', start) + 1) + xml.slice(xml.lastIndexOf('</', end));
}

function columnsOf(sheet: XmlElement, count: number): Headers {
  const columns: Headers = {};
  for (const col of sheet.child('cols')?.children ?? []) {
    const number = (name: string) => Number(col.attribute(name) ?? 1) - 1;
    const width = col.attribute('width');
    const size = width !== undefined && { size: columnPixels(Number(width)) };
    // A width may be given for all columns to the end of the sheet.
    for (let at = number('min'); at <= Math.min(number('max'), count - 1); at++)
      columns[at] = { ...size, isHidden: isTrue(col.attribute('hidden')) };
  }
  return columns;
}

/** Heights in points of rows that were given one. */
function givenHeights(xml: string): Map<number, number> {
  const heights = new Map<number, number>();
  for (const [tag] of xml.matchAll(/<(?:\w+:)?row\s[^>]*\sht\s*=[^>]*>/g)) {
    const row = XmlElement.read(tag.replace(/\/?>$/, '/>'));
    const at = Number(row.attribute('r')) - 1;
    if (at >= 0 && isTrue(row.attribute('customHeight'))) heights.set(at, Number(row.attribute('ht')));
  }
  return heights;
}

/** Rules that color cells where a formula holds. */
function colorRules(sheet: XmlElement, { differences }: Styles): object[] {
  const rules = sheet.children
    .filter(({ name }) => name === 'conditionalFormatting')
    .flatMap((formatting) => {
      const ranges = (formatting.attribute('sqref') ?? '').split(/\s+/).filter((range) => parseZone(range));
      const known = formatting.children.filter((rule) => rule.attribute('type') === 'expression');
      return known.map((rule) => ({ rule, ranges }));
    });
  return rules.flatMap(({ rule, ranges }, at) => {
    const style = differences[Number(rule.attribute('dxfId'))];
    if (!style) return [];
    const { textColor, fillColor, bold } = style;
    return {
      id: ruleId(at),
      ranges,
      stopIfTrue: rule.attribute('stopIfTrue') === '1',
      rule: {
        type: 'CellIsRule',
        operator: 'customFormula',
        values: [`=${rule.child('formula')?.text ?? ''}`],
        style: { ...(textColor && { textColor }), ...(fillColor && { fillColor }), ...(bold && { bold }) },
      },
    };
  });
}
