import type { EdgeKind } from '../rule/edgeDistance.js';
import type { Cause } from './outline.js';

export type End = 'left' | 'right';
export type Side = 'bottom' | 'top';

/** A face before its cuts: Length is long point to long point. */
export interface OutlineInput {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly bottom: LongEdge;
  readonly top: LongEdge;
  readonly left: FaceEnd;
  readonly right: FaceEnd;
  readonly clips?: readonly Clip[];
  readonly notches?: readonly Notch[];
}

export interface LongEdge {
  readonly is: 'bottom edge' | 'top edge' | 'heel' | 'toe';
  readonly kind: EdgeKind | 'none';
}

export interface FaceEnd {
  readonly kind: EdgeKind;
  readonly miter?: Miter;
}

/** How far an end leans from square, and the side that keeps the long point. 0 is a square end. */
export interface Miter {
  readonly rad: number;
  readonly long: Side;
}

/** A corner cut off in a straight line: from so far along the long edge to so far across the face, on the end. */
export interface Clip {
  readonly end: End;
  readonly side: Side;
  readonly alongMm: number;
  readonly acrossMm: number;
  readonly kind: EdgeKind;
}

/**
 * A rectangle or a vee cut out. At a corner and in a long edge: width along, depth across. In an end: width across,
 * depth along, on a miter from the end at the middle of the notch. A vee at a corner cuts as a clip does.
 */
export interface Notch {
  readonly shape: 'rectangle' | 'vee';
  readonly place: NotchPlace;
  readonly widthMm: number;
  readonly depthMm: number;
  readonly kind: EdgeKind;
}

/** `centerMm`: of a long edge from x = 0, of an end from y = 0. */
export type NotchPlace =
  | { readonly at: 'corner'; readonly end: End; readonly side: Side }
  | { readonly at: 'edge'; readonly side: Side; readonly centerMm: number }
  | { readonly at: 'end'; readonly end: End; readonly centerMm: number };

/** Why cuts do not leave one piece with the cuts inside it. */
export interface OutlineProblem {
  /**
   * `no size`: a size is not above 0 or not finite, or a miter is not from 0 to under 90°. `miters meet`: before the
   * face has its width. `cut too deep`: reaches through the face. `cut off the edge`: reaches beyond the ends of its
   * edge or as far as one. `cuts meet`: touch or overlap, or one meets an end or edge it does not begin at.
   */
  readonly problem: 'no size' | 'miters meet' | 'cut too deep' | 'cut off the edge' | 'cuts meet';
  readonly cause?: Cause;
  readonly otherCause?: Cause;
  /** What the cut needs, and what is there: a cut needs less than is there, miters may need all of it. */
  readonly neededMm?: number;
  readonly availableMm?: number;
}
