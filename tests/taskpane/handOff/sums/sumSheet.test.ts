import { readFileSync } from 'node:fs';
import path from 'node:path';
import ExcelJS from 'exceljs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { root } from '../../../../scripts/ensure.mjs';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import { nodeCodec } from '../../../../src/headless/files/nodeCodec.js';
import { FormulaCalculator } from '../../../../src/headless/recalculate/formulaCalculator.js';
import type { PartsList } from '../../../../src/taskpane/shared/partsLists.js';
import { sumSheet } from '../../../../src/taskpane/handOff/sums/sumSheet.js';
import { isFormula } from '../../../../src/workbook/content.js';
import { readSheetValues } from '../../../../src/xlsx/readSheetValues.js';
import { openWorkbook } from '../../../../src/xlsx/workbook.js';

const list = (headings: string[], ...values: CellValue[][]): PartsList => ({
  name: 'Parts',
  headings,
  values,
  area: { sheet: 'Quote', row: 1, column: 0, rows: values.length, columns: headings.length },
  hidden: [],
});

function contentsOf(of: PartsList, sheets: readonly string[] = []) {
  const made = sumSheet(of, sheets);
  if (typeof made === 'string') throw new Error(made);
  const [, cells] = made.steps;
  if (cells?.kind !== 'cells') throw new Error('no cells');
  return { made, rows: cells.contents ?? [] };
}

const noFunctions = { namespace: 'TONROW', allowErrors: false, byName: new Map() };

/** A spreadsheet with a table Parts: the one that calculates is no code of ours. */
async function deskWith(rows: CellValue[][]): Promise<FormulaCalculator> {
  const book = new ExcelJS.Workbook();
  const [headings = [], ...values] = rows;
  book.addWorksheet('Quote').addTable({
    ...{ name: 'Parts', ref: 'A1', headerRow: true, rows: values },
    columns: headings.map((name) => ({ name: String(name) })),
  });
  const bytes = new Uint8Array(await book.xlsx.writeBuffer());
  return FormulaCalculator.over(openWorkbook(bytes, nodeCodec), noFunctions);
}

async function resultOf(desk: FormulaCalculator, cell: unknown): Promise<unknown> {
  const result = await desk.evaluate((cell as { formula: string }).formula);
  return 'value' in result ? result.value : result;
}

describe('sumSheet', () => {
  it('takes a name that is free, and says which columns are lacking', () => {
    const { made } = contentsOf(list(['Mark', 'Qty', 'Section', 'Grade'], ['A', 1, 'FB 1/2x4', 'A36']), [
      'Sums',
    ]);
    expect(made.steps[0]).toEqual({ kind: 'sheet', name: 'Sums 2' });
    expect(made.remarks?.[1]).toBe(
      'Not added up, since the list has no such column: Mass, Paint area, Verdict.',
    );
  });

  it('says why there is nothing to add up', () => {
    expect(sumSheet(list(['Mark', 'Section']), [])).toBe(
      'The list Parts has no Qty column, so there are no pieces to add up.',
    );
  });

  it('takes names as text, whatever stands in them', () => {
    const { rows } = contentsOf(list(['Qty', "Sec'tion", 'Section'], [1, null, '*a"b'], [2, null, '*A"B']));
    const formulas = rows.flat().flatMap((cell) => (isFormula(cell ?? null) ? [cell] : []));
    expect(formulas[0]).toEqual({
      formula:
        '=SUMIFS(Parts[Qty],Parts[Section],"=~*a""b")+COUNTIFS(Parts[Section],"=~*a""b",Parts[Qty],"")',
    });
    expect(formulas).toHaveLength(2);
  });

  it('adds up parts only: a total in the list is named, and no section of it', () => {
    const headings = ['Verdict', 'Mark', 'Qty', 'Section', 'Grade'];
    const rows = [
      ['', 'STAIR 1', null, null, null],
      ['OK', 'A', 3, 'FB 1/2x4', 'A36'],
      ['', null, 3, 'TOTAL', null],
    ];
    const { made, rows: cells } = contentsOf(list(headings, ...rows));
    expect(cells.flat()).not.toContain('TOTAL');
    expect(cells.at(-1)?.slice(0, 2)).toEqual([
      'All',
      {
        formula:
          '=SUMIFS(Parts[Qty],Parts[Verdict],"?*",Parts[Verdict],"<>No part")+COUNTIFS(Parts[Verdict],"?*",Parts[Verdict],"<>No part",Parts[Qty],"")',
      },
    ]);
    expect(made.remarks).toContain('Row 4 is taken as a total: not added up.');
    expect(made.remarks).toContain('Row 2 is taken as a subhead or note: not added up.');

    const unchecked = contentsOf(list(headings.slice(1), ...rows.map((row) => row.slice(1))));
    expect(unchecked.rows.at(-1)?.[1]).toEqual({
      formula: '=SUM(Parts[Qty])+COUNTIFS(Parts[Section],"?*",Parts[Grade],"?*",Parts[Qty],"")',
    });
    expect(unchecked.made.remarks).toContain(
      'The line All counts rows that are no parts too: row 4. For parts only, first add the column Verdict to the list.',
    );
  });

  it('names the rows whose quantity is text, on the sheet too', () => {
    const headings = ['Stk', 'Section', 'Grade'];
    const rows = [
      ['4', 'FB 1/2x4', 'A36'],
      [3, 'FB 1/2x4', 'A36'],
      ['2R 2L', 'L3X3X1/4', 'A36'],
      ['TOTAL', null, null],
      [null, 'L3X3X1/4', 'A36'],
    ];
    const { made, rows: cells } = contentsOf(list(headings, ...rows));
    const said = 'Pieces leave out rows 2 and 4, where Stk is text. Type numbers there.';
    expect(made.remarks).toContain(said);
    expect(cells.at(-1)?.[0]).toBe(said);
    const numbers = contentsOf(list(headings, ...rows.filter(([qty]) => typeof qty !== 'string')));
    expect(numbers.rows.flat().join()).not.toContain('leave out');
  });

  it('counts a row without a quantity as one piece, as its check does', async () => {
    const part = fc.record({
      qty: fc.oneof(fc.integer({ min: 1, max: 40 }), fc.constant(null)),
      section: fc.constantFrom('FB 1/2x4', 'fb 1/2X4', 'L3X3X1/4', '1*2 SQ'),
      verdict: fc.constantFrom('OK', 'Edge short'),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(part, { minLength: 1, maxLength: 8 }), async (parts) => {
        const headings = ['Verdict', 'Qty', 'Section', 'Grade'];
        const values = parts.map(({ qty, section, verdict }) => [verdict, qty, section, 'A36']);
        const { rows } = contentsOf(list(headings, ...values));
        const desk = await deskWith([headings, ...values]);
        const pieces = (those: typeof parts) => those.reduce((sum, { qty }) => sum + (qty ?? 1), 0);
        const all = rows.find(([name]) => name === 'All')?.[1];
        expect(await resultOf(desk, all)).toBe(pieces(parts));
        const names = new Set(parts.map(({ section }) => section.toLowerCase()));
        for (const name of names) {
          const cell = rows.find(([text]) => String(text).toLowerCase() === name)?.[1];
          const own = parts.filter(({ section }) => section.toLowerCase() === name);
          expect(await resultOf(desk, cell), name).toBe(pieces(own));
        }
      }),
      { numRuns: 12 },
    );
  });

  it('adds up the example as adding its cells does, without a function of ours', async () => {
    const bytes = new Uint8Array(readFileSync(path.join(root, 'examples/quote.xlsx')));
    const workbook = openWorkbook(bytes, nodeCodec);
    const table = workbook.tables.find(({ sheet }) => workbook.sheets[sheet]?.name === 'Quote');
    const cells = readSheetValues(bytes, 'Quote') as CellValue[][];
    const top = cells.findIndex((row) => row.includes('Section'));
    const headings = (cells[top] ?? []).map(String);
    const values = cells.slice(top + 1).filter((row) => row[headings.indexOf('Section')]);
    const { rows } = contentsOf({ ...list(headings, ...values), name: table?.name ?? '' });
    const desk = await FormulaCalculator.over(workbook, noFunctions);
    let column = '';
    let compared = 0;
    for (const [name, ...sums] of rows) {
      if (typeof sums[0] === 'string') column = String(name);
      if (!isFormula(sums[0] ?? null)) continue;
      for (const [at, heading] of (['Qty', 'Mass'] as const).entries()) {
        const cell = sums[at];
        if (!isFormula(cell ?? null)) continue;
        const byHand = values
          .filter(
            (row) =>
              name === 'All' ||
              String(row[headings.indexOf(column)] ?? '').toLowerCase() === String(name).toLowerCase(),
          )
          .reduce((sum, row) => sum + (Number(row[headings.indexOf(heading)]) || 0), 0);
        const result = await desk.evaluate((cell as { formula: string }).formula);
        expect('value' in result && result.value, `${column} ${String(name)} ${heading}`).toBeCloseTo(
          byHand,
          6,
        );
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(40);
  });
});
