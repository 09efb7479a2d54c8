import { describe, expect, it } from 'vitest';
import { shareFinding } from '../../../src/core/press/share.js';
import { punchFindings } from '../../../src/core/press/punchStation.js';
import { shearFindings } from '../../../src/core/press/shearStation.js';
import { notchFindings } from '../../../src/core/press/notchStation.js';
import { pressSentence } from '../../../src/core/say/pressSentence.js';
import type { LengthUnit } from '../../../src/core/quantity/units.js';
import { readSection } from '../../../src/core/section/readSection.js';
import type { PressFinding } from '../../../src/core/check/finding.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const ksi = 6.894757293168361;

function pressOf(cells: PressCells = {}) {
  const [press] = shopWith(cells).presses;
  if (!press) throw new Error('there is no press');
  return press;
}

function bendNote(use: number, shareToUse = 0.8): string {
  const press = pressOf({ 'Share of rating to use': shareToUse });
  return pressSentence(shareFinding(press, { operation: 'bend force', use, forceN: 1000 }), 'in');
}

const said = (findings: readonly PressFinding[], unit: LengthUnit = 'in') =>
  findings.filter(({ rule }) => rule === 'share').map((finding) => pressSentence(finding, unit));

describe('the share of a rating in a sentence', () => {
  it.each([
    [0.83, "bend force is 83% of Bay A's rating, above the 80% the shop uses."],
    [0.803, "bend force is 80.3% of Bay A's rating, above the 80% the shop uses."],
    [0.8004, "bend force is 80.04% of Bay A's rating, above the 80% the shop uses."],
    [0.996, "bend force is 99.6% of Bay A's rating, above the 80% the shop uses."],
    [1, "bend force is 100% of Bay A's rating, above the 80% the shop uses."],
    [1.003, "bend force is 100.3% of Bay A's rating."],
    [1.33, "bend force is 133% of Bay A's rating."],
    [0.8, ''],
  ])('%s of it', (use, sentence) => {
    expect(bendNote(use)).toBe(sentence);
  });

  it('is told apart from a share of the shop that has a decimal', () => {
    expect(bendNote(0.806, 0.805)).toContain("is 80.6% of Bay A's rating, above the 80.5%");
  });
});

describe('what 100% is', () => {
  const cut = (section: string, cells: PressCells = {}, miterRad = 0) =>
    shearFindings(pressOf(cells), {
      section: readSection(section, 'Section', 'in').section,
      shearStrengthMPa: 60 * ksi,
      miterRad,
    });
  const punched = (cells: PressCells = {}) =>
    punchFindings(pressOf(cells), {
      hole: { shape: 'round', diameterMm: 1.5 * 25.4 },
      thicknessMm: 12.7,
      shearStrengthMPa: 60 * ksi,
      holeToThickness: 1,
      punchAllowanceMPa: 1650,
      punchEntryMm: 2,
    });

  it.each([
    ['FB 1/2x12', 0, "flat shear is 120% of Bay A's rating; 100% is the rated 12 × 1/2 in at 50 ksi."],
    [
      'L5X5X1/2',
      0,
      "angle shear is 120% of Bay A's rating; 100% is the rated angle 5 × 1/2 in, cut square, at 50 ksi.",
    ],
    [
      'L3X3X3/8',
      Math.PI / 4,
      "angle shear is 120% of Bay A's rating; 100% is the rated angle 3 × 3/8 in, cut at 45°, at 50 ksi.",
    ],
    ['RB 1-1/2', 0, "bar shear is 120% of Bay A's rating; 100% is the rated 1-1/2 in round bar at 50 ksi."],
    ['SQ 1-1/4', 0, "bar shear is 120% of Bay A's rating; 100% is the rated 1-1/4 in square bar at 50 ksi."],
  ])('of a cut of %s is the size on the plate', (section, miterRad, sentence) => {
    expect(said(cut(section, {}, miterRad))).toEqual([sentence]);
  });

  it('stands behind the share that the shop uses', () => {
    expect(said(cut('FB 7/16x12'))).toEqual([
      "flat shear is 92% of Bay A's rating, above the 80% the shop uses; 100% is the rated 12 × 1/2 in at 50 ksi.",
    ]);
  });

  it('of a notch is the notch on the plate', () => {
    const job = { widthMm: 101.6, depthMm: 101.6, where: 'edge', thicknessMm: 9.525 } as const;
    expect(said(notchFindings(pressOf(), { ...job, shearStrengthMPa: 60 * ksi }))).toEqual([
      "notcher is 120% of Bay A's rating; 100% is the rated 4 × 4 × 3/8 in notch at 50 ksi.",
    ]);
  });

  it('of a punch is its largest hole, or the rated force where that is less', () => {
    expect(said(punched())).toEqual([
      "punch force is 120% of Bay A's rating; 100% is the rated Ø1-1/2 in hole through 1/2 in at 50 ksi.",
    ]);
    // 1.2 · 58.905 US tons over 40.
    expect(said(punched({ 'Punch force': 40 }))).toEqual([
      "punch force is 177% of Bay A's rating; 100% is the rated punch force, 40 US tons.",
    ]);
  });

  it('is told in mm, MPa and kN in a shop of mm', () => {
    expect(said(cut('FB 1/2x12'), 'mm')).toEqual([
      "flat shear is 120% of Bay A's rating; 100% is the rated 304.8 × 12.7 mm at 344.7 MPa.",
    ]);
    expect(said(punched({ 'Punch force': '300 kN' }), 'mm')[0]).toMatch(/the rated punch force, 300 kN\.$/);
  });

  it('is not told of the force of a flat shear without sizes, which is its name already', () => {
    const none = Object.fromEntries(
      ['widest bar', 'widest bar thickness', 'thickest bar', 'thickest bar width'].map((item) => [
        `Flat shear ${item}`,
        'none',
      ]),
    );
    expect(said(cut('FB 1/2x12', { ...none, 'Shear force': 20 }))[0]).toMatch(
      /^shear force is \d+% of Bay A's rating\.$/,
    );
  });
});
