import { childElements, withChild } from '../parts/childElements.js';
import { colorElement } from '../styles/font.js';
import { sheetOrder } from '../parts/sheetOrder.js';

/** A sheet's part with the colour of its tab. */
export function withTabColor(xml: string, color: string | undefined): string {
  const before = childElements(xml).find(({ name }) => name === 'sheetPr')?.text;
  const element = colorElement('tabColor', color || undefined);
  if (!before && !element) return xml;
  const properties = withChild(before ?? '<sheetPr/>', 'tabColor', element, [
    'tabColor',
    'outlinePr',
    'pageSetUpPr',
  ]);
  return withChild(xml, 'sheetPr', properties, sheetOrder);
}
