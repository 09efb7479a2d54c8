import { sides, type CellLook, type Line } from '../../open/cellLook.js';
import { childElements, withChild } from '../parts/childElements.js';
import { colorElement } from './font.js';

const order = ['start', 'left', 'end', 'right', 'top', 'bottom', 'diagonal', 'vertical', 'horizontal'];
/** Names of the same sides in the strict dialect. */
const strictNames: Readonly<Record<string, string>> = { left: 'start', right: 'end' };

/** Borders with the sides that differ between two looks; the others, and diagonals, stay. */
export function changedBorder(border: string, from: CellLook['borders'], to: CellLook['borders']): string {
  return sides.reduce((text, side) => {
    const line = to?.[side];
    if (sameLine(from?.[side], line)) return text;
    const strict = strictNames[side];
    const name = strict && childElements(text).some((child) => child.name === strict) ? strict : side;
    return withChild(text, name, lineElement(name, line), order);
  }, border);
}

const lineElement = (name: string, line: Line | undefined): string =>
  line ? `<${name} style="${line.style}">${colorElement('color', line.color)}</${name}>` : `<${name}/>`;

export const sameLine = (a: Line | undefined, b: Line | undefined): boolean =>
  a?.style === b?.style && a?.color === b?.color;
