import ExcelJS from 'exceljs';

/** Headings as another office writes them: one is guessed by its cells, one is to be chosen by hand, one is not read. */
export const oddHeadings = [
  'Piece mark',
  'Pcs',
  'Stock',
  'Material',
  'Cut length',
  'Hole size',
  'No of holes',
  'Bolt dia',
  'Side distance',
  'Clear at tip',
  'Paint shop',
  'Machine',
];

export const kinds = {
  gusset: ['12', 'PL3/8X8', 'A36', '10-1/2', '13/16', '1 each end', '3/4', '4', '1-1/2', 'grey', ''],
  clip: ['48', 'L3X3X1/4', 'A36', '6', '13/16', '1 each end', '3/4', '1-1/4', '1-1/2', 'grey', 'Bay A'],
  thick: ['2', 'PL3/4X8', 'A36', '9', '1-1/16', '1 each end', '7/8', '4', '2', '', 'Bay D'],
  kick: ['14', 'PL1/4X6', 'A36', '36', '9/16', '1 each end', '1/2', '3', '1-1/2', 'yellow', 'Bay B'],
  small: ['6', 'PL5/8X4', 'A36', '8', '9/16', '1 each end', '1/2', '2', '2', '', 'Bay B'],
  tip: ['8', 'PL3/8X3', 'A36', '6', '13/16', '1 each end', '3/4', '1-1/2', '7/8', '', 'Bay A'],
  mistyped: ['1', 'PL3/8 by 6', 'A36', '8', '', '', '', '', '', '', ''],
  bar: ['20', 'RB 3/4', 'A36', '18', '', '', '', '', '', 'grey', 'Bay A'],
} as const;
/** What each kind comes to on the starter presses and the two that are added; Bay A has no shear for angles. */
export const verdictOf: Record<keyof typeof kinds, string> = {
  gusset: 'OK',
  clip: 'No station',
  thick: 'Over capacity',
  kick: 'OK',
  small: 'Hole too small',
  tip: 'Edge short',
  mistyped: 'Check input',
  bar: 'OK',
};
export type Kind = keyof typeof kinds;

/** The rows in turn: gusset-1, clip-1 … so that no two neighbors are alike. */
export function oddRows(count: number): string[][] {
  const names = Object.keys(kinds) as Kind[];
  return Array.from({ length: count }, (_, at) => {
    const name = names[at % names.length] as Kind;
    return [`${name}-${Math.floor(at / names.length) + 1}`, ...kinds[name]];
  });
}

/** Columns of lengths are made text beforehand, as a careful person does; bolts are forgotten and become dates. */
const textColumns = ['Cut length', 'Hole size', 'Side distance', 'Clear at tip'];
const formattedRows = 2100;

/** A workbook with one empty sheet, from another program. */
export async function emptyWorkbook(): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet('Takeoff');
  for (const heading of textColumns)
    for (let row = 1; row <= formattedRows; row++)
      sheet.getCell(row, oddHeadings.indexOf(heading) + 1).numFmt = '@';
  return new Uint8Array(await book.xlsx.writeBuffer());
}
