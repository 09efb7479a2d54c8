import type { RowFinding } from '../../check/rowFact.js';
import { bentSpans, type Span } from '../../part/bentSpans.js';
import { toleranceMm } from '../../part/tolerance.js';
import type { ReadRow } from '../job/readyRow.js';
import type { PlacedBend } from './bendLines.js';
import type { Layout } from './layoutOf.js';

/** Drawings round the length of a bend. Common practice, no source. */
const roundingMm = 25.4 / 16;

/**
 * Whether every bend is one of the plate: its line lies on it, is as long as the row says, and does not cross another.
 * Along a line that cuts part, the length may be that of the steel or that from edge to edge. Source: geometry.
 */
export function bendsOnPart(
  { bends }: Pick<ReadRow, 'bends'>,
  { faces, bends: placed, lengthMm, endless }: Layout,
): RowFinding[] {
  const [face] = faces;
  if (!face || !bends) return [];
  const bent = placed
    .filter(({ runs }) => runs === 'across' || !endless)
    .map((bend) => ({ bend, spans: bentSpans(face.outline, bend) }));
  const off = bent.filter(({ spans }) => spans.length === 0);
  if (off.length > 0) {
    return off.map(({ bend }): RowFinding => {
      const { runs } = bend;
      const sizeMm = runs === 'across' ? lengthMm : face.widthMm;
      const fact = { rule: 'bend off the part', index: placed.indexOf(bend), runs, sizeMm } as const;
      return { ...fact, outcome: 'failed', verdict: 'Check input' };
    });
  }
  return [...lengthFindings(bends.lengthMm, bent), ...crossings(bent, placed)];
}

interface Bent {
  bend: PlacedBend;
  spans: readonly Span[];
}

/** The longest bend is the one whose length a row gives. */
function lengthFindings(givenMm: number, bent: readonly Bent[]): RowFinding[] {
  const runs = bent.map(({ bend: { runs }, spans }) => ({
    runs,
    steelMm: spans.reduce((sum, { fromMm, toMm }) => sum + toMm - fromMm, 0),
    edgeToEdgeMm: Math.max(...spans.map(({ toMm }) => toMm)) - Math.min(...spans.map(({ fromMm }) => fromMm)),
  }));
  const longest = [...runs].sort((a, b) => b.edgeToEdgeMm - a.edgeToEdgeMm)[0];
  if (!longest) return [];
  const leastMm = Math.max(...runs.map(({ steelMm }) => steelMm)) - roundingMm - toleranceMm;
  const mostMm = longest.edgeToEdgeMm + roundingMm + toleranceMm;
  if (givenMm >= leastMm && givenMm <= mostMm) return [];
  const fact = { rule: 'bend from edge to edge', givenMm, runMm: longest.edgeToEdgeMm } as const;
  return [{ ...fact, runs: longest.runs, outcome: 'failed', verdict: 'Check input' }];
}

/** Bends that run across each other need their corner cut out. */
function crossings(bent: readonly Bent[], placed: readonly PlacedBend[]): RowFinding[] {
  const [across, along] = (['across', 'along'] as const).map((runs) =>
    bent.filter(({ bend }) => bend.runs === runs),
  );
  const crossing = (across ?? []).flatMap((one) =>
    (along ?? []).flatMap((other): [PlacedBend, PlacedBend][] =>
      isWithin(other.bend.atMm, one.spans) && isWithin(one.bend.atMm, other.spans)
        ? [[one.bend, other.bend]]
        : [],
    ),
  );
  const [first] = crossing;
  if (!first) return [];
  const [a = 0, b = 0] = first.map((bend) => placed.indexOf(bend)).sort((one, other) => one - other);
  return [{ rule: 'bends cross', bends: [a, b], outcome: 'failed', verdict: 'Check input' }];
}

function isWithin(mm: number, spans: readonly Span[]): boolean {
  return spans.some(({ fromMm, toMm }) => mm > fromMm + toleranceMm && mm < toMm - toleranceMm);
}
