import type { RowFinding } from '../../check/rowFact.js';
import { exactly } from '../../check/range.js';
import { bendClearances } from '../../part/bendClearances.js';
import { leastHoleToBendMm } from '../../rule/holeToBend.js';
import { insideRadiusOfVeeMm } from '../../tooling/bendLimits.js';
import { leastFlangeMm } from '../../tooling/leastFlange.js';
import type { PlacedBend } from './bendLines.js';
import { distanceFinding } from './distanceFinding.js';
import { givenOf } from './distanceLimits.js';
import type { Layout } from './layoutOf.js';
import { holesOf } from './layGroup.js';
import { WorstDistances } from './measured.js';

/**
 * What a bend made in a V opening asks of the part: steel from every hole to the bend, and flanges that the V carries.
 *
 * Formula: rim of the hole to the bend line ≥ 2 · t + R; line to edge, and line to line, ≥ 0.77 · V; R = V / 6
 * Source: common practice, no source.
 */
export function bendDistances(layout: Layout, veeMm: number): RowFinding[] {
  const [face] = layout.faces;
  if (!face || layout.bends.length === 0) return [];
  const { thicknessMm, widthMm } = face;
  const insideRadiusMm = insideRadiusOfVeeMm(veeMm);
  const worst = new WorstDistances();
  const leastMm = leastHoleToBendMm({ thicknessMm, insideRadiusMm });
  const bends = layout.bends.map(({ from, to }) => ({ face: face.id, from, to, insideRadiusMm }));
  const holes = holesOf(layout.groups);
  bendClearances({ holes, bends }, (hole, bend, { rim }) => {
    const measured = {
      kind: 'hole to bend',
      from: 'rim',
      given: givenOf(rim),
      limit: exactly(leastMm),
    } as const;
    worst.add({ ...measured, at: rim.least.at }, hole.group, () => ({
      face: face.id,
      between: [
        { is: 'hole', group: hole.group, index: hole.index },
        { is: 'bend', index: bends.indexOf(bend) },
      ],
    }));
  });
  const flangeMm = leastFlangeMm({ veeMm });
  for (const { bend, from, toMm, mm } of flangesOf(layout, widthMm)) {
    const at = bend.runs === 'across' ? { x: toMm, y: bend.from.y } : { x: bend.from.x, y: toMm };
    const measured = { kind: 'flange', from: 'line', given: exactly(mm), limit: exactly(flangeMm) } as const;
    worst.add({ ...measured, at: [bend.from, at] }, 0, () => ({
      face: face.id,
      between: [{ is: 'bend', index: layout.bends.indexOf(bend) }, from],
    }));
  }
  return [...worst].map(({ fact, outcome }) => distanceFinding(layout, fact, outcome));
}

interface Flange {
  bend: PlacedBend;
  from:
    | { is: 'edge'; cause: { is: 'left end' | 'right end' | 'bottom edge' | 'top edge' }; kind: 'none' }
    | { is: 'bend'; index: number };
  toMm: number;
  mm: number;
}

/** What lies between a bend and the next bend or edge on either side of it. */
function flangesOf({ bends, lengthMm, endless }: Layout, widthMm: number): Flange[] {
  return (['across', 'along'] as const).flatMap((runs) => {
    const lines = bends.filter((bend) => bend.runs === runs).sort((a, b) => a.atMm - b.atMm);
    const [low, high] =
      runs === 'across' ? (['left end', 'right end'] as const) : (['bottom edge', 'top edge'] as const);
    const endMm = runs === 'across' ? lengthMm : widthMm;
    return lines.flatMap((bend, at): Flange[] => {
      const before = lines[at - 1];
      const start: Flange = before
        ? {
            bend,
            from: { is: 'bend', index: bends.indexOf(before) },
            toMm: before.atMm,
            mm: bend.atMm - before.atMm,
          }
        : { bend, from: { is: 'edge', cause: { is: low }, kind: 'none' }, toMm: 0, mm: bend.atMm };
      if (at < lines.length - 1 || (endless && runs === 'across')) return [start];
      const end: Flange = {
        bend,
        from: { is: 'edge', cause: { is: high }, kind: 'none' },
        toMm: endMm,
        mm: endMm - bend.atMm,
      };
      return [start, end];
    });
  });
}
