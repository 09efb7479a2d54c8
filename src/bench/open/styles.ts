import type { Package } from '../../xlsx/package.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import { builtInFormats } from './builtInFormats.js';
import { rgbOf } from './color.js';
import { usualSize, type CellLook, type Line, type Side } from './cellLook.js';

export interface Styles {
  /** By the number that cells carry. */
  cells: CellLook[];
  /** What conditional formats add, by number. */
  differences: CellLook[];
}

/** Reads the styles part of a workbook, forward, once. */
export function readStyles(opened: Package, part = 'xl/styles.xml'): Styles {
  const xml = opened.xml(part);
  return xml === undefined ? { cells: [], differences: [] } : new StylesReader(xml).read();
}

class StylesReader {
  private readonly reader: XmlReader;
  private readonly formats = new Map<number, string>(
    Object.entries(builtInFormats).map(([id, code]) => [Number(id), code]),
  );
  private readonly fonts: CellLook[] = [];
  private readonly fills: CellLook[] = [];
  private readonly borders: CellLook[] = [];
  private line: Line | undefined;
  private readonly styles: Styles = { cells: [], differences: [] };
  private section = '';
  private look: CellLook = {};

  constructor(xml: string) {
    this.reader = new XmlReader(xml);
  }

  read(): Styles {
    const { reader } = this;
    while (reader.next()) {
      if (['fonts', 'fills', 'cellXfs', 'dxfs', 'cellStyleXfs', 'borders'].includes(reader.name))
        this.section = reader.closing ? '' : reader.name;
      else if (!reader.closing) this.element();
    }
    return this.styles;
  }

  private element(): void {
    const { name } = this.reader;
    if (name === 'numFmt' && this.section !== 'dxfs')
      this.formats.set(
        Number(this.reader.attribute('numFmtId')),
        this.reader.attribute('formatCode') ?? 'General',
      );
    else if (this.section === 'fonts' && name === 'font') this.fonts.push((this.look = {}));
    else if (this.section === 'fills' && name === 'fill') this.fills.push((this.look = {}));
    else if (this.section === 'borders' && name === 'border') this.borders.push((this.look = {}));
    else if (this.section === 'dxfs' && name === 'dxf') this.styles.differences.push((this.look = {}));
    else if (this.section === 'cellXfs' && name === 'xf')
      this.styles.cells.push((this.look = this.cellStyle()));
    else if (this.section === 'cellXfs' && name === 'alignment') this.alignment();
    else this.detail(name);
  }

  private cellStyle(): CellLook {
    const id = (attribute: string) => Number(this.reader.attribute(attribute) ?? 0);
    const format = this.formats.get(id('numFmtId'));
    return {
      ...this.fonts[id('fontId')],
      ...this.fills[id('fillId')],
      ...this.borders[id('borderId')],
      ...(format && format !== 'General' && { format }),
    };
  }

  private alignment(): void {
    const { reader, look } = this;
    const horizontal = reader.attribute('horizontal');
    const vertical = reader.attribute('vertical');
    // Upwards from 1 to 90, downwards from 91 to 180.
    const turned = Number(reader.attribute('textRotation') ?? 0);
    if (isTrue(reader.attribute('wrapText'))) look.wrap = true;
    else if (isTrue(reader.attribute('shrinkToFit'))) look.clip = true;
    if (horizontal === 'left' || horizontal === 'center' || horizontal === 'right') look.align = horizontal;
    if (vertical === 'top') look.verticalAlign = 'top';
    if (vertical === 'center') look.verticalAlign = 'middle';
    if (turned >= 1 && turned <= 180) look.turn = turned <= 90 ? -turned : turned - 90;
  }

  private detail(name: string): void {
    const { reader, look, section } = this;
    if (section === 'borders') return this.borderDetail(name);
    if (section !== 'fonts' && section !== 'fills' && section !== 'dxfs') return;
    const value = reader.attribute('val');
    const on = value !== '0' && value !== 'false' && value !== 'none';
    const size = Number(value);
    const color = rgbOf(reader);
    if (name === 'b' && on) look.bold = true;
    else if (name === 'i' && on) look.italic = true;
    else if (name === 'strike' && on) look.strikethrough = true;
    else if (name === 'u' && on) look.underline = true;
    else if (name === 'sz' && size > 0 && size !== usualSize) look.fontSize = size;
    else if (name === 'color' && section !== 'fills' && color) look.textColor ??= color;
    else if (name === (section === 'dxfs' ? 'bgColor' : 'fgColor') && color) look.fillColor = color;
  }

  private borderDetail(name: string): void {
    const { reader, look } = this;
    if (name === 'color') {
      if (this.line) this.line.color = rgbOf(reader) ?? '#000000';
      return;
    }
    const side = sideNames[name];
    const style = engineLines[reader.attribute('style') ?? 'none'];
    this.line = side && style ? { style, color: '#000000' } : undefined;
    if (side && this.line) look.borders = { ...look.borders, [side]: this.line };
  }
}

const sideNames: Readonly<Record<string, Side>> = {
  left: 'left',
  start: 'left',
  right: 'right',
  end: 'right',
  top: 'top',
  bottom: 'bottom',
};

/** Lines as the grid draws them, which has fewer kinds: ECMA-376 Part 1, 18.18.3 (ST_BorderStyle). */
const engineLines: Readonly<Record<string, string>> = {
  thin: 'thin',
  hair: 'thin',
  medium: 'medium',
  double: 'medium',
  thick: 'thick',
  dashed: 'dashed',
  dashDot: 'dashed',
  dashDotDot: 'dashed',
  mediumDashed: 'dashed',
  mediumDashDot: 'dashed',
  mediumDashDotDot: 'dashed',
  slantDashDot: 'dashed',
  dotted: 'dotted',
};

const isTrue = (text: string | undefined) => text === '1' || text === 'true';
