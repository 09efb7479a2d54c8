import { refuseUnknown } from '../inputError.js';
import { lengthValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { channelSource } from './channelTable.js';
import type { AnySection } from './section.js';

/** The dimensions a section may have. The names are part of saved formulas and never change. */
export const sectionDimensions = [
  { item: 'depth', meaning: 'over all: of a channel, beam, tube or tee' },
  { item: 'width', meaning: 'of a flat; the shorter side of a tube; the flange of a channel, beam or tee' },
  { item: 'thickness', meaning: 'of a flat, angle or tee; the wall of a tube' },
  { item: 'long leg', meaning: 'of an angle' },
  { item: 'short leg', meaning: 'of an angle' },
  { item: 'web thickness', meaning: 'of a channel or beam' },
  { item: 'flange thickness', meaning: 'of a channel or beam, where its flange has the nominal one' },
  { item: 'diameter', meaning: 'of a round bar; outside of a round tube' },
  { item: 'side', meaning: 'of a square bar' },
  { item: 'root radius', meaning: 'of a metric angle whose size is in the table, or of a European beam' },
] as const;

export type SectionDimension = (typeof sectionDimensions)[number]['item'];

/**
 * One dimension of a section, as its designation or its table gives it.
 *
 * Formula: as designated
 * @param input the section; the dimension asked for
 * @param working collects the step when given
 * @returns length in mm
 * Valid for the dimensions the section has; throws `unknown` for others, with those it has.
 * @example sectionDimensionMm({ section, item: 'web thickness' }) // of C8X11.5: 5.588
 * Source: the designation; channels: AISC Manual Part 1, EN 10365; root radii: EN 10056-1 (from memory).
 */
export function sectionDimensionMm(
  input: { section: AnySection; item: SectionDimension },
  working?: Working,
): number {
  const { section, item } = input;
  const dimensions = dimensionsOf(section);
  const sizeMm = dimensions[item];
  if (sizeMm === undefined) {
    const has = sectionDimensions.map((each) => each.item).filter((each) => dimensions[each] !== undefined);
    const problem = `${section.designation} has no ${item} here.`;
    return refuseUnknown('Item', item, problem, `It has: ${has.join(', ')}.`);
  }
  working?.step({
    title: `Dimension of ${section.designation}`,
    formula: 'as designated, or by table',
    values: [textValue('item', 'dimension', item)],
    result: lengthValue(item, 'dimension', sizeMm),
    source: sourceOf(section, item),
  });
  return sizeMm;
}

type Dimensions = Partial<Record<SectionDimension, number>>;

function dimensionsOf(section: AnySection): Dimensions {
  switch (section.kind) {
    case 'flat':
      return { width: section.widthMm, thickness: section.thicknessMm };
    case 'angle':
      return {
        'long leg': section.legAMm,
        'short leg': section.legBMm,
        thickness: section.thicknessMm,
        ...(section.rootRadiusMm > 0 ? { 'root radius': section.rootRadiusMm } : {}),
      };
    case 'channel':
      return {
        depth: section.depthMm,
        width: section.flangeWidthMm,
        'web thickness': section.webThicknessMm,
        'flange thickness': section.flangeThicknessMm,
      };
    case 'beam':
      return {
        depth: section.depthMm,
        width: section.flangeWidthMm,
        'web thickness': section.webThicknessMm,
        'flange thickness': section.flangeThicknessMm,
        ...(section.rootRadiusMm > 0 ? { 'root radius': section.rootRadiusMm } : {}),
      };
    case 'round':
      return { diameter: section.diameterMm };
    case 'square':
      return { side: section.sideMm };
    case 'tube':
      return { depth: section.depthMm, width: section.widthMm, thickness: section.thicknessMm };
    case 'round tube':
      return { diameter: section.diameterMm, thickness: section.thicknessMm };
    case 'tee':
      return { depth: section.depthMm, width: section.flangeWidthMm, thickness: section.thicknessMm };
  }
}

function sourceOf(section: AnySection, item: SectionDimension): string {
  if (section.kind === 'beam')
    return section.standard === 'AISC' ? 'AISC Shapes Database 15.0' : section.standard;
  if (item === 'root radius') return 'EN 10056-1 (from memory)';
  if (section.kind !== 'channel') return 'the designation';
  return channelSource(section);
}
