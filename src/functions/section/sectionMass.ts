import { isBlank } from '../../core/quantity/cellValue.js';
import { sectionMassKg } from '../../core/section/mass.js';
import { anySectionArgument } from '../argument/anySection.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

const steelDensity = 7850;
const grade = gradeArgument('Grade, for its density; steel when left out');

export const sectionMass = define({
  name: 'SECTIONMASS',
  purpose: 'Mass of a piece of a section',
  arguments: {
    section: anySectionArgument(),
    length: lengthArgument(
      'length',
      'Length of the piece: 2\'-6 1/2", 750 mm, or a number in the unit of the shop',
    ),
    shop: shopOrUnitArgument,
    grade: {
      ...grade,
      optional: true,
      omitted: 'steel, 7850 kg/m³',
      read: (value: Parameters<typeof grade.read>[0], context: Parameters<typeof grade.read>[1]) =>
        isBlank(value) ? undefined : grade.read(value, context),
    },
  },
  result: 'mass',
  gives:
    'Mass in lb (inch shop) or kg (mm shop): area × length × density; of a channel, its own mass per length.',
  errors: '#VALUE! for a section that is not among those read.',
  source: 'AISC Manual Part 1; EN 10056-1, EN 10058 to 10060, EN 10219-2, EN 10365 (from memory)',
  example: '=TONROW.SECTIONMASS("L3X3X1/4","10\'-0")',
  compute({ section, length, grade: given }, _context, working) {
    const densityKgPerM3 = given?.densityKgPerM3 ?? steelDensity;
    return sectionMassKg({ section, lengthMm: length, densityKgPerM3 }, working);
  },
});
