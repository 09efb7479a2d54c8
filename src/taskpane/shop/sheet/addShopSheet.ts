import { sameName } from '../../../sheet/names.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { Area } from '../../../workbook/area.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Step } from '../../../workbook/step.js';
import { shortText } from '../../shared/shortText.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { stampName } from '../../shared/readShopState.js';
import { gradeHeadings, starterNotice, starterPresses, starterSettings } from './starter.js';

const firstTableRow = 5;
const stampRow = 3;
/** Room below the presses for items of later editions. */
const gapBelowPresses = 12;
/** Items, their units, then presses and what stands below them: in characters. */
const columnWidths = [34, 12, 14, 14, 14, 14, 14, 14, 20];

/** A press with its values, one for each row of the table. */
interface OwnPress {
  name: string;
  cells: readonly CellValue[];
}

/** What Add shop sheet writes: the sheet, its tables, and the shop cell; with a press of the shop's own, or with two invented ones. */
export async function addShopSheet(workbook: Workbook, unit: LengthUnit, own?: OwnPress): Promise<Proposal> {
  const [sheets, tables, names] = await Promise.all([workbook.sheets(), workbook.tables(), workbook.names()]);
  const taken = [...tables, ...names].map(({ name }) => name.toLowerCase());
  const sheet = [
    'Shop',
    'Shop data',
    'Tonrow shop',
    ...Array.from({ length: 50 }, (_, at) => `Shop ${at + 2}`),
  ].find((name) => !sheets.some((each) => sameName(each.name, name)));
  const placed = placeTables(sheet ?? 'Shop', unit, own).map((table) => ({
    ...table,
    name: freeName(table.name, taken),
  }));
  return {
    title: own ? `Add shop sheet with ${shortText(own.name, 30)}` : 'Add shop sheet',
    remarks: [
      ...(own ? [] : [`The sheet has two presses to begin with, Bay A and Bay B. ${starterNotice}`]),
      `The cell ${stampName} stands for the whole shop: formulas that need it take that one cell.`,
    ],
    steps: stepsFor(sheet ?? 'Shop', placed, own ? 'Each press has its own column.' : starterNotice),
  };
}

interface PlacedTable {
  name: string;
  area: Area;
  cells: CellValue[][];
}

/** Presses on top, free to grow to the right; below them side by side the lists that grow downward. */
function placeTables(sheet: string, unit: LengthUnit, own?: OwnPress): PlacedTable[] {
  const starters = starterPresses(unit);
  const presses = own ? withOwn(starters, own) : starters;
  const below = firstTableRow + presses.length + gapBelowPresses;
  const settings = starterSettings(unit);
  const grades = [gradeHeadings, gradeHeadings.map(() => null)];
  const place = (name: string, row: number, column: number, cells: CellValue[][]): PlacedTable => ({
    name,
    area: { sheet, row, column, rows: cells.length, columns: cells[0]?.length ?? 0 },
    cells,
  });
  return [
    place('Presses', firstTableRow, 0, presses),
    place('Grades', below, (settings[0]?.length ?? 0) + 1, grades),
    place('Settings', below, 0, settings),
  ];
}

/** The table with one press in the place of the invented ones. */
function withOwn(starters: CellValue[][], { name, cells }: OwnPress): CellValue[][] {
  return starters.map((row, at) => [...row.slice(0, 2), at === 0 ? name : (cells[at - 1] ?? null)]);
}

function freeName(name: string, taken: readonly string[]): string {
  const choices = [name, `Shop${name}`, ...Array.from({ length: 50 }, (_, at) => `Shop${name}${at + 2}`)];
  return choices.find((each) => !taken.includes(each.toLowerCase())) ?? name;
}

function stepsFor(sheet: string, tables: readonly PlacedTable[], notice: string): Step[] {
  const cell = (row: number, column: number): Area => ({ sheet, row, column, rows: 1, columns: 1 });
  const text = (row: number, value: string): Step => ({
    kind: 'cells',
    area: cell(row, 0),
    contents: [[value]],
  });
  const stamp = cell(stampRow, 1);
  const [presses, grades, settings] = tables.map(({ name }) => `${name}[[#Headers],[#Data]]`);
  // Without a list of tools the tools are not checked; an empty list would say there are none.
  const formula = `=TONROW.SHOP(${presses},,${grades},${settings})`;
  return [
    { kind: 'sheet', name: sheet },
    {
      kind: 'cells',
      area: { ...cell(0, 0), columns: columnWidths.length },
      contents: [['Shop data', ...columnWidths.slice(1).map(() => undefined)]],
      widths: columnWidths,
    },
    text(1, notice),
    text(
      2,
      'A value is a limit; none: there is no such limit; blank: not known, and rows that need it are Not checked.',
    ),
    text(stampRow, 'Shop stamp'),
    ...tables.map(
      ({ area, cells }): Step => ({
        kind: 'cells',
        area,
        contents: cells,
        formats: cells.map((row) => row.map(() => '@')),
      }),
    ),
    ...tables.map(({ name, area }): Step => ({ kind: 'table', name, area })),
    { kind: 'name', name: stampName, area: stamp },
    { kind: 'cells', area: stamp, contents: [[{ formula }]] },
  ];
}
