import { isCutBySaw } from '../../press/shearStation.js';
import type { ReadyRow } from './readyRow.js';
import type { CutBy } from './rowJob.js';

/** Whether there is anything in the row for a press: what a saw cuts and a drill drills needs none. */
export function needsPress(row: ReadyRow): boolean {
  const { section, places, bends, cutBy } = row;
  const punched = places.some(({ faces }) => faces.some(({ process }) => process.made !== 'drill'));
  const cut = !isCutBySaw(section) && !isCutElsewhere({ cutBy });
  return punched || cut || bends !== undefined || isNotchedOnPress(row);
}

/** Notches and corner clips are made in the notcher, but where the part is burned: the torch follows its whole outline. */
export function isNotchedOnPress({
  notches,
  clips,
  cutBy,
}: Pick<ReadyRow, 'notches' | 'clips' | 'cutBy'>): boolean {
  return cutBy !== 'burn' && (notches !== undefined || clips !== undefined);
}

/** The row says that something else than a press cuts the part. */
export function isCutElsewhere({ cutBy }: { cutBy?: CutBy | undefined }): boolean {
  return cutBy !== undefined && cutBy !== 'press';
}
