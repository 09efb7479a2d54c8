import { megapascalPerKsi } from '../../../core/quantity/units.js';
import { edgeCodes } from '../../../core/rule/edgeDistance.js';
import { jobSpecs } from '../../../core/rule/jobSpec.js';
import { type CostSettings, costSettingRows } from '../../../core/shop/costSettings.js';
import { defaultSettings, type Settings, settingRows } from '../../../core/shop/settings.js';

const choices: { [Name in string]?: readonly string[] } = {
  Units: ['in', 'mm'],
  [settingRows.edgeCode.name]: edgeCodes,
  [settingRows.jobSpec.name]: jobSpecs,
  [settingRows.clearanceMethod.name]: ['plate', 'sheet'] satisfies Settings['clearanceMethod'][],
  [settingRows.holeFit.name]: [
    'standard',
    'oversize',
    'short slot',
    'long slot',
  ] satisfies Settings['holeFit'][],
  [settingRows.holesWithoutPitch.name]: ['ask', 'even'] satisfies Settings['holesWithoutPitch'][],
  [settingRows.barStockToWidth.name]: [
    'ask',
    'from bar',
    'from sheet',
  ] satisfies Settings['barStockToWidth'][],
  ...Object.fromEntries(Object.values(costSettingRows).map(({ name, choices: words }) => [name, words])),
};

const meanings: Record<Exclude<keyof Settings, keyof CostSettings>, string> = {
  shearRatio: 'shear strength as a share of the upper tensile strength',
  holeToThickness: 'smallest hole as a multiple of the thickness',
  punchAllowanceMPa: 'stress a punch may carry, with its unit',
  edgeCode: 'least distances at edges and between holes',
  clearanceMethod: 'total die clearance: by plate thickness, or as for sheet',
  strippingShare: 'stripping force as a share of the punching force',
  holeFit: 'hole of a bolt where a row gives no hole',
  jobSpec: 'decides which holes may be punched',
  veeRatio: 'V opening of a bend as a multiple of the thickness',
  holesWithoutPitch: 'leave them open (ask), or take them as evenly spaced',
  barStockToWidth: 'what a plate is cut from: a flat bar of its width, or sheet',
};

/** The words a setting may hold, where they are few. */
export function settingChoices(name: string): readonly string[] | undefined {
  return choices[name];
}

/** What a setting means, and what a blank one stands for. */
export function settingHint(name: string): string {
  if (name === 'Units') return 'what a bare number means; in when blank';
  const key = (Object.keys(settingRows) as (keyof Settings)[]).find(
    (each) => settingRows[each].name === name,
  );
  if (!key) return '';
  if (isOfCost(key)) return `${costSettingRows[key].meaning}; ${costSettingRows[key].whenBlank} when blank`;
  const usual =
    key === 'punchAllowanceMPa'
      ? `${Math.round(defaultSettings[key] / megapascalPerKsi)} ksi`
      : defaultSettings[key];
  return `${meanings[key]}; ${usual} when blank`;
}

function isOfCost(key: keyof Settings): key is keyof CostSettings {
  return key in costSettingRows;
}
