import type { CellLook } from '../../open/cellLook.js';
import { childElements, withChild, withPrefix } from '../parts/childElements.js';
import { withAttribute } from '../parts/cellMarks.js';

/** A cell's style with the alignment that differs between two looks. */
export function withAlignment(xf: string, from: CellLook, to: CellLook, prefix: string): string {
  const attributes: [string, string | undefined][] = [];
  if (from.align !== to.align) attributes.push(['horizontal', to.align]);
  if (from.verticalAlign !== to.verticalAlign)
    attributes.push(['vertical', to.verticalAlign === 'middle' ? 'center' : to.verticalAlign]);
  if (!from.wrap !== !to.wrap) attributes.push(['wrapText', to.wrap ? '1' : undefined]);
  if (!from.clip !== !to.clip) attributes.push(['shrinkToFit', to.clip ? '1' : undefined]);
  if (from.turn !== to.turn) attributes.push(['textRotation', fileRotation(to.turn)]);
  if (attributes.length === 0) return xf;
  const before = childElements(xf).find(({ name }) => name === 'alignment')?.text;
  const alignment = attributes.reduce(
    (element, [name, value]) => withAttribute(element, name, value),
    before ?? withPrefix('<alignment/>', prefix),
  );
  const changed = withChild(xf, 'alignment', alignment, ['alignment', 'protection', 'extLst']);
  return withAttribute(changed, 'applyAlignment', '1');
}

/** Upwards from 1 to 90, downwards from 91 to 180. */
function fileRotation(turn: number | undefined): string | undefined {
  if (!turn) return undefined;
  return String(turn < 0 ? -turn : 90 + turn);
}
