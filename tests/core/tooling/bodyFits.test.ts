import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyFits } from '../../../src/core/tooling/bodyFits.js';
import type { Hole } from '../../../src/core/tooling/hole.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const round = (diameterMm: number): Hole => ({ shape: 'round', diameterMm });
const square: Hole = { shape: 'square', sideMm: 25 };
const sizes = (bodyMm?: number, stationMm?: number) => ({
  ...(bodyMm === undefined ? {} : { bodyMm }),
  ...(stationMm === undefined ? {} : { stationMm }),
});
const fits = (punch: Hole, bodyMm?: number, stationMm?: number) =>
  bodyFits({ punch, ...sizes(bodyMm, stationMm) });

describe('bodyFits: arguments', () => {
  it('refuses sizes that are not above zero', () => {
    expect(refusal(() => fits(round(0))).argument).toBe('Punch');
    expect(refusal(() => fits(round(22), 0)).argument).toBe('Body');
    expect(refusal(() => fits(round(22), 35, -1)).argument).toBe('Punch body');
  });
});

describe('bodyFits: limits', () => {
  it('a punch may be as large as its body, and a body as large as the station takes', () => {
    expect(fits(round(35), 35, 35)).toEqual({ fits: 'yes' });
    const body = { fits: 'no', why: 'punch over its body', sizeMm: 35.1, limitMm: 35 };
    expect(fits(round(35.1), 35, 50)).toEqual(body);
    const station = { fits: 'no', why: 'body over the station', sizeMm: 35.1, limitMm: 35 };
    expect(fits(round(22), 35.1, 35)).toEqual(station);
  });

  it('takes the diagonal of a shaped punch: 25 mm square needs 35.36 mm', () => {
    expect(fits(square, 35.36, 40)).toEqual({ fits: 'yes' });
    expect(fits(square, 35, 40)).toMatchObject({ fits: 'no', why: 'punch over its body' });
  });

  it('knows that a punch is too large for the station without knowing its body', () => {
    expect(fits(square, undefined, 35)).toMatchObject({ fits: 'no', why: 'punch over the station' });
  });

  it('says what is not known', () => {
    expect(fits(round(22))).toEqual({ fits: 'not known', why: 'station' });
    expect(fits(round(22), 35)).toEqual({ fits: 'not known', why: 'station' });
    expect(fits(round(22), undefined, 35)).toEqual({ fits: 'not known', why: 'body' });
    expect(fits(round(22), undefined, Infinity)).toEqual({ fits: 'yes' });
  });
});

describe('bodyFits: values', () => {
  const size = fc.double({ min: 1, max: 100, noNaN: true });

  it('a yes and a no stay what they are whatever the unknown body turns out to be', () => {
    fc.assert(
      fc.property(size, size, size, (diameterMm, more, stationMm) => {
        const unknown = fits(round(diameterMm), undefined, stationMm);
        const bodied = fits(round(diameterMm), diameterMm + more, stationMm);
        if (unknown.fits !== 'not known') expect(bodied.fits).toBe(unknown.fits);
      }),
    );
  });

  it('shows its working, with what is not known and what has no limit', () => {
    const working = new Working();
    bodyFits({ punch: round(22), ...sizes(undefined, Infinity) }, working);
    expect(working.steps[0]?.values.map(({ value }) => value)).toEqual([22, 'not known', 'none']);
    expect(working.steps[0]?.result.value).toBe('yes');
  });
});
