import type { CellValue } from '../quantity/cellValue.js';
import { quoted } from '../quantity/cellValue.js';
import { refuse } from '../inputError.js';
import { readLength } from '../quantity/readLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { formatLength } from '../quantity/formatLength.js';
import type { CostSettingRow } from './costSettings.js';
import { type ForSection, readBySection } from './bySection.js';

/** What cutting bars loses and keeps. What is undefined is not known; a plan says so. */
export interface StockSettings {
  /** What a cut takes across it, by section where the shop says so. */
  cutKerf: readonly ForSection[] | undefined;
  /** What is cut off the front end of each bar, with the kerf of that cut, mm. */
  endTrimMm: number | undefined;
  /** The end of a bar that the machine holds and cannot cut from, mm. */
  gripMm: number | undefined;
  /** The shortest drop that goes back to the rack, mm. */
  shortestDropMm: number | undefined;
}

export const defaultStockSettings: StockSettings = {
  cutKerf: undefined,
  endTrimMm: undefined,
  gripMm: undefined,
  shortestDropMm: undefined,
};

const greatestKerfMm = 50;
const greatestEndMm = 3000;

function upTo(greatestMm: number) {
  return (cell: CellValue, argument: string, unit: LengthUnit): number => {
    const length = readLength(cell, argument, unit, 'distance');
    if (length <= greatestMm) return length;
    const most = `${formatLength(greatestMm, unit)} ${unit}`;
    return refuse(argument, String(cell), `${quoted(cell)} is out of range.`, `Write at most ${most}.`);
  };
}

const kerfSample = 'Write a length such as 1/8 or 3 mm, or by section: C 1/8; L 3/8.';

/** The rows of the Settings table about cutting bars; their names are part of the file format. */
export const stockSettingRows: {
  [Key in keyof StockSettings]: CostSettingRow<NonNullable<StockSettings[Key]>>;
} = {
  cutKerf: {
    name: 'Cut kerf',
    read: (cell, argument, unit) =>
      readBySection(cell, {
        argument,
        allowed: kerfSample,
        read: (part) => upTo(greatestKerfMm)(part, argument, unit),
      }),
    meaning: 'what a cut of a bar takes, for stock plans: 1/8, or by section C 1/8; L 3/8',
    whenBlank: 'the slug of the angle shear; 0 for other shears and saws, and the plan says so',
  },
  endTrimMm: {
    name: 'End trim',
    read: upTo(greatestEndMm),
    meaning: 'cut off the front end of each bar, with the kerf of that cut, for stock plans',
    whenBlank: '0, and the plan says so',
  },
  gripMm: {
    name: 'Grip',
    read: upTo(greatestEndMm),
    meaning: 'the end of a bar that the machine holds and cannot cut, for stock plans',
    whenBlank: '0, and the plan says so',
  },
  shortestDropMm: {
    name: 'Shortest drop kept',
    read: (cell, argument, unit) => readLength(cell, argument, unit, 'length'),
    meaning: 'what is left of a bar goes back to the rack from this length on, for stock plans',
    whenBlank: 'no drop is kept, and the plan says so',
  },
};
