import { describe, expect, it } from 'vitest';
import { hardestOf } from '../../src/core/check/severity.js';
import { punchFindings } from '../../src/core/press/punchStation.js';
import {
  greatestGoodShare,
  type PunchCapacity,
  punchCapacity,
} from '../../src/drawing/capacity/punchCapacity.js';
import { shopWith } from '../support/sampleShop.js';
import { grade, inch } from './support.js';

const shop = shopWith();
const [press] = shop.presses;
if (!press) throw new Error('the sample shop has no press');

function capacity(thicknessIn: number, own = shop, name = 'A36'): PunchCapacity {
  const found = punchCapacity(own.presses[0] ?? press!, grade(name), own, thicknessIn * inch);
  if ('problem' in found) throw new Error(found.problem);
  return found;
}

/** 1-1/2 in through 1/2 in at 50 ksi, which is less than 60 US ton: the rating in kip, by hand. */
const ratingKip = Math.PI * 1.5 * 0.5 * 50;
/** 0.75 of 80 ksi. */
const shearKsi = 60;

describe('the holes a press punches', () => {
  it.each([1 / 2, 5 / 8, 3 / 4])('end where the force takes the whole rating, at %d in', (thicknessIn) => {
    const byHand = ratingKip / (Math.PI * thicknessIn * shearKsi);
    expect(capacity(thicknessIn).ratingMm / inch).toBeCloseTo(byHand, 9);
    expect(capacity(thicknessIn).shareMm / inch).toBeCloseTo(0.8 * byHand, 8);
  });

  it.each([1 / 8, 1 / 4])('end at the largest hole of the plate in thin work, at %d in', (thicknessIn) => {
    expect(capacity(thicknessIn).ratingMm / inch).toBeCloseTo(1.5, 9);
  });

  it('begin at the thickness where the punch bears it', () => {
    expect(capacity(3 / 8).leastMm / inch).toBeCloseTo(3 / 8, 9);
  });

  it('end where a row becomes Over capacity, and the share where it becomes Near limit', () => {
    const { ratingMm, shareMm, thicknessMm } = capacity(1 / 2);
    const verdict = (diameterMm: number) => {
      const job = {
        hole: { shape: 'round', diameterMm } as const,
        thicknessMm,
        shearStrengthMPa: shearKsi * 6.894757293168361,
      };
      const findings = punchFindings(press, {
        ...job,
        holeToThickness: 1,
        punchAllowanceMPa: 1650,
        punchEntryMm: 2,
      });
      return hardestOf(findings)?.verdict;
    };
    expect([shareMm * 0.999, shareMm * 1.001, ratingMm * 0.999, ratingMm * 1.001].map(verdict)).toEqual([
      'OK',
      'Near limit',
      'Near limit',
      'Over capacity',
    ]);
  });

  it('have no end where the press states none', () => {
    const free = shopWith({
      'Punch force': 'none',
      'Punch largest hole': 'none',
      'Punch largest hole thickness': 'none',
    });
    expect(capacity(1 / 2, free)).toMatchObject({ ratingMm: Infinity, shareMm: Infinity });
  });

  it('are none where the stroke is too short, with the reason', () => {
    expect(capacity(1 / 2, shopWith({ 'Punch stroke': '1/2' })).stopped).toContain(
      "over Bay A's punch stroke",
    );
  });

  it('are told with what could not be checked', () => {
    expect(capacity(1 / 2, shopWith({ 'Punch largest hole': null })).unchecked).toContain('is blank');
  });

  it.each([
    [{ Punch: 'no' }, 'Bay A has no punch.'],
    [{ 'Punch force': null, 'Punch largest hole thickness': null }, 'is blank, so it was not checked.'],
  ])('are not known for %o', (cells, sentence) => {
    const own = shopWith(cells);
    const found = punchCapacity(own.presses[0] ?? press, grade('A36'), own, 10);
    expect(found).toEqual({ problem: expect.stringContaining(sentence) as string });
  });

  it.each([0.8, 0.65, 1])('use the share of the press, %d', (share) => {
    const own = shopWith({ 'Share of rating to use': share });
    expect(greatestGoodShare(own.presses[0] ?? press)).toBeCloseTo(share, 8);
  });
});
