import type { Shape } from '../drawing.js';
import { segment } from '../path.js';
import { spanAlong } from './outlineSpan.js';
import type { PartPlan } from './partPlan.js';
import { rightOf, type View, xOf, yOf } from './partView.js';

/** The edges inside the outline, of the other leg, the web or the flanges, from end to end at the miters' angle. */
export function innerEdgeShapes(view: View, plan: PartPlan): Shape[] {
  return innerEdges(view, plan).flatMap((edge) => edgeShapes(view, plan, edge));
}

interface InnerEdge {
  /** From the bottom edge or heel. */
  atMm: number;
  line: 'outline' | 'hidden';
}

function edgeShapes(view: View, { face }: PartPlan, { atMm, line }: InnerEdge): Shape[] {
  const span = spanAlong(face.outline.edges, atMm);
  if (!span) return [];
  const y = yOf(view, atMm);
  const from = xOf(view, span[0]) ?? view.left;
  const to = xOf(view, span[1]) ?? rightOf(view);
  const breaks = view.broken ? view.broken.endMm * view.pixelPerMm : undefined;
  const pieces =
    breaks === undefined
      ? [[from, to] as const]
      : [[from, view.left + breaks] as const, [rightOf(view) - breaks, to] as const];
  return pieces.map(([start, end]) => ({ kind: 'line', path: segment(start, y, end, y), line }));
}

/** The heel of an angle is a double line at the operator; legs and flanges that hang down are hidden edges. */
function innerEdges(view: View, { section, face }: PartPlan): InnerEdge[] {
  const leastMm = 4 / view.pixelPerMm;
  if (section.kind === 'angle') return [{ atMm: Math.max(section.thicknessMm, leastMm), line: 'outline' }];
  if (section.kind !== 'channel') return [];
  if (face.id !== 'web') return [{ atMm: Math.max(section.webThicknessMm, leastMm), line: 'outline' }];
  const flangeMm = Math.max(section.flangeThicknessMm, leastMm);
  return [
    { atMm: flangeMm, line: 'hidden' },
    { atMm: view.widthMm - flangeMm, line: 'hidden' },
  ];
}
