import { inventedSettings } from '../../../core/shop/costSettings.js';
import type { Settings } from '../../../core/shop/settings.js';

/** Settings that are asked together: what they are about, and what needs them. */
export interface SettingGroup {
  title: string;
  keys: readonly (keyof Settings)[];
  note?: string;
}

/** The groups of the form of settings; the first is open. */
export const settingGroups: readonly SettingGroup[] = [
  {
    title: 'Checks',
    keys: [
      ...(['shearRatio', 'holeToThickness', 'punchAllowanceMPa', 'edgeCode', 'clearanceMethod'] as const),
      ...(['strippingShare', 'holeFit', 'jobSpec', 'veeRatio', 'holesWithoutPitch'] as const),
      'barStockToWidth',
    ],
  },
  {
    title: 'Strokes',
    keys: ['punchEntryMm', 'stripperGapMm'],
    note: 'Needed for the stops of a stroke.',
  },
  {
    title: 'Time',
    keys: ['setup', 'efficiency', 'firstPieceMin', 'pieceMarkS', 'handling', 'barLengths'],
    note: 'Needed for minutes and cost. Where a time is blank an invented one is used, and every result says so.',
  },
  {
    title: 'Stock',
    keys: ['cutKerf', 'endTrimMm', 'gripMm', 'shortestDropMm'],
    note: 'Needed for a stock plan: what cuts and ends take off a bar, and which drops go back to the rack.',
  },
  {
    title: 'Cost and price',
    keys: [
      ...(['currency', 'rateIncludesCrew', 'materialPricePerKg', 'scrapAllowance'] as const),
      ...(['markup', 'margin', 'minimumCharge', 'quantityBreaks'] as const),
    ],
    note: 'Needed for cost and price, with the hourly rate of each press. Give a markup or a margin, not both.',
  },
];

/** Whether a blank setting stands for a time that nobody measured. */
export function isInventedSetting(key: keyof Settings): boolean {
  return key in inventedSettings;
}
