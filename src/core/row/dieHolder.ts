import type { Finding, Outcome } from '../check/finding.js';
import type { Range } from '../check/range.js';
import { heelDistance } from '../part/heelDistance.js';
import type { PlacedHole } from '../part/part.js';
import { limitOf, limitStep, roundingShare } from '../press/limit.js';
import type { Working } from '../working/working.js';
import { fromNearerEdge, type HolesOnPress, openReach, unreachable } from './holesOnPress.js';

/** Whether the die holder fits between the holes and the fillet or flange beside them. */
export function dieHolder(
  holes: HolesOnPress,
  beside: 'fillet' | 'flange',
  takenMm: number,
  working?: Working,
): Finding {
  const { press, laid } = holes;
  const item = 'punchDieHalfWidth';
  const room = roomBeside(holes, beside, takenMm);
  const half = limitOf(press, item);
  if (typeof half !== 'number') {
    limitStep(
      working,
      press,
      item,
      { kind: 'length', value: room.most, meaning: meaningOf(beside) },
      '≥',
      half.verdict,
    );
    return half;
  }
  const needMm = half * (1 - roundingShare);
  const outcome: Outcome =
    !Number.isFinite(half) || room.least >= needMm ? 'held' : room.most >= needMm ? 'open' : 'failed';
  const given = outcome === 'failed' ? room.most : room.least;
  const verdict = outcome === 'held' ? 'OK' : unreachable;
  limitStep(working, press, item, { kind: 'length', value: given, meaning: meaningOf(beside) }, '≥', verdict);
  if (outcome === 'open') return openReach(press, laid, item, room, half);
  return {
    rule: 'die holder',
    outcome,
    verdict,
    press: press.name,
    beside,
    given,
    ...(Number.isFinite(half) ? { limit: half } : {}),
  };
}

function meaningOf(beside: 'fillet' | 'flange'): string {
  return `from the hole to the ${beside}`;
}

/** From the holes to what stands up beside them: the fillet of a leg; the nearer flange of a web. */
function roomBeside({ laid, face }: HolesOnPress, beside: 'fillet' | 'flange', takenMm: number): Range {
  const ranges = distinct(laid.holes).map((hole): Range => {
    const { center } = heelDistance(hole);
    return beside === 'fillet' ? center : fromNearerEdge(center, face.widthMm);
  });
  return {
    least: Math.min(...ranges.map(({ least }) => least)) - takenMm,
    most: Math.min(...ranges.map(({ most }) => most)) - takenMm,
  };
}

/** One hole of each line: the others of a line lie as far across. */
function distinct(holes: readonly PlacedHole[]): PlacedHole[] {
  const kept: PlacedHole[] = [];
  const seen = new Set<string>();
  for (const hole of holes) {
    // Holes of a line follow each other.
    const last = kept.at(-1);
    if (last && isAsFarAcross(hole, last)) continue;
    const key = `${hole.center.y} ${hole.free?.y0 ?? 0} ${hole.free?.y1 ?? 0}`;
    if (!seen.has(key)) kept.push(hole);
    seen.add(key);
  }
  return kept;
}

function isAsFarAcross(a: PlacedHole, b: PlacedHole): boolean {
  if (a.center.y !== b.center.y) return false;
  return (a.free?.y0 ?? 0) === (b.free?.y0 ?? 0) && (a.free?.y1 ?? 0) === (b.free?.y1 ?? 0);
}
