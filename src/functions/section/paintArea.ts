import { paintAreaMm2 } from '../../core/section/paintArea.js';
import { anySectionArgument } from '../argument/anySection.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

export const paintArea = define({
  name: 'PAINTAREA',
  purpose: 'Surface of a piece to paint: its outside along the length, without the ends',
  arguments: {
    section: anySectionArgument(),
    length: lengthArgument('length', 'Length of the piece'),
    shop: shopOrUnitArgument,
  },
  result: 'surface',
  gives: 'Surface in ft² (inch shop) or m² (mm shop): perimeter × length; tubes outside only.',
  errors: '#N/A for a channel that stands in no table.',
  source: 'plane geometry; channels and tees as sharp, up to 5% too much',
  example: '=TONROW.PAINTAREA("L3X3X1/4","10\'-0""")',
  compute({ section, length }, _context, working) {
    return paintAreaMm2({ section, lengthMm: length }, working);
  },
});
