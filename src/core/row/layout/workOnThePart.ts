import { atMost } from '../../atMost.js';
import type { RowFact, RowFinding } from '../../check/rowFact.js';
import type { ReadyRow } from '../job/readyRow.js';

/** Work that is larger than the part, whatever its place. Source: geometry. */
export function workOnThePart({ section, lengthMm, notches, clips, bends }: ReadyRow): RowFinding[] {
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
  return found;
}

function widestMm(section: ReadyRow['section']): number | undefined {
  if (section.kind === 'flat') return section.widthMm;
  return section.kind === 'angle' ? Math.max(section.legAMm, section.legBMm) : undefined;
}
