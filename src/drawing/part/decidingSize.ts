import type { FindingOf } from '../../core/check/finding.js';
import type { Sized } from '../../core/check/pressFact.js';
import type { Point } from '../../core/part/point.js';
import { sizeLikeTyped } from '../../core/quantity/sizeLikeTyped.js';
import { say } from '../../core/say/say.js';
import { comparedSizes } from './comparedSizes.js';
import type { DecidingDistance, Drawn } from './decidingDistance.js';
import { halfMm } from './holeShapes.js';

type Finding = FindingOf<'press limit' | 'widest bar' | 'shear minimum' | 'smallest hole'>;

/** A size of the part or of a hole that the press cannot do, as a distance on the drawing; undefined where it has no place there. */
export function decidingSize(finding: Finding, drawn: Drawn): DecidingDistance | undefined {
  const { unit } = drawn;
  const { of, given: stated, limit } = sizeOf(finding);
  const place = placeOf(finding, of, drawn);
  if (!place || finding.outcome === 'held' || limit === undefined) return undefined;
  const given = stated ?? place.to.x - place.from.x;
  const size =
    of === 'length'
      ? (mm: number) => sizeLikeTyped(mm, drawn.length, unit)
      : comparedSizes(finding, given, drawn);
  return {
    ...place,
    text: `${size(given)} ${given > limit ? '>' : '<'} ${size(limit)}`,
    words: say(finding, unit).replace(/\.$/, ''),
  };
}

interface Size {
  of: 'hole' | 'width' | 'length' | undefined;
  given: number | undefined;
  limit: number | undefined;
}

const across = new Set<Sized['is']>(['cut', 'leg', 'round', 'square']);
const along = new Set<Sized['is']>(['part', 'rip']);

function sizeOf(finding: Finding): Size {
  switch (finding.rule) {
    case 'widest bar':
      return { of: 'width', given: finding.given, limit: finding.limit };
    case 'shear minimum':
      return {
        of: finding.sized === 'piece' ? 'length' : 'width',
        given: finding.given,
        limit: finding.limit,
      };
    case 'smallest hole':
      return { of: 'hole', given: undefined, limit: finding.limit };
    case 'press limit': {
      const { is } = finding.sized;
      const of = is === 'hole' ? 'hole' : across.has(is) ? 'width' : along.has(is) ? 'length' : undefined;
      return { of, given: finding.given, limit: finding.limit };
    }
  }
}

type Place = Pick<DecidingDistance, 'from' | 'to' | 'open'>;

function placeOf(finding: Finding, of: Size['of'], { groups, lengthMm, widthMm }: Drawn): Place | undefined {
  if (of === 'length') return { from: { x: 0, y: 0 }, to: { x: lengthMm, y: 0 }, open: [] };
  if (of === 'width') return { from: { x: 0, y: widthMm }, to: { x: 0, y: 0 }, open: [] };
  if (of === undefined) return undefined;
  const hole = groups.flatMap(({ holes }) => holes).find(({ group }) => group === finding.group);
  if (!hole) return undefined;
  const half = halfMm(hole);
  const at = (side: -1 | 1): Point => ({ x: hole.center.x + side * half.x, y: hole.center.y });
  return { from: at(-1), to: at(1), open: ['from', 'to'] };
}
