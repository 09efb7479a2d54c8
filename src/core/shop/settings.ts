import { type Failure, InputError } from '../inputError.js';
import { type CellValue, isBlank, plainText } from '../quantity/cellValue.js';
import { readStress } from '../quantity/readStress.js';
import type { LengthUnit } from '../quantity/units.js';
import { megapascalPerKsi } from '../quantity/units.js';
import { type EdgeCode, edgeCodes } from '../rule/edgeDistance.js';
import { type JobSpec, jobSpecs } from '../rule/jobSpec.js';
import { type CostSettings, costSettingRows, defaultCostSettings } from './costSettings.js';
import { between, oneOf, type Reader } from './settingReaders.js';
import { type Cells, nameKey, readTable, type Table } from './table.js';

/** The shop's own rules. Defaults are common practice of the trade where nothing else is said. */
export interface Settings extends CostSettings {
  /** Shear strength as a share of the upper tensile strength, where a grade states none. */
  shearRatio: number;
  /** Smallest hole as a multiple of the thickness. */
  holeToThickness: number;
  /** Stress a punch may carry in compression, MPa. */
  punchAllowanceMPa: number;
  edgeCode: EdgeCode;
  clearanceMethod: 'plate' | 'sheet';
  /** Stripping force as a share of the punching force. */
  strippingShare: number;
  /** The fit of a bolt's hole where none is named. */
  holeFit: (typeof settableFits)[number];
  /** The specification that decides whether holes may be punched. */
  jobSpec: JobSpec;
  /** V opening of a bend as a multiple of the thickness. */
  veeRatio: number;
  /** Where a row gives no pitch: its distances stay open, or the holes are evenly spaced and count as given. */
  holesWithoutPitch: (typeof pitchAnswers)[number];
  /** What a plate on the list is cut from: a flat bar of its width, or sheet, with sheared long edges and more cuts. */
  barStockToWidth: (typeof stockAnswers)[number];
}

const settableFits = ['standard', 'oversize', 'short slot', 'long slot'] as const;
const pitchAnswers = ['ask', 'even'] as const;
const stockAnswers = ['ask', 'from bar', 'from sheet'] as const;

export const defaultSettings: Settings = {
  shearRatio: 0.75,
  holeToThickness: 1,
  punchAllowanceMPa: 240 * megapascalPerKsi,
  edgeCode: 'AISC',
  clearanceMethod: 'plate',
  strippingShare: 0.15,
  holeFit: 'standard',
  jobSpec: 'none',
  veeRatio: 10,
  holesWithoutPitch: 'ask',
  barStockToWidth: 'ask',
  ...defaultCostSettings,
};

/** The rows of the Settings table this edition reads; their names are part of the file format. */
export const settingRows: {
  [Key in keyof Settings]: { name: string; read: Reader<NonNullable<Settings[Key]>> };
} = {
  shearRatio: { name: 'Shear ratio', read: between(0.5, 1) },
  holeToThickness: { name: 'Hole-to-thickness ratio', read: between(1, 3) },
  punchAllowanceMPa: { name: 'Punch allowance', read: readStress },
  edgeCode: { name: 'Edge code', read: oneOf(edgeCodes) },
  clearanceMethod: { name: 'Die clearance method', read: oneOf(['plate', 'sheet']) },
  strippingShare: { name: 'Stripping share', read: between(0.05, 0.5) },
  holeFit: { name: 'Hole fit', read: oneOf(settableFits) },
  jobSpec: { name: 'Job spec', read: oneOf(jobSpecs) },
  veeRatio: { name: 'V opening ratio', read: between(4, 20) },
  holesWithoutPitch: { name: 'Holes without pitch', read: oneOf(pitchAnswers) },
  barStockToWidth: { name: 'Bar stock to width', read: oneOf(stockAnswers) },
  ...costSettingRows,
};

export type SettingsRead = {
  unit: LengthUnit;
  settings: Settings;
  /** Why a setting could not be read, by its key; a calculation that needs it refuses with this. */
  bad: Partial<Record<keyof Settings, Failure>>;
  unknownRows: string[];
};

/** Reads the Settings table (Setting, Value). Units decide what every bare number means, so they must be right. */
export function readSettings(cells: Cells | undefined): SettingsRead {
  const read: SettingsRead = { unit: 'in', settings: { ...defaultSettings }, bad: {}, unknownRows: [] };
  if (!cells) return read;
  const table = readTable(cells, 'Settings', ['Setting', 'Value']);
  const units = table.rows.find((row) => nameKey(table.cell(row, 'Setting')) === 'units');
  if (units) read.unit = oneOf(['in', 'mm'] as const)(table.cell(units, 'Value'), 'Settings, Units', 'in');
  for (const row of table.rows) readRow(row, table, read);
  if (read.settings.markup !== undefined && read.settings.margin !== undefined) {
    read.bad.margin = {
      code: 'invalid',
      argument: 'Settings, Margin',
      received: String(read.settings.margin),
      problem: 'Markup and Margin are both given.',
      allowed: 'Keep one and clear the other.',
    };
  }
  return read;
}

function readRow(row: readonly CellValue[], table: Table, read: SettingsRead): void {
  const name = nameKey(table.cell(row, 'Setting'));
  const value = table.cell(row, 'Value');
  if (name === '' || name === 'units') return;
  const entry = Object.entries(settingRows).find(([, setting]) => nameKey(setting.name) === name);
  if (!entry) {
    read.unknownRows.push(`Settings, ${plainText(String(table.cell(row, 'Setting')))}`);
    return;
  }
  if (isBlank(value)) return;
  const [key, setting] = entry as [keyof Settings, { name: string; read: Reader<never> }];
  try {
    read.settings = { ...read.settings, [key]: setting.read(value, `Settings, ${setting.name}`, read.unit) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    read.bad[key] = error.failure;
  }
}
