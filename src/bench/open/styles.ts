import type { Package } from '../../xlsx/package.js';
import { XmlElement } from '../../xlsx/xml/element.js';
import { builtInFormats } from './builtInFormats.js';
import { sides, usualSize, type CellLook, type Side } from './cellLook.js';

export interface Styles {
  /** By the number that cells carry. */
  cells: CellLook[];
  /** What conditional formats add, by number. */
  differences: CellLook[];
}

/** Reads the styles part of a workbook. */
export function readStyles(opened: Package, part = 'xl/styles.xml'): Styles {
  const xml = opened.xml(part);
  if (xml === undefined) return { cells: [], differences: [] };
  const root = XmlElement.read(xml);
  const items = (list: string) => root.child(list)?.children ?? [];
  const own = items('numFmts').map((format): [number, string] => [
    Number(format.attribute('numFmtId')),
    format.attribute('formatCode') ?? 'General',
  ]);
  const builtIn = Object.entries(builtInFormats).map(([id, code]): [number, string] => [Number(id), code]);
  const formats = new Map([...builtIn, ...own]);
  const fonts = items('fonts').map(fontLook);
  const fills = items('fills').map((fill) => fillLook(fill, 'fgColor'));
  const borders = items('borders').map(borderLook);
  const cells = items('cellXfs').map((xf): CellLook => {
    const id = (attribute: string) => Number(xf.attribute(attribute) ?? 0);
    const format = formats.get(id('numFmtId'));
    return {
      ...fonts[id('fontId')],
      ...fills[id('fillId')],
      ...borders[id('borderId')],
      ...(format && format !== 'General' && { format }),
      ...alignmentLook(xf.child('alignment')),
    };
  });
  const differences = items('dxfs').map((dxf) => ({
    ...fontLook(dxf.child('font')),
    ...fillLook(dxf.child('fill'), 'bgColor'),
  }));
  return { cells, differences };
}

/** The color that an element names, as `#1F2933`; undefined for one of a theme or a palette. */
export function rgbOf(element: XmlElement | undefined): string | undefined {
  const digits = /^(?:[\dA-F]{2})?([\dA-F]{6})$/i.exec(element?.attribute('rgb') ?? '')?.[1];
  return digits && `#${digits.toUpperCase()}`;
}

/** The elements of a font that are there or not. */
export const fontSwitches = { bold: 'b', italic: 'i', strikethrough: 'strike', underline: 'u' } as const;

function fontLook(font: XmlElement | undefined): CellLook {
  const isOn = (element: string) => {
    const switched = font?.child(element);
    return switched !== undefined && !['0', 'false', 'none'].includes(switched.attribute('val') ?? '');
  };
  const switches = Object.entries(fontSwitches).filter(([, element]) => isOn(element));
  const size = Number(font?.child('sz')?.attribute('val'));
  const textColor = rgbOf(font?.child('color'));
  return {
    ...Object.fromEntries(switches.map(([name]) => [name, true])),
    ...(size > 0 && size !== usualSize && { fontSize: size }),
    ...(textColor && { textColor }),
  };
}

function fillLook(fill: XmlElement | undefined, color: 'fgColor' | 'bgColor'): CellLook {
  const fillColor = rgbOf(fill?.child('patternFill')?.child(color));
  return fillColor ? { fillColor } : {};
}

function borderLook(border: XmlElement): CellLook {
  const lines = sides.flatMap((side) => {
    const line = border.child(side) ?? border.child(strictNames[side] ?? '');
    const style = engineLines[line?.attribute('style') ?? 'none'];
    return style ? [[side, { style, color: rgbOf(line?.child('color')) ?? '#000000' }]] : [];
  });
  return lines.length > 0 ? { borders: Object.fromEntries(lines) } : {};
}

function alignmentLook(alignment: XmlElement | undefined): CellLook {
  const is = (name: string) => ['1', 'true'].includes(alignment?.attribute(name) ?? '');
  const horizontal = alignment?.attribute('horizontal');
  const vertical = alignment?.attribute('vertical');
  // Upwards from 1 to 90, downwards from 91 to 180.
  const turned = Number(alignment?.attribute('textRotation') ?? 0);
  return {
    ...(is('wrapText') ? { wrap: true } : is('shrinkToFit') && { clip: true }),
    ...((horizontal === 'left' || horizontal === 'center' || horizontal === 'right') && {
      align: horizontal,
    }),
    ...(vertical === 'top' && { verticalAlign: 'top' }),
    ...(vertical === 'center' && { verticalAlign: 'middle' }),
    ...(turned >= 1 && turned <= 180 && { turn: turned <= 90 ? -turned : turned - 90 }),
  };
}

/** Names of the same sides in the strict dialect. */
export const strictNames: Partial<Record<Side, string>> = { left: 'start', right: 'end' };

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
