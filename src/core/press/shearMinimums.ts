import type { Failure } from '../inputError.js';
import { leastPieceMm } from '../rule/leastPiece.js';
import type { Section } from '../section/section.js';
import type { Working } from '../working/working.js';
import { type Press, pressValue } from './press.js';
import type { PressItemKey } from './item/pressItem.js';

type ShearedSection = Exclude<Section, { kind: 'channel' }>;

/** One size of a part that must not be under what a shear can hold and cut. */
export interface ShearMinimum {
  key: PressItemKey;
  /** The size of the part; undefined where the row does not give it. */
  sizeMm?: number;
  limit:
    | { state: 'value'; leastMm: number; from: 'press' | 'practice' }
    | { state: 'none' }
    | { state: 'bad'; failure: Failure };
}

/** Practice for shears of plate and bars where the press says nothing, mm. Common practice, no source. */
const practiceMm = {
  flatShearNarrowestBar: 12,
  flatShearThinnestBar: 1.5,
  angleShearSmallestLeg: 25,
  barShearSmallestSize: 6,
};

/**
 * What a shear asks of the smallest parts: the shortest piece and the smallest size, by the press, or by practice where
 * its cells are blank.
 *
 * Formula: size ≥ limit, for the piece and for the size of the section
 * @param press the press
 * @param part the section, and the length of the piece in mm: of a mitered one that of its shorter side
 * @param working collects the steps of the practice that stands for blank cells
 * @returns each size of the part with its limit
 * Valid for every section a shear cuts. Throws `invalid` for a section without a size.
 * @example shearMinimums(press, { section, lengthMm: 6.35 }).map(({ key }) => key) // of a round bar: its piece, its size
 * Source: the plate and manual of the press; for blank cells common practice, no source.
 */
export function shearMinimums(
  press: Press,
  part: { section: ShearedSection; lengthMm?: number },
  working?: Working,
): ShearMinimum[] {
  const { section, lengthMm } = part;
  const limitOf = limits(press);
  const piece = (key: PressItemKey, thicknessMm: number): ShearMinimum => ({
    key,
    ...(lengthMm === undefined ? {} : { sizeMm: lengthMm }),
    limit: limitOf(key, () => leastPieceMm({ thicknessMm }, working)),
  });
  const size = (key: keyof typeof practiceMm, sizeMm: number): ShearMinimum => ({
    key,
    sizeMm,
    limit: limitOf(key, () => practiceMm[key]),
  });
  switch (section.kind) {
    case 'flat':
      return [
        piece('flatShearShortestPiece', section.thicknessMm),
        size('flatShearNarrowestBar', section.widthMm),
        size('flatShearThinnestBar', section.thicknessMm),
      ];
    case 'angle':
      return [
        piece('angleShearShortestPiece', section.thicknessMm),
        size('angleShearSmallestLeg', Math.min(section.legAMm, section.legBMm)),
      ];
    default: {
      const sizeMm = section.kind === 'round' ? section.diameterMm : section.sideMm;
      return [piece('barShearShortestPiece', sizeMm), size('barShearSmallestSize', sizeMm)];
    }
  }
}

function limits(press: Press) {
  return (key: PressItemKey, practice: () => number): ShearMinimum['limit'] => {
    const value = pressValue(press, key);
    if (value.state === 'value') return { state: 'value', leastMm: value.value, from: 'press' };
    if (value.state === 'none') return { state: 'none' };
    if (value.state === 'bad') return { state: 'bad', failure: value.failure };
    return { state: 'value', leastMm: practice(), from: 'practice' };
  };
}
