import { describe, expect, it } from 'vitest';
import type { RowFinding } from '../../../../src/core/check/rowFact.js';
import type { Choice } from '../../../../src/core/row/layout/alternatives.js';
import { jointFindings } from '../../../../src/core/row/layout/jointFindings.js';
import type { Layout, Layouts } from '../../../../src/core/row/layout/layoutOf.js';

const room = (outcome: 'held' | 'failed', most: number): RowFinding => ({
  rule: 'room',
  outcome,
  verdict: outcome === 'held' ? 'OK' : 'Holes too close',
  count: 4,
  most,
  pitchMm: 30,
});
const refused: RowFinding = {
  rule: 'corners',
  outcome: 'failed',
  verdict: 'Check input',
  count: 9,
  designation: 'PL',
};
const openLeg: RowFinding = {
  rule: 'blank cell',
  outcome: 'open',
  verdict: 'OK so far',
  cell: { cell: 'Notch at' },
  unchecked: 'notches against the rest',
};
const leg: Choice = { cell: 'Leg', options: 2, group: 0 };
const slot: Choice = { cell: 'Slot', options: 2, group: 1 };

/** Layouts told apart by their number: each with its findings. */
function joint(worlds: readonly RowFinding[][], choices: readonly Choice[], more = false) {
  const layouts = worlds.map(
    (_, at): Layout => ({ lengthMm: at, endless: false, faces: [], groups: [], bends: [] }),
  );
  const all: Layouts = { layouts, choices, more };
  return jointFindings(all, ({ lengthMm }) => worlds[lengthMm] ?? []);
}

describe('jointFindings', () => {
  it('of a row without a choice are its findings', () => {
    expect(joint([[room('failed', 3)]], [])).toEqual([room('failed', 3)]);
    expect(joint([[room('held', 5)]], [])).toEqual([room('held', 5)]);
  });

  it('fail where every choice fails, by the one with the mildest word', () => {
    expect(joint([[refused], [room('failed', 3)]], [leg])).toEqual([room('failed', 3)]);
    expect(joint([[room('failed', 3)], [refused]], [leg])).toEqual([room('failed', 3)]);
  });

  it('are open where some choices fail, with the cell that decides', () => {
    // Numbers in mixed radix, the first choice fastest: Leg decides, Slot does not.
    const worlds = [[room('failed', 3)], [room('held', 5)], [room('failed', 3)], [room('held', 5)]];
    const [choice, ...rest] = joint(worlds, [leg, slot]);
    expect(choice).toEqual({
      rule: 'choice',
      outcome: 'open',
      verdict: 'OK so far',
      cells: [{ cell: 'Leg', group: 0 }],
      failing: [room('failed', 3)],
    });
    expect(rest).toEqual([room('held', 5)]);
  });

  it('name both cells where only both together decide', () => {
    const worlds = [[room('failed', 3)], [room('held', 5)], [room('held', 5)], [room('failed', 3)]];
    expect(joint(worlds, [leg, slot])[0]).toMatchObject({
      cells: [
        { cell: 'Leg', group: 0 },
        { cell: 'Slot', group: 1 },
      ],
    });
  });

  it('tell once what is open with any choice', () => {
    expect(joint([[openLeg], [openLeg, room('held', 5)]], [leg])).toContainEqual(openLeg);
    expect(joint([[openLeg], [openLeg]], [leg])).toHaveLength(1);
  });

  it('never fail where not every choice was tried', () => {
    const found = joint([[room('failed', 3)], [room('failed', 3)]], [leg, slot], true);
    expect(found.map(({ outcome }) => outcome)).not.toContain('failed');
    expect(found[0]).toMatchObject({ rule: 'too many choices', cells: [{ cell: 'Leg' }, { cell: 'Slot' }] });
  });
});
