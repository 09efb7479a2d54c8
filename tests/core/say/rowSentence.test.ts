import { describe, expect, it } from 'vitest';
import type { Finding, FindingBase } from '../../../src/core/check/finding.js';
import { exactly } from '../../../src/core/check/range.js';
import type { CodeBasis, DistanceFact, RowFact, Unchecked } from '../../../src/core/check/rowFact.js';
import { governs, say } from '../../../src/core/say/say.js';

const inch = 25.4;
const hole = { shape: 'round', diameterMm: 0.8125 * inch } as const;
const aisc: CodeBasis = { code: 'AISC', edge: 'sheared', bolt: '3/4 in' };

/** A hole 1 in from the left end that must be 1-1/4 in from it. */
const distance: DistanceFact = {
  rule: 'distance',
  kind: 'edge by code',
  from: 'center',
  given: exactly(inch),
  limit: exactly(1.25 * inch),
  basis: aisc,
  face: 'plate',
  between: [
    { is: 'hole', group: 0, index: 1 },
    { is: 'edge', cause: { is: 'left end' }, kind: 'sheared' },
  ],
  at: [
    { x: 0, y: 0 },
    { x: 0, y: 0 },
  ],
  pairs: 1,
  repeats: 1,
  missing: [],
};

type Case = [fact: RowFact, governs: string, sentence: string, more?: Partial<FindingBase>];

const open = { outcome: 'open', verdict: 'OK so far' } as const;
const short: Finding = { outcome: 'failed', verdict: 'Edge short', group: 0, ...distance };

/** One finding of each rule of a row, failed or open. */
const rules: Record<Exclude<RowFact['rule'], 'off press'>, Case> = {
  distance: [
    distance,
    'end distance',
    'Hole: 1 in from the center to the left end is under 1-1/4 in (AISC, sheared edge, bolt 3/4 in).',
    { group: 0 },
  ],
  'no press in the shop': [
    { rule: 'no press in the shop' },
    'press',
    'The shop has no press. Add one on the Shop sheet.',
  ],
  'press not known': [
    { rule: 'press not known', name: 'Bay Z', names: ['Bay A', 'Bay B'] },
    'press',
    "'Bay Z' is not a press of the shop. Presses: Bay A, Bay B.",
  ],
  'work without part': [
    { rule: 'work without part', text: 'w/ cope both ends' },
    'work without a part',
    "'w/ cope both ends' says work, and no part stands in this row, so the work is not checked. Put it in the row of its part, in the columns of that work.",
  ],
  'bolt in hole': [
    { rule: 'bolt in hole', holeMm: inch / 2, bolt: '3/4 in' },
    'Hole 2',
    'Hole 2: a hole of 1/2 in does not take bolt 3/4 in. Correct one of them.',
    { group: 1 },
  ],
  'hole off the part': [
    {
      rule: 'hole off the part',
      beyondMm: inch,
      cause: 'toe',
      face: 'leg A',
      sizeMm: 3 * inch,
      correct: [
        { cell: 'Edge', group: 1 },
        { cell: 'Gage', group: 1 },
      ],
    },
    'Hole 2',
    'Hole 2: the center of a hole lies 1 in beyond the toe; the leg is 3 in wide. Correct Edge 2 or Gage 2.',
    { group: 1 },
  ],
  outline: [
    {
      rule: 'outline',
      problem: { problem: 'miters meet', neededMm: 12 * inch, availableMm: 4 * inch },
    },
    'outline',
    'the miters meet before the part has its width: 12 in is needed, 4 in is there. Correct Length or the miters.',
  ],
  'work on the part': [
    { rule: 'work on the part', cell: 'Notch depth', given: 3.25 * inch, limit: 3 * inch, along: 'wide' },
    'notch',
    'Notch depth 3-1/4 in: the part is 3 in wide. Correct Notch depth.',
  ],
  corners: [
    { rule: 'corners', count: 9, designation: 'PL3/8X8' },
    'corner clip',
    'Corners 9: PL3/8X8 has 4 corners to clip. Correct Corners.',
  ],
  'bend from edge to edge': [
    { rule: 'bend from edge to edge', givenMm: 4 * inch, runMm: 6 * inch, runs: 'across' },
    'bend',
    'Bend length 4 in: a bend across the part runs from edge to edge, 6 in. Correct Bend length or Bend at.',
  ],
  'bend off the part': [
    { rule: 'bend off the part', index: 1, runs: 'across', sizeMm: 20 * inch },
    'bend',
    'bend 2: its line lies beside the plate, which is 20 in long. Correct Bend at.',
  ],
  'bends cross': [
    { rule: 'bends cross', bends: [0, 1] },
    'bend',
    'bend 1 and bend 2 cross on the plate: cut the corner out, or correct Bend at.',
  ],
  'holes in a bar': [
    { rule: 'holes in a bar', designation: 'RB1' },
    'Hole',
    'Hole: drilled; no press station punches holes in RB1, and their distances were not checked.',
    { group: 0 },
  ],
  'hole over the bar': [
    { rule: 'hole over the bar', holeMm: 1.5 * inch, sizeMm: inch, designation: 'RB1' },
    'Hole',
    'Hole: a hole of 1-1/2 in leaves nothing of RB1, 1 in. Correct the hole or the section.',
    { group: 0 },
  ],
  'hole in a cut': [
    {
      rule: 'hole in a cut',
      cause: { is: 'notch', number: 1 },
      correct: [{ cell: 'End', group: 1 }, { cell: 'Edge', group: 1 }, { cell: 'Notch at' }],
    },
    'Hole 2',
    'Hole 2: a hole lies in notch 1, where there is no steel. Correct End 2, Edge 2 or Notch at.',
    { group: 1 },
  ],
  'not held': [
    { rule: 'not held', why: 'unread columns', headings: ['Hole A', 'Drill'] },
    'columns',
    'Hole A and Drill are filled in and not read. Rename the column, or clear it.',
  ],
  'cut on angle': [
    { rule: 'cut on angle', work: 'notch', designation: 'L3X3X1/4', why: 'heel' },
    'notch',
    'no station makes a notch at the heel of L3X3X1/4, where the other leg stands.',
  ],
  'sheared end': [
    { rule: 'sheared end', designation: 'C6X8.2' },
    'End kind',
    'End kind: C6X8.2 is sawn, no press shears it. Write sawn, or bought under Cut by.',
  ],
  'bend on the part': [
    { rule: 'bend on the part', givenMm: 20 * inch, lengthMm: 12 * inch, widthMm: 6 * inch },
    'bend',
    'Bend length 20 in: the part is 12 in by 6 in. Correct Bend length.',
  ],
  room: [
    { rule: 'room', count: 20, most: 15, pitchMm: 2 * inch, basis: { code: 'AISC', bolt: '3/4 in' } },
    'spacing',
    'Hole: 20 holes have no room on the part: at 2 in from center to center (AISC, bolt 3/4 in), at most 15 fit. Correct Holes, Hole or Length.',
    { group: 0 },
  ],
  'room at the edges': [
    { rule: 'room at the edges', between: ['bottom edge', 'top edge'], shortMm: inch / 4 },
    'edge distance',
    'Hole: wherever it lies, 1/4 in is missing between the bottom edge and the top edge. Correct the part or the holes.',
    { group: 0 },
  ],
  choice: [
    { rule: 'choice', cells: [{ cell: 'Leg' }, { cell: 'Leg', group: 1 }], failing: [short] },
    'Leg, Leg 2',
    'Hole: 1 in from the center to the left end is under 1-1/4 in (AISC, sheared edge, bolt 3/4 in). It depends on Leg and Leg 2: fill them in.',
    open,
  ],
  'too many choices': [
    { rule: 'too many choices', cells: [{ cell: 'Leg' }, { cell: 'Clip at' }] },
    'Leg, Clip at',
    'Leg and Clip at leave more possible parts than are tried. Fill them in.',
    open,
  ],
  'blank cell': [
    { rule: 'blank cell', cell: { cell: 'Length' }, unchecked: 'far end' },
    'Length',
    'Length is blank, so nothing was checked against the far end. Fill it in.',
    open,
  ],
  'reach open': [
    {
      rule: 'reach open',
      item: 'punchThroat',
      given: { least: 0, most: 10 },
      limit: 5,
      missing: [{ cell: 'Edge' }],
    },
    'punch throat',
    'Hole: Edge is blank, so punch throat of Bay A was not checked.',
    { ...open, press: 'Bay A', group: 0 },
  ],
  'station for work': [
    { rule: 'station for work', work: 'bend', designation: 'C8X11.5' },
    'bend',
    'no press station makes a bend in C8X11.5.',
  ],
  'tool on hand': [
    {
      rule: 'tool on hand',
      lacking: 'die',
      hole,
      openingMm: 0.84375 * inch,
      nearest: [{ written: 'Ø7/8' }],
      unread: 2,
    },
    'die',
    'no die for punch Ø13/16 on Bay A: opening 27/32 in is needed; nearest on hand: Ø7/8. 2 rows of the Tools table could not be read.',
    { press: 'Bay A' },
  ],
  'tool body': [
    { rule: 'tool body', hole },
    'punch body',
    'Punch body of Bay A is blank, so the body of punch Ø13/16 was not checked.',
    { ...open, press: 'Bay A' },
  ],
};

const found = ([fact, , , more]: Case): Finding => ({
  outcome: 'failed',
  verdict: 'Edge short',
  ...fact,
  ...more,
});

describe('a finding of the row in a sentence', () => {
  it.each(Object.entries(rules))('of %s says what is wrong, and what governs', (_, each) => {
    const [, about, sentence] = each;
    expect(say(found(each), 'in')).toBe(sentence);
    expect(governs(found(each), 'in')).toBe(about);
  });

  it.each(Object.entries(rules))('says nothing of %s that is held', (_, each) => {
    expect(say({ ...found(each), outcome: 'held', verdict: 'OK' }, 'in')).toBe('');
  });

  it('says nothing of a row that needs no press: the word does', () => {
    const off: Finding = { rule: 'off press', outcome: 'not applicable', verdict: 'Off press' };
    expect([say(off, 'in'), governs(off, 'in')]).toEqual(['', '']);
  });
});

describe('a distance in a sentence', () => {
  const told = (changes: Partial<DistanceFact & FindingBase>) =>
    say({ outcome: 'failed', verdict: 'Edge short', group: 0, ...distance, ...changes }, 'in');
  const byPractice = { kind: 'edge by practice', from: 'rim' } as const;
  const pair = { is: 'hole', index: 2 } as const;
  const [own] = distance.between;

  it('names what it goes to', () => {
    const to = (other: DistanceFact['between'][1]) => told({ between: [own, other] });
    expect(to({ ...pair, group: 0 })).toMatch(/^Hole: 1 in from the center to the next hole is under/);
    expect(to({ ...pair, group: 2 })).toMatch(/to a hole of Hole 3 is under/);
    expect(to({ is: 'edge', cause: { is: 'notch', number: 2 }, kind: 'sheared' })).toMatch(/to notch 2 is /);
    expect(to({ is: 'edge', cause: { is: 'miter right' }, kind: 'sheared' })).toMatch(
      /to the miter at the right end is under/,
    );
  });

  it('that is negative is how far the rim runs over, told once', () => {
    const over = { given: exactly(-inch / 4) };
    expect(told({ ...over, ...byPractice })).toBe('Hole: the hole runs 1/4 in over the left end.');
    expect(told({ ...over, ...byPractice, between: [own, { ...pair, group: 0 }] })).toBe(
      'Hole: a hole runs 1/4 in into the next hole.',
    );
    expect(told(over)).toBe('');
  });

  it('that is open says which cells would settle it', () => {
    const read: CodeBasis = { ...aisc, boltRead: true };
    expect(
      told({
        ...open,
        basis: read,
        limit: { least: 0, most: 1.25 * inch },
        missing: [{ cell: 'Bolt', group: 0 }],
      }),
    ).toBe(
      'Hole: 1 in from the center to the left end is under 1-1/4 in (AISC, sheared edge, bolt 3/4 in taken from the hole). Fill in Bolt to settle it.',
    );
    expect(
      told({
        ...open,
        group: 1,
        given: { least: 0, most: inch },
        missing: [
          { cell: 'End', group: 1 },
          { cell: 'Pitch', group: 1 },
        ],
      }),
    ).toBe('Hole 2: End 2 and Pitch 2 are blank, so the distances to the edges are not known.');
  });

  it.each([
    ['bolt not in the table', 'AISC has no distance for bolt 3/4 in. Check it by hand.'],
    ['oversize hole', 'the rule of AISC for oversize holes is not built in. Check it by hand.'],
    ['slot', 'the rule of AISC for slots is not built in. Check it by hand.'],
    ['shape of the hole', 'AISC has no rule for holes of this shape. Check it by hand.'],
  ] as const)('whose limit is not known says why: %s', (unknown, why) => {
    expect(told({ ...open, basis: { ...aisc, unknown } })).toBe(
      `Hole: 1 in from the center to the left end: ${why}`,
    );
  });

  it('says in millimeters what the shop works in', () => {
    expect(say(short, 'mm')).toBe(
      'Hole: 25.4 mm from the center to the left end is under 31.75 mm (AISC, sheared edge, bolt 3/4 in).',
    );
  });
});

describe('what a blank cell leaves unchecked', () => {
  const all: Record<Unchecked, true> = {
    'far end': true,
    'longest bar': true,
    'shortest piece': true,
    'notches against the rest': true,
    'bends against the rest': true,
    'mitered leg': true,
    'hand of the miter': true,
  };

  it.each(Object.keys(all) as Unchecked[])('is a sentence for %s', (unchecked) => {
    const finding: Finding = { ...open, rule: 'blank cell', cell: { cell: 'Length' }, unchecked };
    expect(say(finding, 'in')).toMatch(/^Length is blank, so .+\. Fill it in\.$/);
  });

  it('is not called blank where the cell only does not say it all', () => {
    const unchecked = 'notches against the rest';
    const finding: Finding = {
      ...open,
      rule: 'blank cell',
      cell: { cell: 'Notch at' },
      unchecked,
      partly: true,
    };
    expect(say(finding, 'in')).toBe(
      'Notch at does not say how far from the end, so the notches were not checked against the rest of the part. Add the distance.',
    );
  });
});
