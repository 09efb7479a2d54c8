import { exactly } from '../../check/range.js';
import type { RowFinding } from '../../check/rowFact.js';
import { coreGap } from '../../part/coreGap.js';
import { overhangMm } from '../../part/inside.js';
import { type Edge, sameCause } from '../../part/outline.js';
import type { Face } from '../../part/part.js';
import { toleranceMm } from '../../part/tolerance.js';
import { distanceFinding } from './distanceFinding.js';
import { WorstDistances } from './measured.js';
import type { Layout } from './layoutOf.js';

/** A point this far from every edge lies in the steel, not on its rim. */
const withinMm = 1e-3;

/**
 * The steel between a cut and what lies across from it: another cut, an end, the far edge. What is left must be at least
 * as thick as it is wide, or it bends away under the blade. Common practice, no source.
 */
export function sliverFindings(layout: Layout): RowFinding[] {
  const worst = new WorstDistances();
  for (const [number, face] of layout.faces.entries()) {
    const { edges } = face.outline;
    for (const [at, edge] of edges.entries()) {
      for (let other = at + 2; other < edges.length; other += 1) {
        if (at === 0 && other === edges.length - 1) continue;
        holdApart(worst, number, face, edge, edges[other] ?? edge);
      }
    }
  }
  return [...worst].map(({ fact, outcome }) => distanceFinding(layout, fact, outcome));
}

function holdApart(worst: WorstDistances, number: number, face: Face, a: Edge, b: Edge): void {
  if (!isCut(a) && !isCut(b)) return;
  if (sameCause(a.cause, b.cause)) return;
  const { distance, a: from, b: to } = coreGap([a.from, a.to], [b.from, b.to]);
  if (distance <= toleranceMm || distance >= face.thicknessMm) return;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  if (overhangMm(face.outline, { core: [middle], radius: withinMm }) > toleranceMm) return;
  const measured = { kind: 'between cuts', from: 'rim', given: exactly(distance) } as const;
  worst.add({ ...measured, at: [from, to], limit: exactly(face.thicknessMm) }, number, () => ({
    face: face.id,
    between: [
      { is: 'edge', cause: a.cause, kind: a.kind },
      { is: 'edge', cause: b.cause, kind: b.kind },
    ],
  }));
}

function isCut({ cause }: Edge): boolean {
  return cause.is === 'notch' || cause.is === 'clip';
}
