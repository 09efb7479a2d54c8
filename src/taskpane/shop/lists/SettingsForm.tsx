import { Button, Input, Select, Text } from '@fluentui/react-components';
import { InputError, sentenceInCell } from '../../../core/inputError.js';
import { type CostSettings, costSettingRows } from '../../../core/shop/costSettings.js';
import { edgeCodes } from '../../../core/rule/edgeDistance.js';
import { jobSpecs } from '../../../core/rule/jobSpec.js';
import { defaultSettings, readSettings, type Settings, settingRows } from '../../../core/shop/settings.js';
import { megapascalPerKsi } from '../../../core/quantity/units.js';
import type { Step } from '../../../workbook/step.js';
import { usePropose } from '../../shared/change/useChange.js';
import { useKept } from '../../shared/useKept.js';
import { shortText } from '../../shared/shortText.js';
import type { ShopTable } from '../../shared/shopState.js';
import type { ShopPartProps } from '../sheet/readyShop.js';
import { appendRows, columnAt, rowAt, writeCell } from '../sheet/tableCells.js';
import { stack } from '../../shared/stack.js';
import { PaneField } from '../../shared/PaneField.js';

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
  holeToThickness: 'least hole as a multiple of the thickness',
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

/** The shop's own rules; a blank one takes the usual value, which is shown. */
export function SettingsForm({ workbook, shop }: ShopPartProps) {
  const propose = usePropose();
  const { value: typed, set: setTyped } = useKept<Readonly<Record<string, string>>>('settings', () => ({}));
  const table = shop.tables.settings;
  if (!table) return <Text>The SHOP formula names no table of settings, so the usual values hold.</Text>;
  const onSheet = (name: string) =>
    String(table.values[rowAt(table, 'Setting', name)]?.[columnAt(table, 'Value')] ?? '');
  const names = ['Units', ...Object.values(settingRows).map(({ name }) => name)];
  const changed = names.filter((name) => typed[name] !== undefined && typed[name] !== onSheet(name));
  const problems = Object.fromEntries(
    names.map((name) => [name, problemOf(name, typed[name] ?? onSheet(name), shop.shop.unit)]),
  );
  const wrong = changed.some((name) => problems[name] !== undefined);
  const save = () => {
    const title = 'Change settings';
    const values = changed.map((name) => ({ name, value: typed[name] ?? '' }));
    const make = async () => {
      const steps = await stepsFor(values, table, workbook);
      if (typeof steps === 'string') return steps;
      const unit = values.find(({ name }) => name === 'Units')?.value;
      const remarks = unit === undefined ? [] : unitRemarks(unit.trim() || 'in');
      return { title, remarks, steps, written: () => setTyped({}) };
    };
    propose({ title, make });
  };
  return (
    <form
      aria-label="Settings"
      noValidate
      style={stack(12)}
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      {names.map((name) => {
        const problem = problems[name];
        const value = typed[name] ?? onSheet(name);
        const set = (text: string) => setTyped({ ...typed, [name]: text });
        const words = choices[name];
        return (
          <PaneField
            key={name}
            label={name}
            hint={hintOf(name)}
            {...(problem === undefined
              ? {}
              : { validationMessage: shortText(problem, 300), validationState: 'error' as const })}
          >
            {words ? (
              <Select value={value} onChange={(_, data) => set(data.value)}>
                {[...new Set(['', ...words, value])].map((word) => (
                  <option key={word} value={word}>
                    {word === '' ? 'blank' : word}
                  </option>
                ))}
              </Select>
            ) : (
              <Input value={value} onChange={(_, data) => set(data.value)} />
            )}
          </PaneField>
        );
      })}
      <Button
        appearance="primary"
        type="submit"
        style={{ justifySelf: 'start' }}
        disabled={changed.length === 0 || wrong}
      >
        {changed.length === 0 ? 'Nothing changed' : 'Save settings'}
      </Button>
    </form>
  );
}

function unitRemarks(unit: string): string[] {
  return [
    `Every number without a unit will be read in ${unit}: in the tables of the shop, and in every list of this workbook.`,
    'Numbers are not converted. What was typed for the other unit then means something else, or cannot be read.',
  ];
}

function hintOf(name: string): string {
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

function problemOf(name: string, value: string, unit: string): string | undefined {
  const rows = [
    ['Setting', 'Value'],
    ['Units', name === 'Units' ? value || 'in' : unit],
    [name, value],
  ];
  try {
    const [failure] = Object.values(readSettings(name === 'Units' ? rows.slice(0, 2) : rows).bad);
    return failure && sentenceInCell(failure);
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
}

async function stepsFor(
  changed: readonly { name: string; value: string }[],
  table: ShopTable,
  workbook: ShopPartProps['workbook'],
): Promise<Step[] | string> {
  const valueColumn = columnAt(table, 'Value');
  const cells = changed.filter(({ name }) => rowAt(table, 'Setting', name) >= 0);
  const missing = changed.filter(({ name }) => rowAt(table, 'Setting', name) < 0);
  const steps = cells.map(({ name, value }) =>
    writeCell(table, rowAt(table, 'Setting', name), valueColumn, value),
  );
  if (missing.length === 0) return steps;
  const rows = missing.map(({ name, value }) =>
    (table.values[0] ?? []).map((_, column) =>
      column === columnAt(table, 'Setting') ? name : column === valueColumn ? value : null,
    ),
  );
  const added = await appendRows(workbook, table, rows);
  return typeof added === 'string' ? added : [...steps, ...added];
}
