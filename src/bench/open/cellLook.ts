import type { Border, Style } from '@odoo/o-spreadsheet';
import { writtenFormat } from '../engine/cellContent.js';

export type Side = 'top' | 'bottom' | 'left' | 'right';
export const sides: readonly Side[] = ['left', 'right', 'top', 'bottom'];

export interface Line {
  style: string;
  color: string;
}

/** How a cell looks, as far as the grid shows it; what is left out is as usual. */
export interface CellLook {
  /** Undefined for the general format. */
  format?: string;
  bold?: boolean;
  italic?: boolean;
  strikethrough?: boolean;
  underline?: boolean;
  textColor?: string;
  fillColor?: string;
  fontSize?: number;
  wrap?: boolean;
  /** Text stays inside its cell; in files it is made smaller for that. */
  clip?: boolean;
  align?: 'left' | 'center' | 'right';
  verticalAlign?: 'top' | 'middle';
  /** Degrees clockwise, from -90 to 90. */
  turn?: number;
  borders?: Partial<Record<Side, Line>>;
}

export const usualSize = 10;

/** A style of the grid that remembers which style of the file it came from, wherever its cell goes. */
export type FileStyle = Style & { fileStyle?: number };

/** What the grid is given for the style of a file with a number. */
export function engineStyle(look: CellLook, fileStyle: number): FileStyle {
  const { fontSize, wrap, clip, align, verticalAlign, turn } = look;
  const style = {
    ...lettering(look),
    ...(fontSize && { fontSize }),
    ...((wrap || clip) && { wrapping: wrap ? ('wrap' as const) : ('clip' as const) }),
    ...(align && { align }),
    ...(verticalAlign && { verticalAlign }),
    ...(turn && { rotation: (turn * Math.PI) / 180 }),
  };
  return fileStyle === 0 && Object.keys(style).length === 0 ? style : { ...style, fileStyle };
}

/** The look of a cell of the grid. */
export function lookOf(
  style: FileStyle | undefined,
  format: string | undefined,
  border: Border | null,
): CellLook {
  const { fontSize, align, verticalAlign, wrapping } = style ?? {};
  const colors = { textColor: plainColor(style?.textColor), fillColor: plainColor(style?.fillColor) };
  const turn = turnOf(style?.rotation ?? 0);
  const written = writtenFormat(format);
  const borders = border && linesOf(border);
  return {
    ...(written !== 'General' && { format: written }),
    ...lettering({ ...style, ...colors }),
    ...(fontSize && fontSize !== usualSize && { fontSize }),
    ...(wrapping === 'wrap' && { wrap: true }),
    ...(wrapping === 'clip' && { clip: true }),
    ...(align && { align }),
    ...(verticalAlign && verticalAlign !== 'bottom' && { verticalAlign }),
    ...(turn !== 0 && { turn }),
    ...(borders && Object.keys(borders).length > 0 && { borders }),
  };
}

const letteringNames = ['bold', 'italic', 'strikethrough', 'underline', 'textColor', 'fillColor'] as const;

/** What the grid and its files name alike; what is as usual is left out. */
function lettering(look: { [Name in (typeof letteringNames)[number]]?: CellLook[Name] | undefined }) {
  const given = letteringNames.flatMap((name) => (look[name] ? [[name, look[name]] as const] : []));
  return Object.fromEntries(given) as Pick<CellLook, (typeof letteringNames)[number]>;
}

function linesOf(border: Border): CellLook['borders'] {
  return Object.fromEntries(
    sides.flatMap((side) => {
      const line = border[side];
      return line ? [[side, { style: line.style, color: plainColor(line.color) ?? '#000000' }]] : [];
    }),
  );
}

/** The look of a cell, where everything the cell was not told itself is as in another look. */
export function withUsual(look: CellLook, style: Style | undefined, usual: CellLook): CellLook {
  const told = new Set(Object.keys(style ?? {}));
  const inherited = Object.entries(usual).filter(([name]) => !told.has(engineNames[name] ?? name));
  const { format, borders } = { ...usual, ...look };
  return {
    ...look,
    ...Object.fromEntries(inherited),
    ...(format && { format }),
    ...(borders && { borders: { ...usual.borders, ...borders } }),
  };
}

/** What the grid calls otherwise. */
const engineNames: Readonly<Record<string, string>> = {
  wrap: 'wrapping',
  clip: 'wrapping',
  turn: 'rotation',
};

function turnOf(radians: number): number {
  const degrees = Math.round((radians * 180) / Math.PI) % 180;
  if (degrees > 90) return degrees - 180;
  return degrees < -90 ? degrees + 180 : degrees;
}

/** `#RRGGBB` in capitals; undefined for none. */
function plainColor(color: string | undefined): string | undefined {
  return color && /^#[\dA-F]{6}/i.test(color) ? color.slice(0, 7).toUpperCase() : undefined;
}
