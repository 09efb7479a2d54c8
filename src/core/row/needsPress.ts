import { isCutBySaw } from '../press/shearStation.js';
import type { ReadyRow } from './readyRow.js';
import type { CutBy } from './rowJob.js';

/** Whether there is anything in the row for a press: what a saw cuts and a drill drills needs none. */
export function needsPress({ section, places, notches, clips, bends, cutBy }: ReadyRow): boolean {
  const punched = places.some(({ faces }) => faces.some(({ process }) => process.made !== 'drill'));
  const cut = !isCutBySaw(section) && !isCutElsewhere({ cutBy });
  return punched || cut || [notches, clips, bends].some((work) => work !== undefined);
}

/** The row says that something else than a press cuts the part. */
export function isCutElsewhere({ cutBy }: { cutBy?: CutBy | undefined }): boolean {
  return cutBy !== undefined && cutBy !== 'press';
}
