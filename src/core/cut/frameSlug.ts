import type { Press } from '../press/press.js';
import { lengthValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { slugMm } from './backGaugeSetting.js';
import { shearHands } from '../press/shearHands.js';

/** What a cut of a frame of angles loses, or why it is not known. */
export type FrameSlug = { mm: number } | { unknown: 'blank' | 'differs' };

/**
 * The slug that the angle shears lose at each cut of a frame of angles: of the presses that make both hands, else of those
 * that may.
 *
 * Formula: k, where all of them lose the same
 * @param presses the presses of the shop
 * @param working collects the step when given
 * @returns the slug in mm, 0 for single blades; unknown where a press does not say, or where they differ
 * Valid for every shop; 0 where no press is left. Throws nothing.
 * @example frameSlug(shop.presses) // { mm: 9.5 }
 * Source: the plate and manual of the press.
 */
export function frameSlug(presses: readonly Press[], working?: Working): FrameSlug {
  const that = (makes: 'both' | 'unknown') => presses.filter((press) => shearHands(press).makes === makes);
  const able = that('both');
  const slugs = new Set(
    (able.length > 0 ? able : that('unknown')).map((press) => slugMm({ section: { kind: 'angle' } }, press)),
  );
  const [mm = 0] = slugs;
  const found: FrameSlug = slugs.has(undefined)
    ? { unknown: 'blank' }
    : slugs.size > 1
      ? { unknown: 'differs' }
      : { mm };
  working?.step({
    title: 'Slug of the angle shear',
    formula: 'k, where all presses that make the frame lose the same',
    values: [],
    result:
      'mm' in found
        ? lengthValue('k', 'slug, across the cut', found.mm)
        : textValue('k', 'slug, across the cut', 'not known'),
    source: 'the plate and manual of the press',
    ...('mm' in found ? {} : { cautions: ['What is pushed to the stop is given without the slug below.'] }),
  });
  return found;
}
