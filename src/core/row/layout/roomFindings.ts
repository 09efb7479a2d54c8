import type { RowFinding } from '../../check/rowFact.js';
import type { CauseKind } from '../../part/outline.js';
import { toleranceMm } from '../../part/tolerance.js';
import type { HeldLayout } from './edgeFindings.js';
import type { LaidGroup } from './layGroup.js';
import { roomForHoles } from './roomForHoles.js';
import type { Slack } from './slack.js';

/**
 * What a group that is not placed cannot have wherever it lies: room for so many holes, and room between two opposite
 * edges. Each of its distances by itself may be enough somewhere, all of them together nowhere.
 */
export function roomFindings(layout: HeldLayout, slack: Slack): RowFinding[] {
  return layout.groups.flatMap((laid) => {
    const face = layout.faces.find(({ id }) => id === laid.holes[0]?.face);
    return face ? [...roomForHoles(layout, laid, face), ...roomBetween(laid, slack)] : [];
  });
}

const opposite: readonly (readonly [CauseKind, CauseKind])[] = [
  ['left end', 'right end'],
  ['bottom edge', 'top edge'],
  ['heel', 'toe'],
];

/** A group that slides between two straight edges: what it gains at one it loses at the other. */
function roomBetween(laid: LaidGroup, slack: Slack): RowFinding[] {
  const free = laid.holes[0]?.free;
  if (!laid.rigid || !free) return [];
  return opposite.flatMap(([low, high]): RowFinding[] => {
    const travelMm = low === 'left end' ? free.x1 - free.x0 : free.y1 - free.y0;
    const [below, above] = [slack.of(laid.index, low), slack.of(laid.index, high)];
    if (travelMm <= toleranceMm || below === undefined || above === undefined) return [];
    if (below + above >= travelMm - toleranceMm) return [];
    const between = [low, high] as const;
    const fact = { rule: 'room at the edges', between, shortMm: travelMm - below - above } as const;
    return [{ ...fact, outcome: 'failed', verdict: 'Edge short', group: laid.index }];
  });
}
