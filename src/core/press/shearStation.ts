import type { PressFinding } from '../check/finding.js';
import {
  type AnySection,
  type ChannelSection,
  isSawn,
  type SawnSection,
  type Section,
} from '../section/section.js';
import type { Working } from '../working/working.js';
import { angleShearFindings } from './angleShearStation.js';
import { barShearFindings } from './barShearStation.js';
import { flatShearFindings } from './flatShearStation.js';
import type { Press } from './press.js';

export interface ShearJob<Shape extends Section = Section> {
  section: Shape;
  shearStrengthMPa: number;
  /** Angle of the cut from square, in rad. */
  miterRad: number;
}

/** Whether no press station cuts the section: it is sawn. Common practice, no source. */
export function isCutBySaw(section: AnySection): section is ChannelSection | SawnSection {
  return section.kind === 'channel' || isSawn(section);
}

/**
 * One cut against the shear station its section needs: flat shear, angle shear, bar shear.
 * A channel has no station on these presses and is sawn: no finding.
 * @returns findings; `use` is a share of the plate's capacity, 1 is full
 * Source: common practice, no source.
 */
export function shearFindings(press: Press, job: ShearJob, working?: Working): PressFinding[] {
  const { section } = job;
  switch (section.kind) {
    case 'flat':
      return flatShearFindings(press, { ...job, section }, working);
    case 'angle':
      return angleShearFindings(press, { ...job, section }, working);
    case 'round':
    case 'square':
      return barShearFindings(press, { ...job, section }, working);
    case 'channel':
      return [];
  }
}
