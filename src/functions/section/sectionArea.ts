import { sectionAreaMm2 } from '../../core/section/area.js';
import { anySectionArgument } from '../argument/anySection.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

export const sectionArea = define({
  name: 'SECTIONAREA',
  purpose: 'Area of a section',
  arguments: { section: anySectionArgument(), shop: shopOrUnitArgument },
  result: 'area',
  gives: 'Area in in² (inch shop) or mm² (mm shop); of a tube by its nominal wall.',
  errors: '#N/A for a channel that stands in no table.',
  source: 'plane geometry; EN 10056-1, EN 10219-2 (from memory); channels: AISC Manual Part 1, EN 10365',
  example: '=TONROW.SECTIONAREA("L3X3X1/4")',
  compute({ section }, _context, working) {
    return sectionAreaMm2(section, working);
  },
});
