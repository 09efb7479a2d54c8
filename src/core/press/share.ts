import type { PressFinding } from '../check/finding.js';
import type { Operation, PlateSize } from '../check/pressFact.js';
import { roundingShare, valueOr } from './limit.js';
import type { Press } from './press.js';

/** A force over a rating. */
export interface Share {
  operation: Operation;
  /** 1 is full. */
  use: number;
  forceN: number;
  ratingN?: number;
  /** The size on the plate whose force is the rating. */
  plate?: PlateSize;
}

const usualShareToUse = 0.8;

/** The share of a rating as a finding: over capacity above 1, near limit above the shop's share, else OK. */
export function shareFinding(press: Press, share: Share): PressFinding {
  const shareToUse = valueOr(press, 'shareToUse', usualShareToUse);
  if (typeof shareToUse !== 'number') return shareToUse;
  const is = { ...share, rule: 'share', shareToUse, press: press.name } as const;
  if (share.use > 1 + roundingShare) return { ...is, outcome: 'failed', verdict: 'Over capacity' };
  const near = share.use > shareToUse * (1 + roundingShare);
  return { ...is, outcome: 'held', verdict: near ? 'Near limit' : 'OK' };
}

/** The share of a force where the press states no rating for it: none, whatever share the shop uses. */
export function unratedShare(press: Press, operation: Operation, forceN: number): PressFinding {
  const held = { rule: 'share', outcome: 'held', verdict: 'OK' } as const;
  return { ...held, press: press.name, operation, forceN, use: 0, shareToUse: 1 };
}
