import type { CauseKind, Cause } from '../part/outline.js';
import type { OutlineProblem } from '../part/outlineInput.js';
import type { FaceId } from '../part/part.js';
import type { Point } from '../part/point.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import type { EdgeKind, EdgeCode } from '../rule/edgeDistance.js';
import type { UnknownRule } from '../rule/leastDistance.js';
import type { Hole } from '../tooling/hole.js';
import type { Finding, FindingBase } from './finding.js';
import type { Range } from './range.js';

/** What a distance of the part is checked against. */
export type DistanceKind =
  | 'edge by code'
  | 'edge by practice'
  | 'heel'
  | 'spacing by code'
  | 'clear distance by code'
  | 'spacing by practice'
  | 'between cuts'
  | 'hole to bend'
  | 'flange';

/** One of the two things a distance lies between. Holes and groups are counted from 0. */
export type Thing =
  | { is: 'hole'; group: number; index: number }
  | { is: 'edge'; cause: Cause; kind: EdgeKind | 'none' }
  | { is: 'bend'; index: number };

/** A choice that a row leaves, and the cell that would settle it. */
export interface OpenCell {
  /** The name of the column: `Leg`, `Bolt`. */
  cell: string;
  /** Of a hole group, counted from 0. */
  group?: number;
  /** The heading as it stands in the list, where it is another. */
  heading?: string;
}

/** What a limit of a code goes by. */
export interface CodeBasis {
  code: EdgeCode;
  edge?: EdgeKind;
  /** The row does not say how the edge is made. */
  edgeRead?: true;
  /** The bolt by name, and whether it was taken from the hole. */
  bolt?: string;
  boltRead?: true;
  /** The code has no rule for this, so that the limit is not known. */
  unknown?: UnknownRule;
  source?: string;
}

/** The worst clearance of a kind between two things: held, failed, or open. */
export interface DistanceFact {
  rule: 'distance';
  kind: DistanceKind;
  from: 'center' | 'end radius' | 'rim' | 'line';
  given: Range;
  /** It fails under `least` and holds from `most`; between them it is not known. */
  limit: Range;
  basis?: CodeBasis;
  face: FaceId;
  between: readonly [Thing, Thing];
  at: readonly [Point, Point];
  /** How many clearances of this kind were checked against their limits, and how many of them ended as this one. */
  pairs: number;
  repeats: number;
  /** Cells that would place what is not placed. */
  missing: readonly OpenCell[];
}

/** A finding of a fact of the row. */
export type RowFinding = FindingBase & RowFact;

/** Checks of the row itself, whatever the press. Sizes in mm. */
export type RowFact =
  | DistanceFact
  | { rule: 'no press in the shop' }
  | { rule: 'press not known'; name: string; names: readonly string[] }
  /** Work that a row says which has no part. */
  | { rule: 'work without part'; text: string }
  /** A hole that its bolt does not go through. */
  | { rule: 'bolt in hole'; holeMm: number; bolt: string }
  /** Holes whose center lies beside the part. */
  | {
      rule: 'hole off the part';
      beyondMm: number;
      cause: CauseKind;
      face: FaceId;
      sizeMm: number;
      correct: readonly OpenCell[];
    }
  /** Holes where a notch or corner clip has taken the steel. */
  | { rule: 'hole in a cut'; cause: Cause; correct: readonly OpenCell[] }
  /** Something the row asks for that nothing is checked against. */
  | ({ rule: 'not held' } & NotHeld)
  /** A notch or clip in an angle where the other leg stands. */
  | {
      rule: 'cut on angle';
      work: 'notch' | 'corner clip';
      designation: string;
      why: 'heel' | 'depth';
      givenMm?: number;
      limitMm?: number;
    }
  /** Holes in a section without a flat side: they are drilled, and not laid out. */
  | { rule: 'holes in a bar'; designation: string }
  /** A hole that leaves nothing of the bar. */
  | { rule: 'hole over the bar'; holeMm: number; sizeMm: number; designation: string }
  /** The row says that the end of a sawn section is sheared. */
  | { rule: 'sheared end'; designation: string }
  /** The cuts of a part do not leave one piece. */
  | { rule: 'outline'; problem: OutlineProblem }
  /** Work that is larger than the part, whatever its place. */
  | { rule: 'work on the part'; cell: string; given: number; limit: number; along: 'wide' | 'long' }
  | { rule: 'corners'; count: number; designation: string }
  | { rule: 'bend from edge to edge'; givenMm: number; runMm: number; runs: 'across' | 'along' }
  | { rule: 'bend on the part'; givenMm: number; lengthMm: number; widthMm: number }
  /** A bend line beside the plate. Bends are counted from 0. */
  | { rule: 'bend off the part'; index: number; runs: 'across' | 'along'; sizeMm: number }
  | { rule: 'bends cross'; bends: readonly [number, number] }
  /** Holes that have no room, wherever they are. */
  | { rule: 'room'; count: number; most: number; pitchMm: number; basis?: CodeBasis }
  | { rule: 'room at the edges'; between: readonly [CauseKind, CauseKind]; shortMm: number }
  /** Some of what the row leaves to choose fails, some does not. */
  | { rule: 'choice'; cells: readonly OpenCell[]; failing: readonly Finding[] }
  /** More combinations of choices than are tried. */
  | { rule: 'too many choices'; cells: readonly OpenCell[] }
  /** A cell without which something of the part or the press is not checked. `partly`: it is filled, and does not say it all. */
  | { rule: 'blank cell'; cell: OpenCell; unchecked: Unchecked; item?: PressItemKey; partly?: true }
  /** A limit of the press that holds by some of the places a hole may have, and not by others. */
  | {
      rule: 'reach open';
      item: PressItemKey;
      given: Range;
      limit: number;
      missing: readonly OpenCell[];
    }
  /** No station makes the work in such a section. */
  | { rule: 'station for work'; work: 'notch' | 'corner clip' | 'bend'; designation: string }
  | {
      rule: 'tool on hand';
      lacking: 'punch' | 'die';
      hole: Hole;
      openingMm?: number;
      nearest: readonly NearTool[];
      unread: number;
      over?: ToolOver;
    }
  /** A tool has a body and the press does not say which it takes; or it does, and no list of tools says what they have. */
  | { rule: 'tool body'; hole: Hole; noTools?: true }
  /** Nothing of the row needs a press. */
  | { rule: 'off press' };

/** Why something is not checked against anything. */
export type NotHeld =
  | { why: 'bends across each other' | 'galvanized and thick' }
  | { why: 'bend missing' }
  | { why: 'uneven lines'; group: number }
  /** A hole wider than any that its bolt is put in. */
  | { why: 'loose bolt'; group: number; holeMm: number; bolt: string }
  /** `cells` would say whether they do, where that is open. */
  | { why: 'cut on a miter'; cuts: readonly Cause[]; cells: readonly OpenCell[] }
  | { why: 'unread columns'; headings: readonly string[] }
  | { why: 'work in a text'; heading: string; text: string };

/** What is not checked where a cell is blank. */
export type Unchecked =
  | 'far end'
  | 'longest bar'
  | 'shortest piece'
  | 'notches against the rest'
  | 'bends against the rest'
  | 'mitered leg'
  | 'hand of the miter';

export type NearTool = { written: string } | { size: Hole };

/** A tool of the right size that the press does not take. */
export interface ToolOver {
  why:
    | 'punch over its body'
    | 'punch over the station'
    | 'body over the station'
    | 'no room over the work'
    | 'ends above the stop';
  sizeMm: number;
  limitMm: number;
}
