// The pieces and cuts of a laid out bar as polygons, for a general library of plane geometry.
import Flatten from '@flatten-js/core';
import type { PlannedPiece } from '../../../src/core/stock/stockPlan.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';

type Point = readonly [x: number, y: number];

/** The piece as it lies: along the bar from the front end, across it from the fence. */
export function pieceCorners({ widthMm }: StockProblem, piece: PlannedPiece): Point[] {
  const leftMm = widthMm * Math.tan(piece.leanLeftRad);
  const rightMm = widthMm * Math.tan(piece.leanRightRad);
  // A face that leans back is farthest at the fence.
  const nearLeftMm = piece.startMm + (leftMm < 0 ? -leftMm : 0);
  const nearRightMm = piece.endMm - (rightMm > 0 ? rightMm : 0);
  return [
    [nearLeftMm, 0],
    [nearRightMm, 0],
    [nearRightMm + rightMm, widthMm],
    [nearLeftMm + leftMm, widthMm],
  ];
}

/** The same piece as it comes off when it is turned back: over across the bar, then end for end in the plane. */
export function turnedBack(problem: StockProblem, piece: PlannedPiece): Point[] {
  const { startMm, endMm } = piece;
  return pieceCorners(problem, piece).map(([x, y]): Point => {
    const across = piece.isTurnedOver ? problem.widthMm - y : y;
    return piece.isTurnedRound ? [endMm - x, problem.widthMm - across] : [x - startMm, across];
  });
}

/** Where the far side of the last cut comes out of the bar, at the fence and opposite: the face moved by the kerf. */
export function cutEnds(problem: StockProblem, piece: PlannedPiece): number[] {
  const { kerfMm, widthMm } = problem;
  const [, near, far] = pieceCorners(problem, piece) as [Point, Point, Point];
  const along = new Flatten.Vector(far[0] - near[0], far[1] - near[1]);
  // Square to the face, toward the end of the bar.
  const away = along.rotate90CW().normalize().multiply(kerfMm);
  const line = Flatten.line(Flatten.point(...near).translate(away), Flatten.point(...far).translate(away));
  return [0, widthMm].flatMap((y) =>
    line.intersect(Flatten.line(Flatten.point(0, y), Flatten.point(1, y))).map((point) => point.x),
  );
}

export function polygonOf(corners: readonly Point[]): Flatten.Polygon {
  return new Flatten.Polygon(corners.map(([x, y]) => Flatten.point(x, y)));
}

export function distance(one: Flatten.Polygon, other: Flatten.Polygon): number {
  return one.distanceTo(other)[0];
}
