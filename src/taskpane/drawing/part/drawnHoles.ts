import { InputError } from '../../../core/inputError.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { holeLayout } from '../../../core/row/holeLayout.js';
import { type HolePlace, holePlace } from '../../../core/row/holePlace.js';
import { holeProcess } from '../../../core/row/holeProcess.js';
import type { HoleGroup, RowJob } from '../../../core/row/rowJob.js';
import type { Section } from '../../../core/section/section.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { lyingWidthMm } from './partView.js';
import type { PlacedGroup } from './placedHoles.js';

/** The side of the part that lies up, and its holes. */
export interface DrawnHoles {
  element: HolePlace['element'] | undefined;
  widthMm: number;
  /** The holes for a length of the part. */
  groups: (lengthMm: number) => PlacedGroup[];
  /** Groups in another leg or flange, or in none of the section's. */
  elsewhere: number;
}

/** The holes of the side the first group is in; those of other sides are not drawn. */
export function drawnHoles(
  job: RowJob,
  section: Section,
  unit: LengthUnit,
  shop: Shop | undefined,
): DrawnHoles {
  const places = job.groups.flatMap((group) => {
    const place = placeOf(section, group, unit);
    return place ? [{ group, place }] : [];
  });
  const lying = places[0]?.place;
  const widthMm = lying?.widthMm ?? lyingWidthMm(section);
  const here = places.filter(({ place }) => place.element === lying?.element && place.widthMm === widthMm);
  return {
    element: lying?.element,
    widthMm,
    groups: (lengthMm) =>
      here.map(({ group, place }) => ({
        group,
        place,
        ...holeLayout(group, place, lengthMm),
        made: madeText(job, section, group, place, shop),
      })),
    elsewhere: job.groups.length - here.length,
  };
}

/** Holes of a round or square bar are drilled on its axis, unless the row gives an edge distance. */
function placeOf(section: Section, group: HoleGroup, unit: LengthUnit): HolePlace | undefined {
  if (section.kind === 'round' || section.kind === 'square') {
    const sizeMm = lyingWidthMm(section);
    const edge = group.edgeMm === undefined ? {} : { edgeMm: group.edgeMm };
    return { element: 'plate', thicknessMm: sizeMm, widthMm: sizeMm, ...edge, assumed: [] };
  }
  const place = holePlace(section, group, unit);
  return typeof place === 'string' ? undefined : place;
}

/** How holes are made that are not punched to size; empty where they are, or where the shop cannot say. */
function madeText(
  { grade }: RowJob,
  section: Section,
  group: HoleGroup,
  place: HolePlace,
  shop: Shop | undefined,
): string {
  if (section.kind === 'round' || section.kind === 'square') return 'drilled';
  if (!grade || !shop) return '';
  try {
    const { made } = holeProcess(group, place, grade, shop);
    return made === 'drill' ? 'drilled' : made === 'ream' ? 'punched 2 mm under and reamed' : '';
  } catch (error) {
    // A setting that cannot be read is a finding of the row already.
    if (error instanceof InputError) return '';
    throw error;
  }
}
