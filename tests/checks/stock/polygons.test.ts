// Source: plane geometry by @flatten-js/core: the bars of random mitered plans are drawn as polygons.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planStock } from '../../../src/core/stock/planStock.js';
import type { PlannedPiece } from '../../../src/core/stock/stockPlan.js';
import type { StockPart, StockProblem } from '../../../src/core/stock/stockProblem.js';
import { smallProblems } from '../../core/stock/support.js';
import { cutEnds, distance, pieceCorners, polygonOf, turnedBack } from './polygons.js';

const toleranceMm = 1e-6;
const seen = { bars: 0, nested: 0, over: 0, round: 0 };

function isNested(one: PlannedPiece, other: PlannedPiece): boolean {
  return one.leanRightRad === other.leanLeftRad;
}

function checkBar(problem: StockProblem, pieces: readonly PlannedPiece[], lengthMm: number, restMm: number) {
  const { kerfMm, trimMm, gripMm } = problem;
  const polygons = pieces.map((piece) => polygonOf(pieceCorners(problem, piece)));
  for (const [at, polygon] of polygons.entries()) {
    const piece = pieces[at] as PlannedPiece;
    expect(polygon.box.xmin).toBeGreaterThanOrEqual(trimMm - toleranceMm);
    expect(polygon.box.xmax).toBeLessThanOrEqual(lengthMm - gripMm + toleranceMm);
    polygons.slice(at + 1).forEach((other, after) => {
      expect(distance(polygon, other)).toBeGreaterThanOrEqual(kerfMm - toleranceMm);
      // In cutting order along the bar.
      const next = pieces[at + 1 + after] as PlannedPiece;
      expect(next.startMm).toBeGreaterThan(piece.startMm);
    });
    const next = pieces[at + 1];
    if (next && isNested(piece, next)) {
      seen.nested++;
      expect(distance(polygon, polygons[at + 1] ?? polygon)).toBeCloseTo(kerfMm, 6);
    }
  }
  const last = pieces.at(-1);
  if (!last) return;
  const ends = cutEnds(problem, last);
  expect(ends).toHaveLength(2);
  // Where the blade runs off the end of the bar, nothing is left.
  expect(restMm).toBeCloseTo(Math.max(0, lengthMm - Math.max(...ends)), 5);
  if (gripMm > 0) expect(restMm).toBeGreaterThanOrEqual(gripMm - toleranceMm);
}

/** A piece as it is wanted: its own corners, whatever way it was cut. */
function checkShape(problem: StockProblem, piece: PlannedPiece) {
  const part = problem.parts[piece.part] as StockPart;
  const wanted: PlannedPiece = {
    ...piece,
    startMm: 0,
    endMm: part.lengthMm,
    leanLeftRad: part.leanLeftRad,
    leanRightRad: part.leanRightRad,
  };
  const sorted = (corners: readonly (readonly [number, number])[]) =>
    corners.map(([x, y]) => [x, y]).sort((a, b) => (a[1] ?? 0) - (b[1] ?? 0) || (a[0] ?? 0) - (b[0] ?? 0));
  sorted(turnedBack(problem, piece)).forEach(([x = NaN, y = NaN], corner) => {
    const [wantedX = NaN, wantedY = NaN] = sorted(pieceCorners(problem, wanted))[corner] ?? [];
    expect(x).toBeCloseTo(wantedX, 6);
    expect(y).toBeCloseTo(wantedY, 6);
  });
}

describe('As polygons, the bars of mitered plans', () => {
  test('keep pieces apart by the kerf, between trim and grip, and nothing is turned that must not be', () => {
    fc.assert(
      fc.property(smallProblems(), (problem) => {
        for (const { stock, pieces, restMm } of planStock(problem).bars) {
          seen.bars++;
          checkBar(problem, pieces, problem.stocks[stock]?.lengthMm ?? NaN, restMm);
          for (const piece of pieces) {
            checkShape(problem, piece);
            if (piece.isTurnedOver) seen.over++;
            if (piece.isTurnedRound) seen.round++;
            if (problem.turning === 'none') expect(piece.isTurnedOver || piece.isTurnedRound).toBe(false);
            if (problem.turning === 'round') expect(piece.isTurnedOver).toBe(false);
          }
        }
      }),
      { numRuns: 300 },
    );
    // The problems are such that all of this happens.
    expect(Object.values(seen).filter((count) => count < 15)).toEqual([]);
  });
});
