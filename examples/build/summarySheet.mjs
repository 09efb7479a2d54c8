import { readSource } from './source.mjs';
import { pageSettings, Sheet } from './sheet.mjs';

const firstVerdictRow = 4;

/** Press hours estimated for the job; rates come from the Presses table. */
const pressHours = [
  { press: 'Bay A', hours: 9.5 },
  { press: 'Bay B', hours: 12.25 },
];

/** `verdicts`: the words of a row, in the order in which one of them is chosen. */
export function summarySheet(folder, strings, verdicts) {
  const totalRow = firstVerdictRow + verdicts.length;
  const ratesRow = totalRow + 6;
  const sheet = new Sheet('Summary', strings);
  sheet.set(1, 1, { value: 'Summary', style: 'title' });
  sheet.setRow(3, [
    { value: 'Verdict', style: 'heading' },
    { value: 'Rows', style: 'heading' },
  ]);
  verdicts.forEach((word, index) => {
    const row = firstVerdictRow + index;
    sheet.setRow(row, [{ value: word }, { formula: `COUNTIF(Parts[Verdict],A${row})` }]);
  });
  const lastVerdictRow = totalRow - 1;
  const total = (row, label, formula, style) =>
    sheet.setRow(row, [
      { value: label, style: 'bold' },
      { formula, style },
    ]);
  total(totalRow, 'Rows checked', `SUM(B${firstVerdictRow}:B${lastVerdictRow})`, 'boldWhole');
  total(totalRow + 1, 'Share of rows OK', `B${lastVerdictRow}/B${totalRow}`, 'boldShare');
  total(totalRow + 2, 'Total mass, lb', 'SUM(Parts[Mass])', 'boldOne');
  total(totalRow + 3, 'Greatest share of rating', 'MAX(Parts[Share of rating])', 'boldShare');
  pressCost(sheet, folder, ratesRow);
  frame(sheet, ratesRow + 7);
  setUp(sheet);
  return { sheet, xml: sheet.part(layout) };
}

/** Hours × rate: formulas of the sheet's own that no check feeds, with their values. */
function pressCost(sheet, folder, ratesRow) {
  const [headings, ...rows] = readSource(folder, 'presses');
  const rates = rows.find(([item]) => item === 'Hourly rate');
  sheet.setRow(
    ratesRow,
    ['Press time', 'Hours', 'Rate', 'Cost'].map((value) => ({ value, style: 'heading' })),
  );
  const costs = pressHours.map(({ press, hours }, index) => {
    const row = ratesRow + 1 + index;
    const rate = Number(rates[headings.indexOf(press)]);
    sheet.setRow(row, [
      { value: press },
      { value: hours, style: 'money' },
      {
        formula: `INDEX(Presses[${press}],MATCH("Hourly rate",Presses[Item],0))`,
        value: rate,
        style: 'money',
      },
      { formula: `B${row}*C${row}`, value: hours * rate, style: 'money' },
    ]);
    return hours * rate;
  });
  const first = ratesRow + 1;
  const last = ratesRow + pressHours.length;
  const sum = (numbers) => numbers.reduce((a, b) => a + b, 0);
  sheet.setRow(last + 1, [
    { value: 'Press cost', style: 'bold' },
    {
      formula: `SUM(B${first}:B${last})`,
      value: sum(pressHours.map(({ hours }) => hours)),
      style: 'boldMoney',
    },
    {},
    { formula: `SUM(D${first}:D${last})`, value: sum(costs), style: 'boldMoney' },
  ]);
}

/** The cut list of the access frames: the marks AF1 and AF2, with their hands. */
function frame(sheet, frameRow) {
  sheet.set(1, frameRow, { value: 'Access frames: AF1 and AF2', style: 'bold' });
  const inputs = [
    ['Width', `4'-0`],
    ['Height', `2'-6 1/2"`],
    ['Section', 'L3X3X1/4'],
    ['Toes', 'in'],
  ];
  inputs.forEach(([label, value], index) => {
    sheet.setRow(frameRow + 1 + index, [{ value: label }, { value, style: 'text' }]);
  });
  const [width, height, section, toes] = inputs.map((_, index) => `B${frameRow + 1 + index}`);
  sheet.set(1, frameRow + 2 + inputs.length, {
    formula: `_xldudf_TONROW_FRAMECUTS(${width},${height},${section},ShopStamp,${toes})`,
    spill: true,
    style: 'general',
  });
}

/** Right of all else: how the base plate BP1 is set on fence and stop, and in which order the marks of Bay B need fewest tools. */
function setUp(sheet) {
  const column = 12;
  sheet.set(column, 3, { value: 'Base plate BP1: settings of fence and stop', style: 'bold' });
  sheet.set(column, 4, {
    formula: '_xldudf_TONROW_GAUGESETTINGS(_xldudf_TONROW_HOLESCORNER(10,10,2),10,10,ShopStamp)',
    spill: true,
    style: 'general',
  });
  sheet.set(column, 9, {
    value: 'Bay B: the order of marks with the fewest changes of tools',
    style: 'bold',
  });
  sheet.set(column, 10, {
    formula: '_xldudf_TONROW_TOOLORDER(Parts[[#All],[Mark]:[Press]],"Bay B",ShopStamp)',
    spill: true,
    style: 'general',
  });
}

const layout = {
  views: '<sheetView workbookViewId="0"/>',
  columns: [28, 12, 12, 12, 12, 12, 12, 26, 12, 14, 3, 12, 12, 12, 12, 30, 12],
  after: pageSettings,
};
