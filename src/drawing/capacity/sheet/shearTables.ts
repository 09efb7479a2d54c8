import type { Grade } from '../../../core/material/grade.js';
import { shearStrengthMPa } from '../../../core/material/shearStrength.js';
import { bladeFindings } from '../../../core/press/bladeLimit.js';
import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import { type Press, pressValue } from '../../../core/press/press.js';
import { shearFindings } from '../../../core/press/shearStation.js';
import { formatLength } from '../../../core/quantity/formatLength.js';
import { radianPerDegree } from '../../../core/quantity/units.js';
import { leastThicknessMm } from '../../../core/section/leastThickness.js';
import { readSection } from '../../../core/section/readSection.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { setting } from '../../../core/shop/setting.js';
import { angleThicknessesMm, commonBarsMm, commonLegsMm, commonThicknessesMm } from '../commonSizes.js';
import { type Greatest, greatestOf } from './greatest.js';

/** Sizes of a station by grade: a row for each grade, a column for each size it is asked at. */
export interface GradeTable {
  title: string;
  /** What is told in its cells. */
  told: string;
  columns: string[];
  rows: { grade: string; cells: Greatest[] }[];
}

const miterRad = 45 * radianPerDegree;
const mostLegs = 5;

/** What the press cuts, by grade: flat bars, angles square and at 45°, round and square bars. */
export function shearTables(press: Press, shop: Shop, grades: readonly Grade[]): GradeTable[] {
  const cut = (text: string, grade: Grade, miter = 0) => {
    const { section } = readSection(text, 'Section', shop.unit);
    const job = { grade, thicknessMm: leastThicknessMm(section) };
    const strength = shearStrengthMPa({ ...job, shearRatio: setting(shop, 'shearRatio') });
    const findings = shearFindings(press, { section, shearStrengthMPa: strength, miterRad: miter });
    return [...findings, ...bladeFindings(press, job)];
  };
  const size = (mm: number) => formatLength(mm, shop.unit);
  const table = (
    title: string,
    told: string,
    columns: readonly { name: string; sizesMm: readonly number[]; text: (mm: number) => string }[],
    miter = 0,
  ): GradeTable => ({
    title,
    told,
    columns: columns.map(({ name }) => name),
    rows: grades.map((grade) => ({
      grade: grade.name,
      cells: columns.map(({ sizesMm, text }) => greatestOf(sizesMm, (mm) => cut(text(mm), grade, miter))),
    })),
  });
  const own = (...keys: PressItemKey[]) => keys.flatMap((key) => stated(press, key));
  const thick = withOwn(
    commonThicknessesMm(shop.unit),
    own('flatShearWidestBarThickness', 'flatShearThickestBar'),
  );
  const widths = withOwn([], own('flatShearThickestBarWidth', 'flatShearWidestBar'));
  const legs = (key: PressItemKey) => {
    const [most = Infinity] = own(key);
    return withOwn(commonLegsMm(shop.unit), own(key))
      .filter((mm) => mm <= most)
      .slice(-mostLegs);
  };
  const angles = (legKey: PressItemKey, thicknessKey: PressItemKey) => {
    const sizesMm = withOwn(angleThicknessesMm(shop.unit), own(thicknessKey));
    return legs(legKey).map((leg) => ({
      name: `L ${size(leg)} × ${size(leg)}`,
      sizesMm: sizesMm.filter((mm) => mm * 3 <= leg),
      text: (mm: number) => `L${size(leg)}x${size(leg)}x${size(mm)}`,
    }));
  };
  const bars = (key: PressItemKey) => withOwn(commonBarsMm(shop.unit), own(key));
  return [
    ...(has(press, 'flatShear')
      ? [
          table(
            'Flat bar, cut square',
            'thickness',
            (widths.length > 0 ? widths : commonLegsMm(shop.unit).slice(-mostLegs)).map((width) => ({
              name: `${size(width)} wide`,
              sizesMm: thick,
              text: (mm: number) => `PL${size(mm)}x${size(width)}`,
            })),
          ),
        ]
      : []),
    ...(has(press, 'angleShear')
      ? [
          table('Angle, cut square', 'thickness', angles('angleShearLegSquare', 'angleShearThicknessSquare')),
          ...(mitersAngles(press)
            ? [
                table(
                  'Angle, cut at 45°',
                  'thickness',
                  angles('angleShearLeg45', 'angleShearThickness45'),
                  miterRad,
                ),
              ]
            : []),
        ]
      : []),
    ...(has(press, 'barShear')
      ? [
          table('Round and square bar', 'size', [
            { name: 'Round', sizesMm: bars('barShearRound'), text: (mm: number) => `RB ${size(mm)}` },
            { name: 'Square', sizesMm: bars('barShearSquare'), text: (mm: number) => `SQ ${size(mm)}` },
          ]),
        ]
      : []),
  ];
}

/** Whether a station is not said to be missing. */
export function has(press: Press, station: PressItemKey): boolean {
  const value = pressValue(press, station);
  return !(value.state === 'value' && value.value === 0);
}

function mitersAngles(press: Press): boolean {
  return has(press, 'angleShearLegsMitered');
}

function stated(press: Press, key: PressItemKey): number[] {
  const value = pressValue(press, key);
  return value.state === 'value' ? [value.value] : [];
}

const sameMm = 0.01;

/** Sizes with the press's own among them, smallest first. */
function withOwn(common: readonly number[], own: readonly number[]): number[] {
  const added = own.filter(
    (mm, at) => own.indexOf(mm) === at && !common.some((each) => Math.abs(each - mm) < sameMm),
  );
  return [...common, ...added].sort((a, b) => a - b);
}
