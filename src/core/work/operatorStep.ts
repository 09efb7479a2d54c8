import type { Hand } from '../part/cutHand.js';
import type { FaceId } from '../part/part.js';
import type { Station } from '../press/item/pressItem.js';
import type { PartPlace } from '../row/job/rowJob.js';
import type { RouteStep } from '../row/route.js';
import type { Turn } from '../setup/way.js';

/** What an operator does, in the order in which it is done. */
export type StepAction =
  | 'pull stock'
  | 'lock out'
  | 'tools'
  | 'align'
  | 'stripper'
  | 'hold-down'
  | 'stroke'
  | 'back gauge'
  | 'gauge setting'
  | 'mark out'
  | 'first piece'
  | 'run'
  | 'deburr and mark'
  | 'elsewhere first'
  | 'elsewhere';

/** How a stroke is started and where the work stops. */
export type StepMode = 'pedal' | 'back gauge' | 'marked';

/** A column that says where work stands. */
export type PlaceColumn = 'Notch at' | 'Clip at' | 'Bend at';

/** What has to be minded at a step. */
export type StepNote =
  | { is: 'bars'; count: number; designation: string; grade: string; lengthMm: number }
  /** A bar of its own, since the part is longer than the bars of the shop. */
  | { is: 'longer than the bars'; barMm: number }
  /** A bar that the supports do not carry whole. */
  | { is: 'over the supports'; item: 'longest bar'; limitMm: number }
  | { is: 'over the supports'; item: 'heaviest bar'; limitKg: number }
  | { is: 'pieces'; count: number; designation: string; grade: string }
  | { is: 'jog, then set' }
  | { is: 'check after grinding' }
  /** Of a hole that is longer than wide: which way, where the list says it. */
  | { is: 'key the shape'; long?: 'slot' | 'rectangle'; way?: 'along' | 'across' | 'both' }
  | { is: 'die block lowered' }
  | { is: 'leg down'; face: FaceId; otherMm: number; equalLegs: boolean }
  | { is: 'hand'; hand: Hand; leg: 'down' | 'up' }
  | { is: 'at the gauges'; turn: Turn; end: 'left' | 'right'; edge: 'bottom' | 'top' | 'heel' }
  | { is: 'hand not given' }
  | { is: 'length not given' }
  | { is: 'full stroke' }
  | { is: 'slug not known' }
  | { is: 'out of the gauges'; holes: number }
  | { is: 'holes not given'; holes: number }
  | { is: 'drill the corner first' }
  | { is: 'keep the drop side' }
  | { is: 'burr side' }
  | { is: 'test piece' }
  | { is: 'set to thickness'; thicknessMm: number }
  | { is: 'stripper height'; heightMm: number }
  | { is: 'touching starts the stroke' }
  | { is: 'over the back gauge'; reachMm: number }
  | { is: 'no gauge known' }
  | { is: 'miter'; end: 'left' | 'right'; rad: number }
  | { is: 'pieces in all'; count: number }
  /** Pieces that are mirrored, by one row. */
  | { is: 'both hands'; right: number; left: number }
  /** Where notches, clips or bend lines are; undefined where the list does not say it. */
  | { is: 'cut at'; places?: readonly PartPlace[]; allCorners?: boolean; isAngle: boolean }
  | { is: 'bend at'; places?: readonly PartPlace[] }
  | { is: 'vee'; veeMm: number }
  | { is: 'notch size'; widthMm: number; depthMm: number; bites: number }
  | { is: 'clip size'; alongMm: number; acrossMm: number }
  | { is: 'next'; route: RouteStep };

/** One line of what an operator does. Lengths in mm; what is undefined is not known or does not apply. */
export interface OperatorStep {
  action: StepAction;
  station?: Station;
  mode?: StepMode;
  /** Texts of the tools as the shop writes them. */
  punch?: string;
  die?: string;
  holder?: string;
  /** From the punch center to the stop, and the side it is on. */
  stopMm?: number;
  stopSide?: 'left' | 'right';
  /** From the punch center to the fence. */
  fenceMm?: number;
  /** Upper and lower stop, as travel from the top of the die; below it negative. */
  upperMm?: number;
  lowerMm?: number;
  /** Strokes a piece. */
  hits?: number;
  /** The number of a gauge setting, as the drawing has it in a circle. */
  setting?: number;
  /** The holes of the setting: their group and number in it, from 0 and from 1, as the layout has them. */
  holes?: readonly { group: number; index: number; turn: Turn }[];
  notes: readonly StepNote[];
}
