import { describe, expect, it } from 'vitest';
import type { FindingBase, PressFinding } from '../../../src/core/check/finding.js';
import type { PressFact, Sized } from '../../../src/core/check/pressFact.js';
import { pressGoverns } from '../../../src/core/say/pressGoverns.js';
import { pressSentence } from '../../../src/core/say/pressSentence.js';
import { unreadable } from '../../support/pressFindings.js';

const inch = 25.4;
const hole = { shape: 'round', diameterMm: 0.8125 * inch } as const;
const failure = {
  code: 'invalid',
  argument: 'Notch',
  received: '9 × 9',
  problem: 'a vee of 9 × 9 in is wider than the tool.',
  allowed: 'Saw it.',
} as const;

type Case = [fact: PressFact, governs: string, sentence: string, more?: Partial<FindingBase>];

const limit = (sized: Sized, given: number, item = 'notcherThickness' as const) =>
  ({ rule: 'press limit', item, sized, given: given * inch, limit: inch }) as const;

/** Each kind of size that is checked against a limit. */
const sizes: Record<Sized['is'], Case> = {
  hole: [
    { ...limit({ is: 'hole', hole }, 2), item: 'punchLargestHole' },
    'punch largest hole, Ø13/16',
    "hole Ø13/16 is over Bay A's punch largest hole, 1 in.",
  ],
  'gap, thickness and die entry': [
    { ...limit({ is: 'gap, thickness and die entry' }, 2), item: 'punchStroke' },
    'punch stroke',
    "gap, thickness and die entry, 2 in, is over Bay A's punch stroke, 1 in.",
  ],
  cut: [
    { ...limit({ is: 'cut' }, 15), item: 'flatShearBladeLength' },
    'flat shear blade length',
    "a cut 15 in wide is over Bay A's flat shear blade length, 1 in.",
  ],
  rip: [
    { ...limit({ is: 'rip' }, 15), item: 'flatShearBladeLength' },
    'flat shear blade length',
    "a rip 15 in long, since plates are cut from sheet, is over Bay A's flat shear blade length, 1 in.",
  ],
  leg: [
    { ...limit({ is: 'leg' }, 2), item: 'angleShearLeg45' },
    'angle shear leg at 45°',
    "leg 2 in is over Bay A's angle shear leg at 45°, 1 in.",
  ],
  thickness: [
    limit({ is: 'thickness' }, 2),
    'notcher thickness',
    "thickness 2 in is over Bay A's notcher thickness, 1 in.",
  ],
  round: [
    { ...limit({ is: 'round' }, 2), item: 'barShearRound' },
    'bar shear round',
    "round 2 in is over Bay A's bar shear round, 1 in.",
  ],
  square: [
    { ...limit({ is: 'square' }, 2), item: 'barShearSquare' },
    'bar shear square',
    "square 2 in is over Bay A's bar shear square, 1 in.",
  ],
  bend: [
    { ...limit({ is: 'bend' }, 2), item: 'bendLength' },
    'bend length',
    "a bend 2 in long is over Bay A's bend length, 1 in.",
  ],
  'corner clip': [
    { ...limit({ is: 'corner clip', side: 'longer' }, 2), item: 'notcherWidth' },
    'notcher width',
    "corner clip 2 in is over Bay A's notcher width, 1 in.",
  ],
  part: [
    { ...limit({ is: 'part' }, 20), item: 'longestBar' },
    'longest bar',
    "a part 20 in long is over Bay A's longest bar, 1 in.",
  ],
  bar: [
    { ...limit({ is: 'bar' }, 240), item: 'longestBar' },
    'longest bar',
    "the bar it is cut from, 240 in long, is over Bay A's longest bar, 1 in.",
  ],
  'bar mass': [
    { rule: 'press limit', item: 'heaviestBar', sized: { is: 'bar mass' }, given: 500, limit: 272.155 },
    'heaviest bar',
    "the bar it is cut from, 1,102 lb, is over Bay A's heaviest bar, 600 lb.",
  ],
  mass: [
    { rule: 'press limit', item: 'heaviestBar', sized: { is: 'mass' }, given: 500, limit: 272.155 },
    'heaviest bar',
    "a part of 1,102 lb is over Bay A's heaviest bar, 600 lb.",
  ],
  'hole to nearer edge': [
    { ...limit({ is: 'hole to nearer edge' }, 2), item: 'punchThroat' },
    'punch throat',
    "Hole at 2 in from the nearer edge is over Bay A's punch throat, 1 in.",
    { group: 0 },
  ],
  'hole to toe': [
    { ...limit({ is: 'hole to toe' }, 2), item: 'punchThroat' },
    'punch throat',
    "Hole 2: from the hole to the toe is over Bay A's punch throat, 1 in.",
    { group: 1 },
  ],
  'part below the die': [
    { ...limit({ is: 'part below the die' }, 2), item: 'punchClearUnderDie' },
    'punch clear under die',
    "the part hanging below the die, 2 in, is over Bay A's punch clear under die, 1 in.",
  ],
};

/** One finding of each other rule, failed or open. */
const rules: Record<Exclude<PressFact['rule'], 'press limit'>, Case> = {
  station: [{ rule: 'station', needed: 'bar shear' }, 'bar shear', 'Bay A has no bar shear.'],
  'blank item': [
    { rule: 'blank item', item: 'bendVeeOpenings' },
    'bend V openings',
    'Bend V openings of Bay A is blank, so it was not checked.',
    { outcome: 'open' },
  ],
  'several bites': [
    { rule: 'several bites', count: 2 },
    'notch',
    'a notch takes 2 bites on Bay A.',
    { outcome: 'not applicable', verdict: 'OK' },
  ],
  'narrowest notch': [
    { rule: 'narrowest notch', given: inch, limit: 2 * inch },
    'notch',
    'a notch 1 in wide is narrower than Bay A makes in an edge, 2 in. Use a narrower tool, or saw or burn it.',
  ],
  'leg beside punch': [
    {
      rule: 'leg beside punch',
      bend: 0,
      madeBefore: 1,
      webMm: 3 * inch,
      legMm: 2 * inch,
      gapMm: inch / Math.SQRT2,
      halfMm: inch,
    },
    'bend punch half width',
    'bend 1 and bend 2: if both go the same way to 90°, the leg of 2 in beyond bend 2 comes within 0.707 in of the middle of the punch, under its half width on Bay A, 1 in. Check it by hand.',
    { outcome: 'open' },
  ],
  'shear minimum': [
    {
      rule: 'shear minimum',
      item: 'barShearShortestPiece',
      sized: 'piece',
      given: inch / 2,
      limit: inch,
      from: 'practice',
    },
    'bar shear shortest piece',
    'a piece 1/2 in long is too short to hold: Bay A needs 1 in by common practice.',
  ],
  'smallest hole': [
    { rule: 'smallest hole', hole, thicknessMm: inch, limit: inch },
    'smallest hole, Ø13/16',
    'a Ø13/16 in hole in metal 1 in thick may burst the punch; the smallest to punch is 1 in. Drill it.',
  ],
  share: [
    { rule: 'share', operation: 'punch force', use: 1.2, forceN: 1, shareToUse: 0.8, hole },
    'punch force, Ø13/16',
    "punch force is 120% of Bay A's rating.",
  ],
  'blade material': [
    { rule: 'blade material', grade: 'A572-50', given: 586.0541, limit: 500 },
    'blade material limit',
    'A572-50 comes with a tensile strength of up to 85 ksi; the blades of Bay A are for up to 72.52 ksi.',
    { verdict: 'Over capacity' },
  ],
  'widest bar': [
    { rule: 'widest bar', given: 13 * inch, limit: 12 * inch },
    'flat shear size of Bay A',
    "a cut 13 in wide is over Bay A's widest bar, 12 in.",
  ],
  'plate thickness': [
    { rule: 'plate thickness', given: inch, plate: { widthMm: 8 * inch, thicknessMm: 0.75 * inch } },
    'flat shear size of Bay A',
    "1 in thick is over Bay A's rated size 8 × 3/4 in.",
  ],
  'nothing stated': [
    { rule: 'nothing stated', of: 'flat shear' },
    'flat shear',
    'Bay A states neither sizes nor a force for its flat shear, so the cut was not checked.',
    { outcome: 'open' },
  ],
  miter: [
    { rule: 'miter', on: 'angle shear', why: 'square only' },
    'miter',
    'the angle shear of Bay A cuts square only; saw the miter.',
  ],
  'vee opening': [
    { rule: 'vee opening', wantedMm: 5 * inch, exact: false, onHandMm: [inch, 1.5 * inch] },
    'bend V openings',
    'Bay A has no V opening of 5 in or wider; on hand: 1, 1-1/2 in.',
  ],
  'notch bites': [
    { rule: 'notch bites', failure },
    'notch',
    'The notch on Bay A: a vee of 9 × 9 in is wider than the tool. Saw it.',
  ],
  'die holder': [
    { rule: 'die holder', beside: 'fillet', given: -3, limit: 0.75 * inch },
    'punch die half width',
    "Hole 3: only 0 in from the hole to the fillet; Bay A's die holder needs 3/4 in.",
    { group: 2 },
  ],
};

const found = ([fact, , , more]: Case): PressFinding => ({
  outcome: 'failed',
  verdict: 'Too big',
  press: 'Bay A',
  ...fact,
  ...more,
});

describe('pressSentence', () => {
  it.each(Object.entries({ ...sizes, ...rules }))('says of %s what is wrong, and what governs', (_, each) => {
    const [, governs, sentence] = each;
    expect(pressSentence(found(each), 'in')).toBe(sentence);
    expect(pressGoverns(found(each), 'in')).toBe(governs);
  });

  it.each(Object.entries({ ...sizes, ...rules }))('says nothing of %s that is held', (_, each) => {
    const held = { ...found(each), outcome: 'held', verdict: 'OK' } as const;
    expect(pressSentence(held, 'in')).toBe('');
    expect(pressGoverns(held, 'in')).not.toBe('');
  });

  it.each<[PressFact, string]>([
    [{ rule: 'station', needed: 'angle shear', ofAll: true }, 'No press has an angle shear.'],
    [{ rule: 'station', needed: 'notcher', ofAll: true }, 'No press has a notcher.'],
    [
      { rule: 'miter', on: 'bar shear', why: 'square only' },
      'the bar shear cuts square only; saw the miter.',
    ],
    [
      { rule: 'miter', on: 'angle shear', why: 'over 45°' },
      'a miter over 45° is beyond the angle shear of Bay A.',
    ],
    [
      { rule: 'vee opening', wantedMm: 2.5 * inch, exact: true, onHandMm: [inch] },
      'Bay A has no V opening of 2-1/2 in; on hand: 1 in.',
    ],
    [
      {
        rule: 'shear minimum',
        item: 'flatShearNarrowestBar',
        sized: 'section',
        given: inch / 4,
        limit: inch / 2,
        from: 'press',
      },
      '1/4 in is smaller than Bay A can hold and cut, 1/2 in.',
    ],
    [
      { ...limit({ is: 'part', typed: '40\'-6"' }, 486), item: 'longestBar' },
      'a part 40\'-6" long is over Bay A\'s longest bar, 1".',
    ],
  ])('%o: %s', (fact, sentence) => {
    expect(pressSentence(found([fact, '', sentence]), 'in')).toBe(sentence);
  });

  it('says sizes in the unit of the shop', () => {
    expect(pressSentence(found(sizes.thickness), 'mm')).toBe(
      "thickness 50.8 mm is over Bay A's notcher thickness, 25.4 mm.",
    );
    expect(pressSentence(found(sizes.mass), 'mm')).toBe(
      "a part of 500 kg is over Bay A's heaviest bar, 272 kg.",
    );
  });

  it('says why a cell of the press cannot be read', () => {
    expect(pressSentence(unreadable, 'in')).toBe("Throat: 'x' is no length. Write 12.");
    expect(pressGoverns(unreadable, 'in')).toBe('punch throat');
  });
});

describe('what a sentence adds to a size', () => {
  const sentence = (fact: PressFact, unit: 'in' | 'mm' = 'in') =>
    pressSentence({ ...fact, outcome: 'failed', verdict: 'Too big', press: 'Bay A' }, unit);

  it('the diagonal of a hole with corners, which is what must fit', () => {
    const square = { shape: 'square', sideMm: 0.75 * inch } as const;
    const over = { ...limit({ is: 'hole', hole: square }, 1.0625), item: 'punchLargestHole' } as const;
    expect(sentence(over)).toBe(
      "the diagonal of the square 3/4 in hole, 1-1/16 in, is over Bay A's punch largest hole, 1 in.",
    );
  });

  it.each([
    ['13000', 'mm', 'a part 13000 mm long'],
    ["24'-0", 'in', "a part 24'-0 long"],
    ['40 ft', 'in', 'a part 40 ft long'],
    ['300-1/2', 'in', 'a part 300-1/2 in long'],
  ] as const)('the unit of a length typed as %s', (typed, unit, expected) => {
    const long = { ...limit({ is: 'part', typed }, 500), item: 'longestBar' } as const;
    expect(sentence(long, unit)).toContain(expected);
  });

  it('why a V opening is asked for that the ratio of the shop does not ask for', () => {
    const vee = { rule: 'vee opening', wantedMm: 2 * inch, exact: false, onHandMm: [inch] } as const;
    const radius = (galvanized: boolean) => ({ ...vee, forRadius: { leastMm: inch / 2, galvanized } });
    expect(sentence(vee)).toBe('Bay A has no V opening of 2 in or wider; on hand: 1 in.');
    expect(sentence(radius(true))).toBe(
      'Bay A has no V opening of 2 in or wider; on hand: 1 in. A part that is galvanized after bending needs an inside radius of 3 × its thickness, 1/2 in.',
    );
    expect(sentence(radius(false))).toContain('on hand: 1 in. The grade needs an inside radius of 1/2 in.');
  });
});
