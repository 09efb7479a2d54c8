import type { RowFinding, Thing } from '../../check/rowFact.js';
import { exactly } from '../../check/range.js';
import { edgeClearances, type HoleToEdge } from '../../part/edgeClearances.js';
import type { Edge } from '../../part/outline.js';
import type { Face, PlacedHole } from '../../part/part.js';
import type { EdgeCode } from '../../rule/edgeDistance.js';
import type { ReadRow } from '../job/readyRow.js';
import { givenOf } from './codeLimit.js';
import { edgeDistances } from './edgeDistances.js';
import { edgeKindsOf } from './edgeKindsOf.js';
import type { HeldGroup } from './heldGroup.js';
import { adjoiningMm } from './adjoining.js';
import { type Measured, WorstDistances } from './measured.js';
import { distanceFinding } from './distanceFinding.js';
import { holesOf, type LaidGroup } from './layGroup.js';
import { type Beyond, noteBeyond, offTheSteel } from './offTheSteel.js';
import { Slack } from './slack.js';

export interface HeldLayout {
  row: ReadRow;
  faces: readonly Face[];
  groups: readonly LaidGroup[];
  /** By the index of the group in the row. */
  held: ReadonlyMap<number, HeldGroup>;
  code: EdgeCode;
  /** The length is not known, so nothing is checked against the right end. */
  endless: boolean;
}

/** Every hole against every edge of its face: off the part, too near by the code, too near by press practice. */
export function edgeFindings(layout: HeldLayout): { findings: RowFinding[]; slack: Slack } {
  const slack = new Slack();
  const worst = new WorstDistances();
  const beyond = new Map<number, Beyond>();
  const holes = holesOf(layout.groups);
  for (const face of layout.faces) {
    edgeClearances(face, holes, (hole, edge, clearances) => {
      const held = layout.held.get(hole.group);
      if (!held || (layout.endless && isRightEnd(edge))) return;
      noteBeyond(beyond, hole, edge, clearances);
      const more = () => ({ face: face.id, between: thingsOf(hole, edge) });
      for (const measured of distancesOf(layout, held, hole, edge, clearances)) {
        if (hole.free) slack.add(hole.group, edge.cause.is, measured);
        worst.add(measured, hole.group, more);
      }
    });
  }
  const slips = offTheSteel(layout, beyond);
  const found = [...worst].filter(({ fact }) => !isOfHole(fact.between[0], slips));
  const findings = [
    ...slips.values(),
    ...found.map(({ fact, outcome }) => distanceFinding(layout, fact, outcome)),
  ];
  return { findings, slack };
}

function thingsOf({ group, index }: PlacedHole, { cause, kind }: Edge): [Thing, Thing] {
  return [
    { is: 'hole', group, index },
    { is: 'edge', cause, kind },
  ];
}

function distancesOf(
  { row, code }: HeldLayout,
  held: HeldGroup,
  hole: PlacedHole,
  edge: Edge,
  clearances: HoleToEdge,
): Measured[] {
  const known = held.edgeKinds.get(edge);
  const kinds = known === undefined ? edgeKindsOf(row, held.group, edge) : known;
  if (known === undefined) held.edgeKinds.set(edge, kinds);
  const found = kinds === null ? [] : edgeDistances(held, hole, edge, clearances, kinds, code);
  const adjoining = adjoiningMm(row.section, held.face, edge);
  if (adjoining > 0) {
    const { rim } = clearances;
    found.push({
      kind: 'heel',
      from: 'rim',
      given: givenOf(rim),
      limit: exactly(adjoining),
      at: rim.least.at,
    });
  }
  return found;
}

/** What closes the right end of a face. */
export function isRightEnd({ cause }: Edge): boolean {
  return cause.is === 'right end' || cause.is === 'miter right';
}

function isOfHole(thing: { is: string; group?: number }, beyond: ReadonlyMap<number, unknown>): boolean {
  return thing.is === 'hole' && thing.group !== undefined && beyond.has(thing.group);
}
