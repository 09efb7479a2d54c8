import type { RowFinding, Thing } from '../../check/rowFact.js';
import { exactly } from '../../check/range.js';
import { bendClearances } from '../../part/bendClearances.js';
import { bentSpans } from '../../part/bentSpans.js';
import { cutsOverLine } from '../../part/cutsOverLine.js';
import { type Boundary, flangeBeside } from '../../part/flangeBeside.js';
import type { Face } from '../../part/part.js';
import type { Point } from '../../part/point.js';
import { leastHoleToBendMm } from '../../rule/holeToBend.js';
import { insideRadiusOfVeeMm } from '../../tooling/bendLimits.js';
import { leastFlangeMm } from '../../tooling/leastFlange.js';
import type { PlacedBend } from './bendLines.js';
import { distanceFinding } from './distanceFinding.js';
import { givenOf } from './codeLimit.js';
import { isRightEnd } from './edgeFindings.js';
import type { Layout } from './layoutOf.js';
import { holesOf } from './layGroup.js';
import { WorstDistances } from './measured.js';

/**
 * What a bend made in a V opening asks of the part: steel from every hole to where it is bent, and flanges that the V
 * carries where they are shortest, to whatever edge, cut or other bend lies across from it. A notch with steel to bend on
 * both its sides leaves no flange where it reaches the line: there the flange is 0 or, beyond the line, below 0.
 *
 * Formula: rim of the hole to the bend line ≥ 2 · t + R; flange, and line to line, ≥ 0.77 · V; R = V / 6
 * Source: common practice, no source.
 */
export function bendDistances(layout: Layout, veeMm: number): RowFinding[] {
  const [face] = layout.faces;
  if (!face || layout.bends.length === 0) return [];
  const bent = bentLines(face, layout.bends);
  const worst = new WorstDistances();
  const leastMm = leastFlangeMm({ veeMm });
  holesToBends(worst, layout, face, bent, insideRadiusOfVeeMm(veeMm));
  flanges(worst, layout, face, bent, leastMm);
  cutsOverBends(worst, layout.bends, face, leastMm);
  return [...worst].map(({ fact, outcome }) => distanceFinding(layout, fact, outcome));
}

/** A part of a bend line that has steel on both sides. */
interface BentLine {
  index: number;
  bend: PlacedBend;
  fromMm: number;
  toMm: number;
  from: Point;
  to: Point;
}

function bentLines({ outline }: Face, bends: readonly PlacedBend[]): BentLine[] {
  return bends.flatMap((bend, index) =>
    bentSpans(outline, bend).map(({ fromMm, toMm }): BentLine => {
      const at = (mm: number) => (bend.runs === 'across' ? { x: bend.atMm, y: mm } : { x: mm, y: bend.atMm });
      return { index, bend, fromMm, toMm, from: at(fromMm), to: at(toMm) };
    }),
  );
}

function holesToBends(
  worst: WorstDistances,
  { groups }: Layout,
  { id: face, thicknessMm }: Face,
  bent: readonly BentLine[],
  insideRadiusMm: number,
): void {
  const limit = exactly(leastHoleToBendMm({ thicknessMm, insideRadiusMm }));
  const bends = bent.map(({ from, to }) => ({ face, from, to, insideRadiusMm }));
  bendClearances({ holes: holesOf(groups), bends }, (hole, bend, { rim }) => {
    const measured = { kind: 'hole to bend', from: 'rim', given: givenOf(rim), limit } as const;
    worst.add({ ...measured, at: rim.least.at }, hole.group, () => ({
      face,
      between: [
        { is: 'hole', group: hole.group, index: hole.index },
        { is: 'bend', index: bent[bends.indexOf(bend)]?.index ?? 0 },
      ],
    }));
  });
}

function flanges(
  worst: WorstDistances,
  { endless }: Layout,
  { id: face, outline }: Face,
  bent: readonly BentLine[],
  leastMm: number,
): void {
  const edges = outline.edges
    .filter((edge) => !endless || !isRightEnd(edge))
    .map(({ from, to, cause, kind }) => ({ from, to, thing: { is: 'edge', cause, kind } as const }));
  for (const line of bent) {
    const others = bent
      .filter(({ index, bend }) => index !== line.index && bend.runs === line.bend.runs)
      .map(({ from, to, index }) => ({ from, to, thing: { is: 'bend', index } as const }));
    const boundaries: (Boundary & { thing: Thing })[] = [...edges, ...others];
    for (const side of [-1, 1] as const) {
      const flange = flangeBeside(line.bend, line, side, boundaries);
      if (!flange) continue;
      const { mm, end, at } = flange;
      const measured = { kind: 'flange', from: 'line', given: exactly(mm), limit: exactly(leastMm) } as const;
      worst.add({ ...measured, at }, 0, () => ({
        face,
        between: [{ is: 'bend', index: line.index }, end.thing],
      }));
    }
  }
}

function cutsOverBends(
  worst: WorstDistances,
  bends: readonly PlacedBend[],
  { id: face, outline }: Face,
  leastMm: number,
): void {
  for (const [index, bend] of bends.entries()) {
    for (const { edge, overMm, at } of cutsOverLine(outline, bend)) {
      const { cause, kind } = edge;
      const measured = { kind: 'flange', from: 'line', given: exactly(0 - overMm) } as const;
      worst.add({ ...measured, at, limit: exactly(leastMm) }, 0, () => ({
        face,
        between: [
          { is: 'bend', index },
          { is: 'edge', cause, kind },
        ],
      }));
    }
  }
}
