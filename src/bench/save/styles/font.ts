import { type CellLook, usualSize } from '../../open/cellLook.js';
import { withChild } from '../parts/childElements.js';

/** The order in which desktop programs write what a font has. */
const order = [
  'b',
  'i',
  'strike',
  'condense',
  'extend',
  'outline',
  'shadow',
  'u',
  'vertAlign',
  'sz',
  'color',
  'name',
  'family',
  'charset',
  'scheme',
];

/** A font with what differs between two looks; what the grid does not know of it stays. */
export function changedFont(font: string, from: CellLook, to: CellLook): string {
  let changed = font;
  const set = (name: string, text: string | undefined) => (changed = withChild(changed, name, text, order));
  if (!from.bold !== !to.bold) set('b', to.bold ? '<b/>' : undefined);
  if (!from.italic !== !to.italic) set('i', to.italic ? '<i/>' : undefined);
  if (!from.strikethrough !== !to.strikethrough) set('strike', to.strikethrough ? '<strike/>' : undefined);
  if (!from.underline !== !to.underline) set('u', to.underline ? '<u/>' : undefined);
  if (from.fontSize !== to.fontSize) set('sz', `<sz val="${to.fontSize ?? usualSize}"/>`);
  if (from.textColor !== to.textColor) set('color', colorElement('color', to.textColor));
  return changed;
}

/** A colour such as `#1F2933` as an element. */
export const colorElement = (name: string, color: string | undefined): string | undefined =>
  color && `<${name} rgb="FF${color.slice(1).toUpperCase()}"/>`;
