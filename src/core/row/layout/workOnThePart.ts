import { atMost } from '../../atMost.js';
import type { RowFact, RowFinding } from '../../check/rowFact.js';
import { toleranceMm } from '../../part/tolerance.js';
import type { ReadyRow } from '../readyRow.js';
import type { PartPlace } from '../rowJob.js';

/** Work that is larger than the part, whatever its place. Source: geometry. */
export function workOnThePart({
  section,
  lengthMm,
  notches,
  clips,
  bends,
  miterRad,
}: ReadyRow): RowFinding[] {
  const found: RowFinding[] = [];
  const refuse = (fact: RowFact) => found.push({ outcome: 'failed', verdict: 'Check input', ...fact });
  const widthMm = widestMm(section);
  if (widthMm === undefined) return found;
  if (notches && !notches.at) {
    const { depthMm, widthMm: along } = notches;
    if (depthMm >= widthMm) {
      refuse({
        rule: 'work on the part',
        cell: 'Notch depth',
        given: depthMm,
        limit: widthMm,
        along: 'wide',
      });
    }
    if (lengthMm !== undefined && along >= lengthMm) {
      refuse({ rule: 'work on the part', cell: 'Notch width', given: along, limit: lengthMm, along: 'long' });
    }
  }
  if (clips && clips.count > 4) {
    refuse({ rule: 'corners', count: clips.count, designation: section.designation });
  }
  if (bends && lengthMm !== undefined && !atMost(bends.lengthMm, Math.max(lengthMm, widthMm))) {
    refuse({ rule: 'bend on the part', givenMm: bends.lengthMm, lengthMm, widthMm });
  }
  const shortest =
    bends?.at && !notches && !clips && miterRad === 0 ? runOf(bends.at, lengthMm, widthMm) : undefined;
  if (bends && shortest && Math.abs(shortest.mm - bends.lengthMm) > roundingMm + toleranceMm) {
    refuse({
      rule: 'bend from edge to edge',
      givenMm: bends.lengthMm,
      runMm: shortest.mm,
      runs: shortest.runs,
    });
  }
  return found;
}

/** Drawings round the length of a bend. Common practice, no source. */
const roundingMm = 25.4 / 16;

/** The longest way that a bend at one of its places runs, from edge to edge of a part without cuts. */
function runOf(
  places: readonly PartPlace[],
  lengthMm: number | undefined,
  widthMm: number,
): { mm: number; runs: 'across' | 'along' } | undefined {
  const across = places.some(({ at }) => at === 'end');
  const along = places.some(({ at }) => at === 'edge');
  if (along && lengthMm !== undefined && (!across || lengthMm > widthMm))
    return { mm: lengthMm, runs: 'along' };
  return across ? { mm: widthMm, runs: 'across' } : undefined;
}

function widestMm(section: ReadyRow['section']): number | undefined {
  if (section.kind === 'flat') return section.widthMm;
  return section.kind === 'angle' ? Math.max(section.legAMm, section.legBMm) : undefined;
}
