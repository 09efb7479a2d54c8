import type { OpenCell, RowFinding } from '../../check/rowFact.js';
import type { HoleToEdge } from '../../part/edgeClearances.js';
import type { Cause, Edge } from '../../part/outline.js';
import type { PlacedHole } from '../../part/part.js';
import { toleranceMm } from '../../part/tolerance.js';
import { liesIn, voidsOf } from '../../part/void.js';
import type { HeldLayout } from './edgeFindings.js';
import { holesOf, type LaidGroup } from './layGroup.js';

/** The hole of a group that lies farthest off the part, and beyond which edge. */
export interface Beyond {
  mm: number;
  edge: Edge;
  hole: PlacedHole;
}

/** A hole whose center cannot lie on the part is a slip in the row, not a distance that is short. */
export function noteBeyond(
  beyond: Map<number, Beyond>,
  hole: PlacedHole,
  edge: Edge,
  { center }: HoleToEdge,
): void {
  const mm = -center.most;
  if (mm <= toleranceMm || mm <= (beyond.get(hole.group)?.mm ?? 0)) return;
  if (edge.cause.is === 'notch' || edge.cause.is === 'clip') return;
  beyond.set(hole.group, { mm, edge, hole });
}

/** Groups with a hole beside the part, or wholly in a notch or clip where there is no steel: slips in the row. */
export function offTheSteel(
  layout: HeldLayout,
  beyond: ReadonlyMap<number, Beyond>,
): Map<number, RowFinding> {
  const found = new Map<number, RowFinding>();
  for (const [group, cause] of holesInCuts(layout)) found.set(group, inACut(layout, group, cause));
  for (const [group, each] of beyond) found.set(group, offThePart(layout, group, each));
  return found;
}

/** The groups with a placed hole that lies wholly in a notch or clip, and which. */
function holesInCuts({ faces, groups }: HeldLayout): Map<number, Cause> {
  const found = new Map<number, Cause>();
  for (const face of faces) {
    if (!face.outline.edges.some(({ cause }) => isCut(cause))) continue;
    for (const around of voidsOf(face.outline)) {
      const cause = around.edges[0]?.cause;
      if (!cause || !isCut(cause)) continue;
      const own = holesOf(groups).filter((hole) => hole.face === face.id && !hole.free);
      for (const { group, shape } of own) if (liesIn(around, shape)) found.set(group, cause);
    }
  }
  return found;
}

function isCut({ is }: Cause): boolean {
  return is === 'notch' || is === 'clip';
}

function inACut({ groups }: HeldLayout, group: number, cause: Cause): RowFinding {
  const laid = groups.find(({ index }) => index === group);
  const cells = laid ? [...cellsOf(laid, true).slice(1), ...cellsOf(laid, false)] : [];
  const correct = [...new Map(cells.map((cell) => [cell.cell, cell])).values()];
  const at = { cell: cause.is === 'clip' ? 'Clip at' : 'Notch at' };
  const fact = { rule: 'hole in a cut', group, cause, correct: [...correct, at] } as const;
  return { ...fact, outcome: 'failed', verdict: 'Check input' };
}

function offThePart({ faces, groups }: HeldLayout, group: number, { mm, edge, hole }: Beyond): RowFinding {
  const face = faces.find(({ id }) => id === hole.face);
  const alongLength = edge.cause.is.includes('end') || edge.cause.is.startsWith('miter');
  const xs = face?.outline.edges.map(({ from }) => from.x) ?? [];
  const laid = groups.find(({ index }) => index === group);
  return {
    rule: 'hole off the part',
    outcome: 'failed',
    verdict: 'Check input',
    group,
    beyondMm: mm,
    cause: edge.cause.is,
    face: hole.face,
    sizeMm: alongLength ? Math.max(...xs) - Math.min(...xs) : (face?.widthMm ?? 0),
    correct: laid ? cellsOf(laid, alongLength) : [],
  };
}

/** The cells that place a group along the part or across it, as the row fills them. */
function cellsOf({ group }: LaidGroup, alongLength: boolean): OpenCell[] {
  const { number, holesAt, endMm, pitchMm, pitchesMm, edgeMm, gageMm } = group;
  const filled = (cell: string, ...values: unknown[]): OpenCell[] =>
    values.some((value) => value !== undefined) ? [{ cell, group: number }] : [];
  if (holesAt) return filled('Holes at', holesAt);
  if (alongLength)
    return [{ cell: 'Length' }, ...filled('End', endMm), ...filled('Pitch', pitchMm, pitchesMm)];
  const across = [...filled('Edge', edgeMm), ...filled('Gage', gageMm)];
  return across.length > 0 ? across : filled('Hole', group.hole);
}
