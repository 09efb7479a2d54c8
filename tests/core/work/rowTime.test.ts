import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Rate, Rates } from '../../../src/core/work/rates.js';
import { rowTime, type RowWork } from '../../../src/core/work/rowTime.js';
import { Working } from '../../../src/core/working/working.js';

const rate = (item: string, seconds: number): Rate => ({ item, seconds, invented: false });
const rates: Rates = {
  positionHit: rate('position', 12),
  advanceCut: rate('advance', 15),
  markOutHole: rate('mark out', 30),
  deburr: rate('deburr', 10),
  stageBar: rate('stage', 120),
  toolChange: rate('tool', 300),
  holderChange: rate('holder', 480),
  gaugeChange: rate('gauge', 180),
  firstPiece: rate('first piece', 300),
  pieceMark: rate('mark', 5),
  handling: {
    item: 'lift',
    classes: [{ massKg: Infinity, lengthMm: Infinity, seconds: 8 }],
    invented: false,
  },
  efficiency: 1,
  sharedSetup: false,
};
const work: RowWork = {
  qty: 10,
  pieceKg: 2,
  pieceMm: 300,
  bars: { count: 1, kg: 40, lengthMm: 6000 },
  holderChanges: 1,
  toolChanges: 1,
  gaugeSettings: 2,
  liftsPerPiece: 1,
  markedHolesPerPiece: 0,
  strokes: [
    { of: 'cuts', perPiece: 1, stroke: rate('stroke', 4) },
    { of: 'hits', perPiece: 4, stroke: rate('stroke', 4) },
  ],
};

const count = fc.integer({ min: 0, max: 40 });
const works: fc.Arbitrary<RowWork> = fc.record({
  qty: fc.integer({ min: 1, max: 500 }),
  pieceKg: fc.double({ min: 0.1, max: 300, noNaN: true }),
  pieceMm: fc.double({ min: 20, max: 9000, noNaN: true }),
  holderChanges: count,
  toolChanges: count,
  gaugeSettings: count,
  liftsPerPiece: count,
  markedHolesPerPiece: count,
  strokes: fc.array(
    fc.record({
      of: fc.constantFrom('hits' as const, 'cuts' as const, 'bites' as const, 'bends' as const),
      perPiece: count,
      stroke: fc.constant(rate('stroke', 4)),
    }),
    { maxLength: 5 },
  ),
});

describe('rowTime', () => {
  it('is set-up, bars and pieces, share by share', () => {
    const { shares, setupSeconds, seconds } = rowTime(work, rates);
    expect(Object.fromEntries(shares.map((share) => [share.of, share.seconds]))).toEqual({
      'holder changes': 480,
      'tool changes': 300,
      'gauge settings': 2 * 180,
      'first piece': 300,
      'bars staged': 120,
      'bars lifted': 8,
      'trim cuts': 15 + 4,
      lifts: 10 * 8,
      cuts: 10 * (15 + 4),
      hits: 40 * (12 + 4),
      deburring: 50 * 10,
      'piece marks': 10 * 5,
    });
    expect(setupSeconds).toBe(480 + 300 + 360 + 300);
    expect(seconds).toBe(1440 + 120 + 8 + 19 + 80 + 190 + 640 + 500 + 50);
  });

  it('adds up to its total, whatever is done, and shows it in its working', () => {
    fc.assert(
      fc.property(works, fc.double({ min: 0.2, max: 1, noNaN: true }), (given, efficiency) => {
        const working = new Working();
        const { shares, seconds } = rowTime(given, { ...rates, efficiency }, working);
        const sum = shares.reduce((total, each) => total + each.seconds, 0);
        expect(seconds).toBeCloseTo(sum / efficiency, 6);
        expect(working.steps.at(-1)?.result.value).toBe(seconds);
        expect(working.steps).toHaveLength(shares.length + 1);
      }),
    );
  });

  it('never takes less for more pieces, nor for slower work', () => {
    fc.assert(
      fc.property(works, (given) => {
        const { seconds } = rowTime(given, rates);
        expect(rowTime({ ...given, qty: 2 * given.qty }, rates).seconds).toBeGreaterThanOrEqual(seconds);
        const slower = { ...rates, positionHit: rate('position', 20) };
        expect(rowTime(given, slower).seconds).toBeGreaterThanOrEqual(seconds);
      }),
    );
  });

  it('leaves the changes of tools to the run where they are shared', () => {
    const alone = rowTime(work, rates).seconds;
    expect(rowTime(work, { ...rates, sharedSetup: true }).seconds).toBe(alone - 480 - 300);
  });

  it('names what is invented with the share it stands in', () => {
    const invented = { ...rates, deburr: { ...rates.deburr, invented: true } };
    const named = rowTime(work, invented).shares.filter((share) => share.invented.length > 0);
    expect(named.map((share) => [share.of, share.invented])).toEqual([['deburring', ['deburr']]]);
  });
});
