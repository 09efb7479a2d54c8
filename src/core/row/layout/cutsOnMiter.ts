import type { RowFinding } from '../../check/rowFact.js';
import { type Cause, type Edge, sameCause } from '../../part/outline.js';
import { cellOf, type Layout, type Layouts } from './layoutOf.js';

/** The cells that say at which end and in which leg a cut or a miter is. */
const placing: readonly string[] = ['Clip at', 'Miter leg'];

/**
 * Notches and corner clips that start on a mitered end: no cell says from where on the slant a drawing gives their sizes,
 * so that where they lie is not checked. Source: geometry.
 */
export function cutsOnMiter({ layouts, choices }: Layouts): RowFinding[] {
  const found = layouts.filter(({ problem }) => !problem).map(startingOnMiter);
  const cuts = found.find((each) => each.length > 0);
  if (!cuts) return [];
  const isCertain = found.every((each) => each.length > 0);
  const cells = isCertain ? [] : choices.filter(({ cell }) => placing.includes(cell)).map(cellOf);
  return [{ rule: 'not held', outcome: 'open', verdict: 'OK so far', why: 'cut on a miter', cuts, cells }];
}

function startingOnMiter({ faces }: Layout): Cause[] {
  const causes = faces.flatMap(({ outline: { edges } }) =>
    edges.flatMap((edge, at) =>
      isCut(edge) && (isMiter(edges.at(at - 1)) || isMiter(edges[(at + 1) % edges.length]))
        ? [edge.cause]
        : [],
    ),
  );
  return causes.filter((cause, at) => causes.findIndex((each) => sameCause(each, cause)) === at);
}

function isCut({ cause }: Edge): boolean {
  return cause.is === 'notch' || cause.is === 'clip';
}

function isMiter(edge: Edge | undefined): boolean {
  return edge?.cause.is === 'miter left' || edge?.cause.is === 'miter right';
}
