import type { HoleLayout } from '../../../core/row/holeLayout.js';
import type { HolePlace } from '../../../core/row/holePlace.js';
import type { HoleGroup } from '../../../core/row/rowJob.js';

/** A hole group as it is drawn. */
export interface PlacedGroup extends HoleLayout {
  group: HoleGroup;
  place: HolePlace;
  /** How they are made where they are not punched to size: `drilled`; empty where they are. */
  made: string;
}
