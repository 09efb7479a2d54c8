import { refuse } from '../inputError.js';
import { inventedFirstPieceMin, inventedHandling, inventedPieceMarkS } from '../press/item/inventedTimes.js';
import { type CellValue, plainText, quoted } from '../quantity/cellValue.js';
import { readLength } from '../quantity/readLength.js';
import { readNumber, refuseThousandsAmount } from '../quantity/readNumber.js';
import { kilogramPerPound, type LengthUnit } from '../quantity/units.js';
import { readBarLengths } from './barLengths.js';
import type { ForSection } from './bySection.js';
import { type HandlingClass, readHandlingClasses } from './handlingClasses.js';
import { between, oneOf, type Reader } from './settingReaders.js';
import { defaultStockSettings, type StockSettings, stockSettingRows } from './stockSettings.js';
import { wordTable } from '../quantity/wordTable.js';

const setupAnswers = ['each row', 'shared over a run'] as const;
const yesNo = ['yes', 'no'] as const;

/** The shop's own rules of time, price and bars. What is undefined is not known; a price that needs it says so. */
export interface CostSettings extends StockSettings {
  /** Whether a row carries its changes of tools, or a run of rows has them once. */
  setup: (typeof setupAnswers)[number];
  /** Share of an hour in which the press works; 1 where not given. */
  efficiency: number;
  /** Minutes to check the first piece of a row. */
  firstPieceMin: number | undefined;
  /** Seconds to mark a piece. */
  pieceMarkS: number | undefined;
  handling: readonly HandlingClass[] | undefined;
  /** What bars come in, for handling; 20 ft or 6 m where not given. Common practice, no source. */
  barLengths: readonly ForSection[];
  /** Whether the hourly rate pays for the whole crew, or for the press and one of them. */
  rateIncludesCrew: (typeof yesNo)[number];
  currency: string;
  /** Share added to the cost. */
  markup: number | undefined;
  /** Share of the price that is not cost. */
  margin: number | undefined;
  /** The least a whole job is sold for. */
  minimumCharge: number | undefined;
  /** Price of steel per kg. */
  materialPricePerKg: number | undefined;
  /** Share of the net mass bought on top. */
  scrapAllowance: number;
  /** Pieces for which a price each is asked. */
  quantityBreaks: readonly number[];
  /** How far a punch goes into its die, mm. Common practice, no source. */
  punchEntryMm: number;
  /** Between the work and the stripper, mm. Common practice, no source. */
  stripperGapMm: number;
}

export const defaultCostSettings: CostSettings = {
  setup: 'each row',
  efficiency: 1,
  firstPieceMin: undefined,
  pieceMarkS: undefined,
  handling: undefined,
  barLengths: [],
  rateIncludesCrew: 'yes',
  currency: '',
  markup: undefined,
  margin: undefined,
  minimumCharge: undefined,
  materialPricePerKg: undefined,
  scrapAllowance: 0,
  quantityBreaks: [],
  punchEntryMm: 2,
  stripperGapMm: 1.5,
  ...defaultStockSettings,
};

/** What a blank setting of time stands for, in words. Invented. */
export const inventedSettings = {
  firstPieceMin: { item: 'First piece minutes', value: inventedFirstPieceMin },
  pieceMarkS: { item: 'Seconds per piece mark', value: inventedPieceMarkS },
  handling: { item: 'Handling classes', value: inventedHandling },
};

/** Units of mass that prices are given for, in kg. */
export const massUnitPer: Record<string, number> = wordTable({
  kg: 1,
  t: 1000,
  lb: kilogramPerPound,
  cwt: 100 * kilogramPerPound,
  ton: 2000 * kilogramPerPound,
});
const pricePer = /(?:\/|\bper)\s*(kg|t|lb|cwt|ton)$/i;

/** A price of steel: `0.85 per lb`, `95 per cwt`, `1.60 per kg`; a bare number is per lb or per kg, by the shop's unit. */
function readMaterialPrice(cell: CellValue, argument: string, unit: LengthUnit): number {
  const allowed = 'Write a price such as 0.85 per lb, 95 per cwt or 1.60 per kg.';
  const text = plainText(String(cell)).trim();
  const per = pricePer.exec(text);
  const bare = typeof cell === 'number' ? cell : text.slice(0, per?.index).trim();
  const weight = per?.[1]?.toLowerCase() ?? (unit === 'in' ? 'lb' : 'kg');
  // Nobody asks 1250 for a kilogram or 1.25 for a ton, but of a ton both are written `1.250`.
  if (weight !== 'kg' && weight !== 'lb') refuseThousandsAmount(bare, argument, unit);
  const price = readNumber(bare, argument, allowed);
  if (price < 0 || price > 1e6) {
    return refuse(argument, String(cell), `${quoted(cell)} is out of range.`, allowed);
  }
  return price / (massUnitPer[weight] ?? 1);
}

/** Numbers of pieces such as `1, 10, 50`, each once, smallest first. */
function readBreaks(cell: CellValue, argument: string): number[] {
  const allowed = 'Write up to eight whole numbers of pieces, such as 1; 10; 50.';
  const parts = typeof cell === 'string' ? cell.split(/[;,]\s*/) : [cell];
  const numbers = parts.map((part) => readNumber(part, argument, allowed));
  const fit = numbers.every((each) => Number.isInteger(each) && each >= 1 && each <= 1e6);
  if (!fit || numbers.length > 8) {
    return refuse(argument, String(cell), `${quoted(cell)} is not a list of quantities.`, allowed);
  }
  return [...new Set(numbers)].sort((a, b) => a - b);
}

const upTo = (mostMm: number) => (cell: CellValue, argument: string, unit: LengthUnit) => {
  const length = readLength(cell, argument, unit, 'distance');
  if (length <= mostMm) return length;
  return refuse(argument, String(cell), `${quoted(cell)} is out of range.`, `Write at most ${mostMm} mm.`);
};

const currencySign = /^(?:[A-Za-z]{1,4}|\p{Sc})$/u;

function readCurrency(cell: CellValue, argument: string): string {
  const text = plainText(String(cell)).trim();
  if (currencySign.test(text)) return text;
  const allowed = 'Write its letters or its sign, such as USD.';
  return refuse(argument, text, `${quoted(cell)} is not a currency.`, allowed);
}

/** A row of the Settings table about time, price or bars: its name there, and what it means to people. */
export interface CostSettingRow<Value> {
  name: string;
  read: Reader<Value>;
  meaning: string;
  /** What a blank one stands for. */
  whenBlank: string;
  /** Where only a few words are read. */
  choices?: readonly string[];
}

const { firstPieceMin, pieceMarkS, handling } = inventedSettings;
const invented = (value: string | number) => `${value}, invented,`;
const notKnown = 'not known';

/** The rows of the Settings table about time, price and bars; their names are part of the file format. */
export const costSettingRows: {
  [Key in keyof CostSettings]: CostSettingRow<NonNullable<CostSettings[Key]>>;
} = {
  setup: {
    name: 'Setup',
    read: oneOf(setupAnswers),
    meaning: 'does a row carry its changes of tools, or does a run of rows have them once',
    whenBlank: setupAnswers[0],
    choices: setupAnswers,
  },
  efficiency: {
    name: 'Efficiency',
    read: between(0.2, 1),
    meaning: 'share of an hour in which the press works',
    whenBlank: '1',
  },
  firstPieceMin: {
    name: firstPieceMin.item,
    read: between(0, 480),
    meaning: 'minutes to check the first piece of a row',
    whenBlank: invented(firstPieceMin.value),
  },
  pieceMarkS: {
    name: pieceMarkS.item,
    read: between(0, 3600),
    meaning: 'seconds to mark a piece',
    whenBlank: invented(pieceMarkS.value),
  },
  handling: {
    name: handling.item,
    read: readHandlingClasses,
    meaning: 'greatest mass, greatest length and seconds of a lift, class by class',
    whenBlank: invented(handling.value),
  },
  barLengths: {
    name: 'Bar lengths',
    read: readBarLengths,
    meaning: 'what bars come in, for handling and for the supports of a press: 20 ft, or L 40 ft; FB 20 ft',
    whenBlank: '20 ft (6 m) for handling; the supports are checked against the part alone',
  },
  rateIncludesCrew: {
    name: 'Rate includes crew',
    read: oneOf(yesNo),
    meaning: 'does the hourly rate pay for the whole crew, or for each of them',
    whenBlank: yesNo[0],
    choices: yesNo,
  },
  currency: {
    name: 'Currency',
    read: readCurrency,
    meaning: 'what amounts are in, to be shown with them',
    whenBlank: 'none shown',
  },
  markup: {
    name: 'Markup',
    read: between(0, 10),
    meaning: 'share added to the cost; markup or margin, not both',
    whenBlank: notKnown,
  },
  margin: {
    name: 'Margin',
    read: between(0, 0.95),
    meaning: 'share of the price that is not cost; markup or margin, not both',
    whenBlank: notKnown,
  },
  minimumCharge: {
    name: 'Minimum charge',
    read: (cell, argument, unit) => {
      refuseThousandsAmount(cell, argument, unit);
      return between(0, 1e9)(cell, argument, unit);
    },
    meaning: 'the least a whole job is sold for',
    whenBlank: notKnown,
  },
  materialPricePerKg: {
    name: 'Material price',
    read: readMaterialPrice,
    meaning: 'price of steel: 0.85 per lb, 95 per cwt, 1.60 per kg',
    whenBlank: notKnown,
  },
  scrapAllowance: {
    name: 'Scrap allowance',
    read: between(0, 1),
    meaning: 'share of the net mass bought on top',
    whenBlank: '0',
  },
  quantityBreaks: {
    name: 'Quantity breaks',
    read: readBreaks,
    meaning: 'numbers of pieces for which a price each is asked: 1; 10; 50',
    whenBlank: 'none',
  },
  punchEntryMm: {
    name: 'Punch entry',
    read: upTo(25),
    meaning: 'how far the punch goes into the die',
    whenBlank: 'about 5/64 in (2 mm)',
  },
  stripperGapMm: {
    name: 'Stripper gap',
    read: upTo(25),
    meaning: 'between the work and the stripper',
    whenBlank: 'about 1/16 in (1.5 mm)',
  },
  ...stockSettingRows,
};
