import { describe, expect, it } from 'vitest';
import { hardestOf } from '../../../src/core/check/severity.js';
import { notchBitesOnPress, notchFindings, type NotchJob } from '../../../src/core/press/notchStation.js';
import { Working } from '../../../src/core/working/working.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const inch = 25.4;
const mild = 50 * 6.894757293168361;

/** Bay A states 4 × 4 × 3/8 in. */
function press(cells: PressCells = {}) {
  const [found] = shopWith(cells).presses;
  if (!found) throw new Error('the sample shop has no press');
  return found;
}
const job = (width: number, depth: number, thickness: number, more: Partial<NotchJob> = {}): NotchJob => ({
  widthMm: width * inch,
  depthMm: depth * inch,
  thicknessMm: thickness * inch,
  where: 'edge',
  shearStrengthMPa: mild,
  ...more,
});
/** The words of what is not held, or near the limit. */
const words = (cells: PressCells, given: NotchJob) =>
  notchFindings(press(cells), given).flatMap(({ verdict }) => (verdict === 'OK' ? [] : verdict));
const use = (given: NotchJob, cells: PressCells = {}) => hardestOf(notchFindings(press(cells), given))?.use;

describe('notchFindings: the state of the cells', () => {
  it('a press without a notcher has no station', () => {
    expect(notchFindings(press({ Notcher: 'no' }), job(2, 2, 0.25))).toEqual([
      {
        rule: 'station',
        outcome: 'failed',
        verdict: 'No station',
        press: 'Bay A',
        needed: 'notcher',
        station: 'notcher',
      },
    ]);
  });

  it.each(['Notcher', 'Notcher width', 'Notcher depth', 'Notcher thickness'])(
    'a blank %s is reported as not checked and never as OK alone',
    (item) => {
      expect(words({ [item]: null }, job(2, 2, 0.25))).toContain('Not checked');
    },
  );

  it('a blank narrowest notch is not checked, but for whole bites of the tool and at a corner', () => {
    const blank = { 'Notcher narrowest notch': null };
    expect(words(blank, job(2, 2, 0.25))).toEqual(['Not checked']);
    expect(words(blank, job(5, 2, 0.25))).toEqual(['Not checked']);
    expect(words(blank, job(4, 2, 0.25))).toEqual([]);
    expect(words(blank, job(8, 2, 0.25))).toEqual([]);
    expect(words(blank, job(2, 2, 0.25, { where: 'corner' }))).toEqual([]);
  });

  it.each(['Notcher width', 'Notcher depth', 'Notcher thickness', 'Reference shear strength'])(
    'a %s that cannot be read is said',
    (item) => {
      expect(words({ [item]: 'abc' }, job(2, 2, 0.25))).toContain('Check input');
    },
  );

  it('a plate without a limit takes no share', () => {
    expect(use(job(9, 9, 0.25), { 'Notcher width': 'none', 'Notcher depth': 'none' })).toBe(0);
    expect(use(job(4, 4, 3), { 'Notcher thickness': 'none' })).toBe(0);
  });
});

describe('notchFindings: limits', () => {
  it('the thickness of the plate is within, more is too big', () => {
    expect(words({}, job(2, 2, 0.375))).not.toContain('Too big');
    expect(words({}, job(2, 2, 0.376))).toContain('Too big');
  });

  it("the plate's own notch reads exactly 100%", () => {
    expect(use(job(4, 4, 0.375))).toBe(1);
    expect(words({}, job(4, 4, 0.375))).toEqual(['Near limit']);
    expect(words({}, job(4, 4, 0.375, { shearStrengthMPa: mild * 1.01 }))).toEqual(['Over capacity']);
  });

  it('a notch bigger than the tool is several bites, a vee that is bigger is too big', () => {
    expect(notchBitesOnPress(press(), job(4, 4, 0.25))).toMatchObject({ count: 1 });
    expect(notchBitesOnPress(press(), job(4.1, 4, 0.25))).toMatchObject({ count: 2 });
    expect(words({}, job(4.1, 4, 0.25, { where: 'vee' }))).toEqual(['Too big']);
  });

  it('bites thinner than the material are too big a notch for the tool', () => {
    const cells = { 'Notcher width': '1/2' };
    expect(words(cells, job(0.8, 2, 0.375))).not.toContain('Too big');
    expect(words(cells, job(0.7, 2, 0.375))).toContain('Too big');
  });
});

describe('notchFindings: values', () => {
  it.each([
    [job(4, 4, 0.1875), 0.5],
    [job(4, 1, 0.375), 0.5],
    [job(4, 2, 0.375, { where: 'corner' }), 0.5],
    [job(8, 4, 0.375), 1],
  ])('shares of the plate are in proportion to the cut and the thickness', (given, share) => {
    expect(use(given)).toBeCloseTo(share, 12);
  });

  it('ends its working in the share', () => {
    const working = new Working();
    const findings = notchFindings(press(), job(2, 2, 0.25), working);
    expect(working.steps.at(-1)?.result.value).toBe(hardestOf(findings)?.use);
    expect(working.steps.map(({ title }) => title)).toContain('Notcher thickness');
  });
});

describe('notchFindings: a tool of fixed width', () => {
  const fixed = { 'Notcher narrowest notch': 4 };

  it('makes no narrower notch in an edge', () => {
    expect(words(fixed, job(3.9, 2, 0.25))).toEqual(['No tool']);
    expect(words(fixed, job(4, 2, 0.25))).toEqual([]);
    expect(words(fixed, job(3.9, 2, 0.25, { where: 'corner' }))).toEqual([]);
  });

  it('makes no wider one whose last bite is under half the tool', () => {
    expect(words(fixed, job(5, 2, 0.25))).toEqual(['Too big']);
    expect(words(fixed, job(6, 2, 0.25))).toEqual([]);
  });

  it('is never better than one that comes in narrower widths', () => {
    for (let eighth = 1; eighth <= 100; eighth++) {
      const notch = job(eighth / 8, 2, 0.125);
      const [own, narrow] = [fixed, { 'Notcher narrowest notch': 1 }].map(
        (cells) => words(cells, notch).length,
      );
      expect(own, `${eighth / 8} in`).toBeGreaterThanOrEqual(narrow ?? 0);
    }
  });
});
