import type { Grade } from '../../core/material/grade.js';
import { readGrade } from '../../core/material/readGrade.js';
import { type CellValue, isBlank } from '../../core/quantity/cellValue.js';
import { type BoltSize, readBolt } from '../../core/rule/boltSize.js';
import { readSection } from '../../core/section/readSection.js';
import type { Section } from '../../core/section/section.js';
import { gradeOfShop } from '../../core/shop/gradeOfShop.js';
import { type HoleText, readHole } from '../../core/tooling/readHole.js';
import type { ReadContext, ScalarArgument } from './argument.js';

function required<Value>(
  kind: string,
  meaning: string,
  read: (value: CellValue, context: ReadContext) => Value,
): ScalarArgument<Value> {
  return { kind, meaning, dimensionality: 'scalar', optional: false, read };
}

export const holeArgument = (
  meaning = 'Hole: 13/16, 13/16x1-7/8 (slot), sq 3/4, rect 1x2, hex 7/8, 4 @ 13/16',
): ScalarArgument<HoleText> =>
  required('hole', meaning, (value, { argument, unit }) => readHole(value, argument, unit));

/** The same, where it may be left out. */
export const optionalHoleArgument = (
  meaning: string,
  omitted: string,
): ScalarArgument<HoleText | undefined> => ({
  ...holeArgument(meaning),
  optional: true,
  omitted,
  read: (value, context) => (isBlank(value) ? undefined : holeArgument().read(value, context)),
});

export const gradeArgument = (
  meaning = 'Grade by name (A36, S355, one of the shop) or strength: "shear 310 MPa"',
): ScalarArgument<Grade> =>
  required('grade', meaning, (value, { argument, shop, unit }) =>
    shop ? gradeOfShop(value, argument, shop) : readGrade(value, argument, [], unit),
  );

export const sectionArgument = (
  meaning = 'Section: PL1/2X6, L3X3X1/4, C8X11.5, RB 1, SQ 3/4',
): ScalarArgument<Section> =>
  required('section', meaning, (value, { argument, unit }) => readSection(value, argument, unit).section);

export const boltArgument = (
  meaning = 'Bolt diameter: 3/4, M20, or a number in the unit of the shop',
): ScalarArgument<BoltSize> =>
  required('bolt', meaning, (value, { argument, unit }) => readBolt(value, argument, unit));
