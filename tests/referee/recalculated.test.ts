import { expect, it } from 'vitest';
import { readSheetValues, recalculateWorkbook, type CellValue } from '../../src/headless/index.js';
import { sampleFunctions } from '../headless/support/sample.js';
import { styledWorkbook } from '../headless/support/styledWorkbook.js';
import { buildWorkbook, formula, spilled, spilling } from '../xlsx/support/buildWorkbook.js';
import { calculatedElsewhere } from './spreadsheet.js';

/** A sheet as rows of equal length: programs differ in where they end a row. */
const square = (rows: CellValue[][], width: number) =>
  rows.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? null));

it('a recalculated workbook opens in a desktop spreadsheet with its constants and native results', async () => {
  const { bytes } = await recalculateWorkbook(await styledWorkbook(), sampleFunctions());
  const opened = calculatedElsewhere(bytes);
  expect(square(readSheetValues(opened, 'Quote'), 2)).toEqual(square(readSheetValues(bytes, 'Quote'), 2));
  expect(square(readSheetValues(opened, 'Notes'), 2)).toEqual(square(readSheetValues(bytes, 'Notes'), 2));
});

it('a workbook whose spill grew opens with the new cells in place', async () => {
  const source = buildWorkbook([
    {
      name: 'Quote',
      rows: [
        [2, spilling('_xldudf_TONROW_TALL(A1)', 'B1:C2', 1), spilled('row 1'), formula('1+1', 2)],
        [null, spilled(2), spilled('row 2')],
        [],
        [7],
      ],
    },
  ]);
  const changes = [{ sheet: 'Quote', cell: 'A1', value: 6 }];
  const { bytes } = await recalculateWorkbook(source, sampleFunctions(), { changes });
  const opened = readSheetValues(calculatedElsewhere(bytes), 'Quote');
  expect(opened.map((row) => row[0] ?? null).slice(0, 4)).toEqual([6, null, null, 7]);
  expect(opened[0]?.[3]).toBe(2);
});
