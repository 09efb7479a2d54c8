import type { Failure } from '../inputError.js';
import type { Hand } from '../part/cutHand.js';
import type { LegBesidePunch } from '../part/legBesidePunch.js';
import type { PressItemKey, Station } from '../press/item/pressItem.js';
import type { Hole } from '../tooling/hole.js';

/** A limit in the core's unit, or the size of a part. */
type Mm = number;

/** What has the size that is checked against a limit of the press. */
export type Sized =
  | { is: 'hole'; hole: Hole }
  | { is: 'gap, thickness and die entry' }
  | { is: 'cut' | 'rip' }
  | { is: 'leg' }
  | { is: 'thickness' }
  | { is: 'round' | 'square' }
  | { is: 'bend' }
  | { is: 'corner clip'; side: 'longer' | 'shorter' }
  | { is: 'part'; typed?: string }
  | { is: 'bar' }
  | { is: 'mass' | 'bar mass' }
  | { is: 'hole to nearer edge' }
  | { is: 'hole to toe' }
  | { is: 'part below the die' };

/** The size on the plate that a share is taken of. */
export interface PlateSize {
  sizesMm: readonly Mm[];
  /** What the sizes are of, where the plate has more than one: `square`, `at 45°`, `round`. */
  cut?: 'square' | 'at 45°' | 'round bar' | 'square bar';
  strengthMPa: number;
}

/** What a share of a rating is of. */
export type Operation =
  | 'punch force'
  | 'bend force'
  | 'shear force'
  | 'flat shear'
  | 'angle shear'
  | 'bar shear'
  | 'notcher'
  | 'corner clip';

/** Checks against a press. Sizes in mm, forces in N. */
export type PressFact =
  /** The press has the station. `ofAll`: no press of the shop has it. */
  | { rule: 'station'; needed: Station; ofAll?: true }
  /** A size within a limit of the press; `limit` left out where the press has none. kg for the heaviest bar. */
  | { rule: 'press limit'; item: PressItemKey; sized: Sized; given: number; limit?: number }
  /** A cell of the press that the check needs is blank. */
  | { rule: 'blank item'; item: PressItemKey }
  /** A size that must not be under what a shear can hold. */
  | {
      rule: 'shear minimum';
      item: PressItemKey;
      sized: 'piece' | 'section';
      given: Mm;
      limit: Mm;
      from: 'press' | 'practice';
    }
  /** A hole against the thickness it goes through. */
  | { rule: 'smallest hole'; hole: Hole; thicknessMm: Mm; limit: Mm }
  /** Force over rating: over capacity above 1, near the limit above the share the shop uses. */
  | {
      rule: 'share';
      operation: Operation;
      use: number;
      forceN: number;
      shareToUse: number;
      hole?: Hole;
      ratingN?: number;
      plate?: PlateSize;
    }
  /** The upper tensile strength of a grade, in MPa, against what the shear blades may cut; left out where it is not known. */
  | { rule: 'blade material'; grade: string; given?: number; limit: number }
  /** A cut wider than every bar on the plate. */
  | { rule: 'widest bar'; given: Mm; limit: Mm }
  /** A bar thicker than the plate's size of that width. */
  | { rule: 'plate thickness'; given: Mm; plate: { widthMm: Mm; thicknessMm: Mm } }
  /** The press states nothing that a cut could be checked against. */
  | { rule: 'nothing stated'; of: Station }
  | { rule: 'miter'; on: Station; why: 'over 45°' | 'square only' | 'one leg only' }
  /** The hand of the miters of a part, on a shear that makes one. */
  | {
      rule: 'miter';
      on: Station;
      why: 'one hand only';
      leg: 'down' | 'up';
      needs: Hand | 'both';
    }
  /** A V opening on hand; `exact` where one size was asked for, else that size or wider. */
  | {
      rule: 'vee opening';
      wantedMm: Mm;
      exact: boolean;
      onHandMm: readonly Mm[];
      /** The least inside radius asks for it, not the ratio of the shop. */
      forRadius?: { leastMm: Mm; galvanized: boolean };
    }
  /** A leg that is bent already, beside the punch as another bend is made; `halfMm` of the punch where it is known. */
  | ({ rule: 'leg beside punch'; halfMm?: Mm } & LegBesidePunch)
  /** A notch in an edge that is narrower than the tool. */
  | { rule: 'narrowest notch'; given: Mm; limit: Mm }
  /** Bites that the press's own tool cannot make of a notch. */
  | { rule: 'notch bites'; failure: Failure }
  /** A notch that is bigger than the tool takes several bites: it is made, and told. */
  | { rule: 'several bites'; count: number }
  /** Room beside a hole for the die holder. */
  | { rule: 'die holder'; beside: 'flange' | 'fillet'; given: Mm; limit?: Mm };
