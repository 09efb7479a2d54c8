import { pressItems, type PressItemKey, type PressItemKind } from '../../../core/press/pressItem.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { settingRows } from '../../../core/shop/settings.js';

export const starterNotice = 'Starter presses are invented: replace them before quoting.';
export const starterNames = ['Bay A', 'Bay B'] as const;

/** The unit that the Unit column states for a kind of item: the starter plates are in inches. */
const unitOfKind: Partial<Record<PressItemKind, string>> = {
  force: 'US ton',
  length: 'in',
  lengths: 'in',
  stress: 'ksi',
  angle: '°',
  mass: 'lb',
};

/** Two invented presses, Bay A and Bay B; an item that is not here is blank: not known. */
const starterValues: Partial<Record<PressItemKey, readonly [string, string]>> = {
  punchForce: ['55', '88'],
  shearForce: ['none', 'none'],
  shareToUse: ['0.8', '0.8'],
  referenceShear: ['50', '50'],
  punch: ['yes', 'yes'],
  punchThroat: ['5', '12'],
  punchLargestHole: ['1-1/4', '2'],
  punchLargestHoleThickness: ['9/16', '9/16'],
  punchStroke: ['1-1/4', '2'],
  punchWorkingGap: ['1/4', '1/4'],
  punchClearUnderDie: ['3', '5'],
  punchDieHalfWidth: ['1/2', '9/16'],
  punchBody: ['1-3/8', '2-1/4'],
  flatShear: ['yes', 'yes'],
  flatShearBladeLength: ['14', '20'],
  flatShearRake: ['4', '3'],
  flatShearDullBlade: ['1.2', '1.2'],
  flatShearWidestBar: ['12', '18'],
  flatShearWidestBarThickness: ['1/2', '5/8'],
  flatShearThickestBar: ['5/8', '7/8'],
  flatShearThickestBarWidth: ['4', '6'],
  flatShearShortestPiece: ['1-1/2', '2'],
  angleShear: ['no', 'yes'],
  angleShearLegSquare: ['', '5'],
  angleShearThicknessSquare: ['', '1/2'],
  angleShearLeg45: ['', '4'],
  angleShearThickness45: ['', '3/8'],
  angleShearLegsMitered: ['', 'both'],
  barShear: ['yes', 'yes'],
  barShearRound: ['1-1/4', '2'],
  barShearSquare: ['1', '1-3/4'],
  notcher: ['no', 'no'],
  bend: ['no', 'no'],
  longestBar: ['20\'-0"', '40\'-0"'],
  heaviestBar: ['250', 'none'],
};

/** The unit cell of an item in a table made by the pane. */
export function starterUnit(kind: PressItemKind): string {
  return unitOfKind[kind] ?? '';
}

/** The Presses table of a new shop sheet. */
export function starterPresses(): CellValue[][] {
  const rows = pressItems.map((item) => [
    item.name,
    starterUnit(item.kind),
    ...(starterValues[item.key] ?? ['', '']),
  ]);
  return [['Item', 'Unit', ...starterNames], ...rows];
}

/** Whether a press still has the invented values of the starter of its name. */
export function isStarter(name: string, cell: (item: string) => CellValue): boolean {
  const at = starterNames.findIndex((each) => each === name);
  if (at < 0) return false;
  return pressItems.every(
    ({ key, name: item }) => String(cell(item) ?? '') === (starterValues[key]?.[at] ?? ''),
  );
}

export const toolHeadings = [
  'Press',
  'Kind',
  'Shape',
  'Size',
  'Length',
  'Body',
  'Count',
  'Hits since grind',
  'Note',
];
export const gradeHeadings = ['Grade', 'Tensile min', 'Tensile upper', 'Shear', 'Density', 'Source'];

/** Settings of a new shop sheet: the unit, and a row for each setting, blank where the usual value holds. */
export function starterSettings(unit: LengthUnit): CellValue[][] {
  const rows = Object.values(settingRows).map(({ name }) => [name, '', '']);
  return [['Setting', 'Value', 'Note'], ['Units', unit, 'what a bare number means'], ...rows];
}
