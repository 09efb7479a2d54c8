import type { FaceId } from '../../part/part.js';
import type { PlaceReading } from './placeReading.js';
import type { CutBy, HoleGroup } from './rowJob.js';
import type { Hole } from '../../tooling/hole.js';
import type { EdgeKind, EdgeCode } from '../../rule/edgeDistance.js';

/** What a row was understood to say, and what was taken where it says nothing. Groups are counted from 0. */
export type Reading =
  | { is: 'ignored mark'; mark: string }
  | { is: 'quantity assumed' }
  | { is: 'tensile as typed'; typed: string }
  | { is: 'hands'; right: number; left: number }
  | { is: 'miter'; rad: number }
  | {
      is: 'holes';
      group: number;
      count: number;
      hole: Hole;
      counted: boolean;
      /** The cell says so in the same numbers. */
      typedSo?: true;
      countersunk?: true;
      fitOfBolt?: { fit: string; bolt: string };
    }
  | {
      is: 'notches';
      count: number;
      counted: boolean;
      widthMm: number;
      depthMm: number;
      placed: boolean;
      byMiddle?: true;
    }
  | { is: 'corners clipped'; count: number; counted: boolean; alongMm: number; acrossMm: number }
  | { is: 'bends'; count: number; counted: boolean; lengthMm: number }
  /** A notcher leaves the inside corners of its notches sharp. */
  | { is: 'sharp corners' }
  /** A plate is bent, and the row does not say which way it was rolled. */
  | { is: 'rolling not known' }
  | { is: 'unknown finish'; typed: string }
  | { is: 'no mass' }
  /** `cuts`: what of its outline is made with it. */
  | { is: 'cut elsewhere'; by: Exclude<CutBy, 'press'>; cuts?: readonly ('notches' | 'corner clips')[] }
  | { is: 'cut by saw' }
  | { is: 'no tools' }
  /** The only face that the holes lie on, where the row names none. */
  | { is: 'face of the holes'; group: number; face: FaceId }
  | { is: 'bolt of the hole'; group: number; bolt: string }
  | { is: 'bolt not known'; group: number }
  /** The row says that these are no bolt holes. */
  | { is: 'no bolt'; group: number }
  | { is: 'edges'; group: number; edge?: EdgeKind; end?: EdgeKind }
  | { is: 'places'; group: number; reading: PlaceReading; mm?: number }
  | { is: 'greatest edge distance'; group: number; givenMm: number; greatestMm: number; code: EdgeCode }
  | { is: 'made otherwise'; group: number; how: HoleMaking }
  | { is: 'narrow strip'; givenMm: number; leastMm: number };

/** Why holes are not punched to size. */
export type HoleMaking =
  | { by: 'row'; process: NonNullable<HoleGroup['by']> | 'tap' }
  | { by: 'job specification'; process: 'drill' | 'punch 2 mm under and ream'; because: string };
