import { pressItems, type PressItemKey, type PressItemKind } from '../../../core/press/item/pressItem.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { settingRows } from '../../../core/shop/settings.js';
import { nameKey } from '../../../core/shop/table.js';

export const starterNotice = 'Starter presses are invented: replace them before quoting.';
export const inventedNotice = 'Invented press: do not quote from it.';
export const starterNames = ['Bay A', 'Bay B'] as const;

/** The unit that the Unit column states for a kind of item. */
const unitsOfKinds: Record<LengthUnit, Partial<Record<PressItemKind, string>>> = {
  in: {
    ...{ force: 'US ton', length: 'in', lengths: 'in', stress: 'ksi', angle: '°', mass: 'lb' },
    ...{ speed: 'in/s', seconds: 's', minutes: 'min' },
  },
  mm: {
    ...{ force: 'kN', length: 'mm', lengths: 'mm', stress: 'MPa', angle: '°', mass: 'kg' },
    ...{ speed: 'mm/s', seconds: 's', minutes: 'min' },
  },
};

/** The row that says whether a press is invented. */
export const inventedItem = pressItems.find(({ key }) => key === 'invented')?.name ?? '';

type StarterValues = Partial<Record<PressItemKey, readonly [string, string]>>;

/** Two invented presses, Bay A and Bay B; an item that is not here is blank: not known. */
const inchValues: StarterValues = {
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
  // Without a list of tools nobody knows the bodies of the punches.
  punchBody: ['none', 'none'],
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
  angleShearLegPosition: ['', 'both'],
  barShear: ['yes', 'yes'],
  barShearRound: ['1-1/4', '2'],
  barShearSquare: ['1', '1-3/4'],
  notcher: ['no', 'no'],
  bend: ['no', 'no'],
  longestBar: ['20\'-0"', '40\'-0"'],
  heaviestBar: ['250', 'none'],
  invented: ['yes', 'yes'],
};

/** The like of them in millimeters, in sizes that are round there. */
const millimeterValues: StarterValues = {
  ...inchValues,
  punchForce: ['500', '800'],
  referenceShear: ['345', '345'],
  punchThroat: ['125', '300'],
  punchLargestHole: ['32', '50'],
  punchLargestHoleThickness: ['14', '14'],
  punchStroke: ['32', '50'],
  punchWorkingGap: ['6', '6'],
  punchClearUnderDie: ['75', '125'],
  punchDieHalfWidth: ['13', '14'],
  flatShearBladeLength: ['350', '500'],
  flatShearWidestBar: ['300', '450'],
  flatShearWidestBarThickness: ['12', '16'],
  flatShearThickestBar: ['16', '22'],
  flatShearThickestBarWidth: ['100', '150'],
  flatShearShortestPiece: ['40', '50'],
  angleShearLegSquare: ['', '125'],
  angleShearThicknessSquare: ['', '12'],
  angleShearLeg45: ['', '100'],
  angleShearThickness45: ['', '10'],
  barShearRound: ['32', '50'],
  barShearSquare: ['25', '45'],
  longestBar: ['6000', '12000'],
  heaviestBar: ['110', 'none'],
};

const starterValues = { in: inchValues, mm: millimeterValues };

/** The unit cell of an item in a table made by the pane. */
export function starterUnit(kind: PressItemKind, unit: LengthUnit): string {
  return unitsOfKinds[unit][kind] ?? '';
}

/** The Presses table of a new shop sheet. */
export function starterPresses(unit: LengthUnit): CellValue[][] {
  const rows = pressItems.map((item) => [
    item.name,
    starterUnit(item.kind, unit),
    ...(starterValues[unit][item.key] ?? ['', '']),
  ]);
  return [['Item', 'Unit', ...starterNames], ...rows];
}

/**
 * Whether the cells of a press say that it is invented; in a table without that row, whether it still has most of the
 * invented values of the starter of its name: a few changed cells do not make it the shop's own.
 */
export function isStarter(name: string, cell: (item: string) => CellValue): boolean {
  const said = nameKey(cell(inventedItem));
  if (said !== '') return said === 'yes';
  const at = starterNames.findIndex((each) => each === name);
  if (at < 0) return false;
  return Object.values(starterValues).some((values) => {
    const given = pressItems.flatMap(({ key, name: item }) => {
      if (key === 'invented') return [];
      const value = values[key]?.[at] ?? '';
      return value === '' ? [] : [{ item, value }];
    });
    const kept = given.filter(({ item, value }) => String(cell(item) ?? '').trim() === value);
    return kept.length > given.length / 2;
  });
}

export const toolHeadings = [
  'Press',
  'Kind',
  'Shape',
  'Size',
  'Length',
  'Body',
  'Holder',
  'Height',
  'Count',
  'Hits since grind',
  'Note',
];
export const gradeHeadings = ['Grade', 'Tensile min', 'Tensile upper', 'Shear', 'Density', 'Source'];

/** Settings of a new shop sheet: the unit, and a row for each setting, blank where the usual value holds. Metric bolts
 * are in the tables of EN, so a shop in millimeters begins with those. */
export function starterSettings(unit: LengthUnit): CellValue[][] {
  const begins = (name: string) => (unit === 'mm' && name === settingRows.edgeCode.name ? 'EN' : '');
  const rows = Object.values(settingRows).map(({ name }) => [name, begins(name), '']);
  return [['Setting', 'Value', 'Note'], ['Units', unit, 'what a bare number means'], ...rows];
}
