import { type FramePieces, frameCuts as cutsOfFrame } from '../../core/cut/frameCuts.js';
import { type FrameSlug, frameSlug } from '../../core/cut/frameSlug.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { frameHands } from '../../core/say/frameHands.js';
import { textValue } from '../../core/working/namedValue.js';
import { optionalChoiceArgument } from '../argument/choice.js';
import { lengthArgument } from '../argument/length.js';
import { kerfArgument, miteredSectionArgument } from '../argument/mitered.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

const headings = [
  'Piece',
  'Qty',
  'Long',
  'Short',
  'Miter left',
  'Miter right',
  'Hand',
  'Leg',
  'Push',
  'Press',
];

export const frameCuts = define({
  name: 'FRAMECUTS',
  purpose: 'The pieces of a rectangular frame, mitered at its corners: lengths, hands and how the leg lies',
  arguments: {
    width: lengthArgument('length', 'Width of the frame over all, to the outside of what lies in its plane'),
    height: lengthArgument('length', 'Height of the frame over all'),
    section: miteredSectionArgument,
    shop: shopOrUnitArgument,
    toes: optionalChoiceArgument(
      'Which way the legs in the plane point',
      [
        { value: 'in', meaning: 'into the opening, heels outside' },
        { value: 'out', meaning: 'out of it, heels at the opening' },
      ],
      'in',
    ),
    kerf: kerfArgument,
  },
  result: 'cells',
  gives:
    'A heading row, then a row for each kind of piece. Push is what is pushed to the stop, with the kerf. For angles without one it is with the slug of the presses named, or says why it is not known. Each angle has one end of each hand; Leg says how the other leg lies at the shear for it, Press which presses of the shop make both.',
  errors:
    '#VALUE! for a frame without an opening, and with the shop cell where no angle shear makes both hands.',
  source: 'plane geometry; the hands are common practice, no source',
  example: '=TONROW.FRAMECUTS(48,30.5,"L3X3X1/4")',
  compute({ width, height, section: { section, planeMm }, shop, toes, kerf }, { unit }, working) {
    const isAngle = section.kind === 'angle';
    const press = isAngle && shop ? frameHands(shop.presses) : '';
    const slug: FrameSlug =
      kerf === undefined && isAngle && shop ? frameSlug(shop.presses, working) : { mm: kerf ?? 0 };
    const kerfMm = 'mm' in slug ? slug.mm : 0;
    const frame = { widthMm: width, heightMm: height, barMm: planeMm, kerfMm };
    const pieces = cutsOfFrame(isAngle ? { ...frame, toes: toes ?? 'in' } : frame, working);
    if ('unknown' in slug) {
      working?.step({
        title: 'Pushed to the stop',
        formula: 'with the slug, which is not known',
        values: [],
        result: textValue('p', 'pushed to the stop', notKnown[slug.unknown]),
        source: 'the plate and manual of the press',
      });
    }
    return [
      headings,
      ...pieces.map((each) => {
        const push = 'mm' in slug ? inShopUnit(each.pushMm, 'length', unit) : notKnown[slug.unknown];
        return [...pieceRow(each, unit), push, press];
      }),
    ];
  },
});

const notKnown = {
  blank: 'not known: a press does not give its Angle shear slug',
  differs: 'not known: the presses differ in Angle shear slug; give the kerf',
};

function pieceRow(each: FramePieces, unit: LengthUnit): CellValue[] {
  const { piece, qty, longMm, shortMm, miterRad, legs } = each;
  const [long, short] = [longMm, shortMm].map((mm) => inShopUnit(mm, 'length', unit));
  const miter = inShopUnit(miterRad, 'angle', unit);
  const leg = legs ? `left end ${legs.left}, right end ${legs.right}` : 'none';
  return [piece, qty, long ?? 0, short ?? 0, miter, miter, legs ? 'both' : 'none', leg];
}
