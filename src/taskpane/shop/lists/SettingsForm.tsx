import {
  Accordion,
  AccordionHeader,
  AccordionItem,
  AccordionPanel,
  Button,
  Text,
} from '@fluentui/react-components';
import { InputError, sentenceInCell } from '../../../core/inputError.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { readSettings, type Settings, settingRows } from '../../../core/shop/settings.js';
import type { Step } from '../../../workbook/step.js';
import { counted } from '../../shared/change/describeStep.js';
import { usePropose } from '../../shared/change/useChange.js';
import { useKept } from '../../shared/useKept.js';
import type { ShopTable } from '../../shared/shopState.js';
import type { ShopPartProps } from '../sheet/readyShop.js';
import { appendRows, columnAt, rowAt, writeCell } from '../sheet/tableCells.js';
import { stack } from '../../shared/stack.js';
import { SettingField } from './SettingField.js';
import { isInventedSetting, type SettingGroup, settingGroups } from './settingGroups.js';

/** The shop's own rules; a blank one takes the usual value, which is shown. */
export function SettingsForm({ workbook, shop }: ShopPartProps) {
  const propose = usePropose();
  const { value: typed, set: setTyped } = useKept<Readonly<Record<string, string>>>('settings', () => ({}));
  const table = shop.tables.settings;
  if (!table) return <Text>The SHOP formula names no table of settings, so the usual values apply.</Text>;
  const onSheet = (name: string) =>
    String(table.values[rowAt(table, 'Setting', name)]?.[columnAt(table, 'Value')] ?? '');
  const names = ['Units', ...Object.values(settingRows).map(({ name }) => name)];
  const changed = names.filter((name) => typed[name] !== undefined && typed[name] !== onSheet(name));
  const valueOf = (name: string) => typed[name] ?? onSheet(name);
  const problems = problemsOf(names, valueOf, shop.shop.unit);
  const wrong = changed.some((name) => problems[name] !== undefined);
  const field = (name: string) => (
    <SettingField
      key={name}
      {...{ name, value: valueOf(name), problem: problems[name] }}
      onValue={(text) => setTyped({ ...typed, [name]: text })}
    />
  );
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
      {field('Units')}
      <Accordion collapsible multiple defaultOpenItems={[settingGroups[0]?.title]}>
        {settingGroups.map((group) => (
          <AccordionItem key={group.title} value={group.title}>
            <AccordionHeader as="h3" size="small">
              {group.title}: {summaryOf(group, valueOf, problems)}
            </AccordionHeader>
            <AccordionPanel style={{ ...stack(12), marginInline: 4 }}>
              {group.note !== undefined && <Text>{group.note}</Text>}
              {group.keys.map((key) => field(settingRows[key].name))}
            </AccordionPanel>
          </AccordionItem>
        ))}
      </Accordion>
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

/** How many of a group are given, or how many times are invented, or what cannot be read. */
function summaryOf(
  { keys }: SettingGroup,
  valueOf: (name: string) => string,
  problems: Readonly<Record<string, string | undefined>>,
): string {
  const bad = keys.filter((key) => problems[settingRows[key].name] !== undefined).length;
  if (bad > 0) return `${counted(bad, 'value')} cannot be read`;
  const blank = keys.filter((key) => valueOf(settingRows[key].name).trim() === '');
  const invented = blank.filter(isInventedSetting).length;
  if (invented > 0) return `${invented} of ${keys.length} invented`;
  return `${keys.length - blank.length} of ${keys.length} given`;
}

function unitRemarks(unit: string): string[] {
  return [
    `Every number without a unit will be read in ${unit}: in the tables of the shop, and in every list of this workbook.`,
    'Numbers are not converted. What was typed for the other unit then means something else, or cannot be read.',
  ];
}

/** Why settings cannot be read, by their names; all together, since a markup and a margin exclude each other. */
function problemsOf(
  names: readonly string[],
  valueOf: (name: string) => string,
  unit: LengthUnit,
): Readonly<Record<string, string | undefined>> {
  const rows = names.map((name) => [name, name === 'Units' ? unit : valueOf(name)]);
  const { bad } = readSettings([['Setting', 'Value'], ...rows]);
  const named = Object.entries(bad).map(([key, why]) => [
    settingRows[key as keyof Settings].name,
    sentenceInCell(why),
  ]);
  return { ...Object.fromEntries(named), Units: unitsProblem(valueOf('Units') || 'in') };
}

function unitsProblem(value: string): string | undefined {
  try {
    readSettings([
      ['Setting', 'Value'],
      ['Units', value],
    ]);
    return undefined;
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
