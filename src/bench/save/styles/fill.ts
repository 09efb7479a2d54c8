import { withPrefix } from '../parts/childElements.js';
import { colorElement } from './font.js';

/** A plain fill of a colour, or none. */
export function plainFill(color: string | undefined, prefix: string): string {
  const fill = color
    ? `<fill><patternFill patternType="solid">${colorElement('fgColor', color)}<bgColor indexed="64"/></patternFill></fill>`
    : '<fill><patternFill patternType="none"/></fill>';
  return withPrefix(fill, prefix);
}
