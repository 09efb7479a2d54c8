import type { FaceId } from '../../core/part/part.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import type { Section } from '../../core/section/section.js';
import type { Shop } from '../../core/shop/readShop.js';
import { type FaceDrawing, faceDrawing, type FaceInput } from '../part/faceDrawing.js';
import { planOf } from '../part/partPlan.js';

/** A face of a part as its card has it. */
export interface CardInput extends Pick<FaceInput, 'length' | 'settings' | 'width' | 'height'> {
  job: RowJob;
  section: Section;
  /** The face to draw; the first of the part where not given. */
  face?: FaceId | undefined;
  unit: LengthUnit;
  shop: Shop;
}

export function cardDrawing({ job, section, face, unit, shop, ...room }: CardInput): FaceDrawing {
  const { length } = room;
  return faceDrawing({ plan: planOf(job, section, { unit, length, shop, face }), unit, ...room });
}
