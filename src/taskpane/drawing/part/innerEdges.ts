import type { HolePlace } from '../../../core/row/holePlace.js';
import type { Section } from '../../../core/section/section.js';
import type { Shape } from '../drawing.js';
import { segment } from '../path.js';
import { endAlongMm, type Ends } from '../../../core/row/outline/contour.js';
import { rightOf, type View, xOf, yOf } from './partView.js';

/** The edges inside the outline, of the other leg, the web or the flanges, from end to end at the miters' angle. */
export function innerEdgeShapes(
  view: View,
  ends: Ends,
  section: Section,
  element: HolePlace['element'] | undefined,
): Shape[] {
  return innerEdges(view, section, element).flatMap((edge) => edgeShapes(view, ends, edge));
}

interface InnerEdge {
  acrossMm: number;
  line: 'outline' | 'hidden';
}

function edgeShapes(view: View, ends: Ends, { acrossMm, line }: InnerEdge): Shape[] {
  const y = yOf(view, acrossMm);
  const from = xOf(view, endAlongMm(ends, 'stop', acrossMm)) ?? view.left;
  const to = xOf(view, endAlongMm(ends, 'far', acrossMm)) ?? rightOf(view);
  const breaks = view.broken ? view.broken.endMm * view.pixelPerMm : undefined;
  const pieces =
    breaks === undefined
      ? [[from, to] as const]
      : [[from, view.left + breaks] as const, [rightOf(view) - breaks, to] as const];
  return pieces.map(([start, end]) => ({ kind: 'line', path: segment(start, y, end, y), line }));
}

/** The heel of an angle is a double line at the operator; legs and flanges that hang down are hidden edges. */
function innerEdges(view: View, section: Section, element: HolePlace['element'] | undefined): InnerEdge[] {
  const leastMm = 4 / view.pixelPerMm;
  if (section.kind === 'angle')
    return [{ acrossMm: view.widthMm - Math.max(section.thicknessMm, leastMm), line: 'outline' }];
  if (section.kind !== 'channel') return [];
  if (element === 'flange')
    return [{ acrossMm: view.widthMm - Math.max(section.webThicknessMm, leastMm), line: 'outline' }];
  const flangeMm = Math.max(section.flangeThicknessMm, leastMm);
  return [
    { acrossMm: flangeMm, line: 'hidden' },
    { acrossMm: view.widthMm - flangeMm, line: 'hidden' },
  ];
}
