import type { Package } from '../../xlsx/package';
import { XmlReader } from '../../xlsx/xml/reader';
import { builtInFormats } from './builtInFormats';

/** How cells of one style look, as far as the grid shows it. */
export interface CellLook {
  /** Undefined for the general format. */
  format?: string;
  bold?: boolean;
  italic?: boolean;
  textColor?: string;
  fillColor?: string;
  fontSize?: number;
  wrap?: boolean;
  align?: 'left' | 'center' | 'right';
}

export interface Styles {
  /** By the number that cells carry. */
  cells: CellLook[];
  /** What conditional formats add, by number. */
  differences: CellLook[];
}

const usualSize = 10;

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
      ...(format && format !== 'General' && { format }),
    };
  }

  private alignment(): void {
    const horizontal = this.reader.attribute('horizontal');
    if (this.reader.attribute('wrapText') === '1') this.look.wrap = true;
    if (horizontal === 'left' || horizontal === 'center' || horizontal === 'right')
      this.look.align = horizontal;
  }

  private detail(name: string): void {
    const { reader, look, section } = this;
    if (section !== 'fonts' && section !== 'fills' && section !== 'dxfs') return;
    const on = reader.attribute('val') !== '0';
    const size = Number(reader.attribute('val'));
    const color = /^(?:[\dA-F]{2})?([\dA-F]{6})$/i.exec(reader.attribute('rgb') ?? '')?.[1];
    if (name === 'b' && on) look.bold = true;
    else if (name === 'i' && on) look.italic = true;
    else if (name === 'sz' && size > 0 && size !== usualSize) look.fontSize = size;
    else if (name === 'color' && section !== 'fills' && color) look.textColor ??= `#${color}`;
    else if (name === (section === 'dxfs' ? 'bgColor' : 'fgColor') && color) look.fillColor = `#${color}`;
  }
}
