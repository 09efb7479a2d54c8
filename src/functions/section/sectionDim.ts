import {
  type SectionDimension,
  sectionDimensionMm,
  sectionDimensions,
} from '../../core/section/sectionDimension.js';
import { anySectionArgument } from '../argument/anySection.js';
import type { Choice } from '../argument/argument.js';
import { choiceArgument } from '../argument/choice.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

const items: readonly (Choice & { value: SectionDimension })[] = sectionDimensions.map(
  ({ item, meaning }) => ({
    value: item,
    meaning,
  }),
);

export const sectionDim = define({
  name: 'SECTIONDIM',
  purpose: 'One dimension of a section',
  arguments: {
    section: anySectionArgument(),
    item: choiceArgument('Which dimension', items),
    shop: shopOrUnitArgument,
  },
  result: 'length',
  gives: 'The dimension, in or mm.',
  errors: '#N/A for a dimension the section does not have, with those it has.',
  source: 'the designation; channels: AISC Manual Part 1, EN 10365; root radii: EN 10056-1 (from memory)',
  example: '=TONROW.SECTIONDIM("C8X11.5","web thickness")',
  compute({ section, item }, _context, working) {
    return sectionDimensionMm({ section, item }, working);
  },
});
