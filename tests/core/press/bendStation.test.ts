import { describe, expect, it } from 'vitest';
import { readGrade } from '../../../src/core/material/readGrade.js';
import { hardestOf } from '../../../src/core/check/severity.js';
import { bendFindings, type BendJob } from '../../../src/core/press/bendStation.js';
import { bendVee } from '../../../src/core/press/bendVee.js';
import { pressSentence } from '../../../src/core/say/pressSentence.js';
import { Working } from '../../../src/core/working/working.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const inch = 25.4;

/** Bay A bends 18 in, has V openings of 1, 1-1/2, 2, 3 and 4 in. */
function press(cells: PressCells = {}) {
  const [found] = shopWith({ 'Punch force': '100 kN', ...cells }).presses;
  if (!found) throw new Error('the sample shop has no press');
  return found;
}
const job = (length: number, thickness: number, vee?: number): BendJob => ({
  lengthMm: length * inch,
  thicknessMm: thickness * inch,
  grade: readGrade('tensile 450 MPa', 'Grade'),
  tensileMPa: 450,
  veeRatio: 10,
  ...(vee === undefined ? {} : { veeMm: vee * inch }),
});
const findings = (given: BendJob, cells: PressCells = {}) => bendFindings(press(cells), given);
/** The words of what is not held, or near the limit. */
const words = (given: BendJob, cells: PressCells = {}) =>
  findings(given, cells).flatMap(({ verdict }) => (verdict === 'OK' ? [] : verdict));
const share = (given: BendJob, cells: PressCells = {}) => hardestOf(findings(given, cells));

describe('bendFindings: the state of the cells', () => {
  it('a press without a bending attachment has no station', () => {
    expect(findings(job(6, 0.25), { Bend: 'no' })).toEqual([
      {
        rule: 'station',
        outcome: 'failed',
        verdict: 'No station',
        press: 'Bay A',
        needed: 'bending attachment',
        station: 'bending attachment',
      },
    ]);
  });

  it.each(['Bend', 'Bend length', 'Bend V openings', 'Punch force'])(
    'a blank %s is reported as not checked, beside what is known',
    (item) => {
      expect(words(job(6, 0.1875), { [item]: null })).toEqual(['Not checked']);
      if (item !== 'Punch force') expect(share(job(6, 0.1875), { [item]: null })?.verdict).toBe('OK');
    },
  );

  it.each(['Bend length', 'Bend V openings', 'Punch force'])('a %s that cannot be read is said', (item) => {
    expect(words(job(6, 0.1875), { [item]: 'abc' })).toContain('Check input');
  });

  it('without a limit any opening may be taken, and no share is', () => {
    expect(bendVee(press({ 'Bend V openings': 'none' }), job(6, 0.77)).veeMm).toBeCloseTo(7.7 * inch, 9);
    expect(share(job(6, 0.25), { 'Punch force': 'none' })).toMatchObject({ use: 0, outcome: 'held' });
  });
});

describe('bendFindings: limits', () => {
  it('the length of the attachment is within, more is too big', () => {
    expect(words(job(18, 0.1))).not.toContain('Too big');
    expect(words(job(18.1, 0.1))).toContain('Too big');
  });

  it('takes the smallest opening on hand that is wide enough', () => {
    expect(bendVee(press(), job(6, 0.1)).veeMm).toBeCloseTo(inch, 9);
    expect(bendVee(press(), job(6, 0.101)).veeMm).toBeCloseTo(1.5 * inch, 9);
    expect(bendVee(press(), job(6, 0.4)).veeMm).toBeCloseTo(4 * inch, 9);
    expect(bendVee(press(), job(6, 0.41)).veeMm).toBeUndefined();
  });

  it('has no tool where no opening is wide enough, or the one asked for is not on hand', () => {
    expect(words(job(6, 0.41))).toEqual(['No tool']);
    expect(words(job(6, 0.25, 2.5))).toEqual(['No tool']);
    const said = findings(job(6, 0.25, 2.5)).map((finding) => pressSentence(finding, 'in'));
    expect(said).toEqual(['', 'Bay A has no V opening of 2-1/2 in; on hand: 1, 1-1/2, 2, 3, 4 in.']);
  });

  it('takes a narrower opening where it is asked for', () => {
    expect(bendVee(press(), job(6, 0.25, 2)).veeMm).toBeCloseTo(2 * inch, 9);
  });

  it('is over capacity above the punch force', () => {
    // 1.33 · 450 · L · t² / V = 100 kN at t = 1/4 in and V = 3 in: L = 315.7 mm.
    expect(words(job(12.42, 0.25))).toEqual(['Near limit']);
    expect(words(job(12.44, 0.25))).toEqual(['Over capacity']);
  });
});

describe('bendFindings: values', () => {
  it('the share is the bending force over the punch force', () => {
    const finding = share(job(6, 0.25));
    const forceN = (1.33 * 450 * 6 * inch * (0.25 * inch) ** 2) / (3 * inch);
    expect(finding?.forceN).toBeCloseTo(forceN, 6);
    expect(finding?.use).toBeCloseTo(forceN / 100_000, 12);
  });

  it('ends its working in the share, with radius and flange before it', () => {
    const working = new Working();
    const found = bendFindings(press(), job(6, 0.25), working);
    expect(working.steps.at(-1)?.result.value).toBe(hardestOf(found)?.use);
    const titles = working.steps.map(({ title }) => title);
    expect(titles).toEqual(
      expect.arrayContaining(['Bend length', 'V opening', 'Least flange', 'Inside radius of the bend']),
    );
  });
});
