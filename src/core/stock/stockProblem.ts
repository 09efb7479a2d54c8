/*
 * What a plan of bars is made from: parts of one section and grade, the lengths that bars come in, and what cutting
 * loses. Lengths in mm, angles in rad.
 *
 * The model of the miters. A bar lies with its width in the plane of the miters. A cut leans by the angle of its face
 * from square, above 0 where the edge far from the fence lies farther along the bar. Along the middle of its width a
 * piece takes m = l − b · (|tan θ1| + |tan θ2|) / 2 and half of what each of its two cuts takes, k / (2 · cos θ). Two
 * faces that lean alike share one cut and lose nothing between them. Faces that lean differently lose the wedge between
 * them: the way from one to the other on a line where a face stands at ± (b · |tan θ| / 2 + k / (2 · cos θ) − k / 2)
 * and a square face, as both ends of a bar are, at 0. So a bar loses the least that joins its pieces, in the best order
 * and the best way round that the section allows, into one walk from 0 to 0. Where faces of opposite lean meet, and at
 * the ends of a bar, this counts up to k · (1 / cos θ − 1) more than the cuts need: never less. So a mitered piece as long
 * as the bar is too long where cuts take something: by 1.3 mm for each end of 45° and a kerf of 1/8 in.
 */

/**
 * How a piece may be turned before it is cut, and come off as the same piece: turned over and end for end (flats, rounds,
 * squares, tubes, I-shapes), end for end only (channels), or not at all (angles, whose heel stays at the fence).
 */
export type Turning = 'over and round' | 'round' | 'none';

export interface StockPart {
  /** From the farthest point to the farthest point along the bar. */
  lengthMm: number;
  pieces: number;
  /** 0 where square. */
  leanLeftRad: number;
  leanRightRad: number;
}

export interface StockLength {
  lengthMm: number;
  /** Of one bar; each length has one or none has: bars are then bought by length. */
  price?: number | undefined;
  /** Bars that can be had; without it, as many as needed. */
  available?: number | undefined;
}

export interface StockProblem {
  parts: readonly StockPart[];
  stocks: readonly StockLength[];
  /** Of the bar, in the plane of the miters; of no effect without any. */
  widthMm: number;
  turning: Turning;
  /** What a cut takes, across the cut; 0 for a single blade. */
  kerfMm: number;
  /** What is cut off the front end of each bar, with the kerf of that cut. */
  trimMm: number;
  /** The end of a bar that the machine holds and cannot cut from. */
  gripMm: number;
  /** The shortest rest worth keeping. */
  keepMm: number;
}
