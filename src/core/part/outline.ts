import type { EdgeKind } from '../rule/edgeDistance.js';
import type { Point } from './point.js';

/** What made an edge of a face. */
export type CauseKind =
  | 'left end'
  | 'right end'
  | 'bottom edge'
  | 'top edge'
  | 'heel'
  | 'toe'
  | 'miter left'
  | 'miter right'
  | 'clip'
  | 'notch';

/** `number` counts clips and notches from 1, in the order they were given. */
export interface Cause {
  readonly is: CauseKind;
  readonly number?: number;
}

/** A straight edge with the steel on its left. A heel has the kind `none`: it is no free edge. */
export interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly cause: Cause;
  readonly kind: EdgeKind | 'none';
}

/** The edges around a face, counter-clockwise, each beginning where the one before ends: a simple polygon. */
export interface Outline {
  readonly edges: readonly Edge[];
}

/** True where two edges were made by one and the same cut or boundary. */
export function sameCause(a: Cause, b: Cause): boolean {
  return a.is === b.is && a.number === b.number;
}
