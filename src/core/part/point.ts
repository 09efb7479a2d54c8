/**
 * A place on a face in mm: x along the length from the left end (from the long point where it is mitered), y across
 * from the bottom edge, the heel or the back of the web.
 */
export interface Point {
  readonly x: number;
  readonly y: number;
}
