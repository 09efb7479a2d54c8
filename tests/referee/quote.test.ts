import path from 'node:path';
import ExcelJS from 'exceljs';
import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { quoteWorkbook } from '../../examples/build/workbook.mjs';
import { verdicts } from '../../src/core/check/verdict.js';
import { root } from '../../scripts/ensure.mjs';
import { builtFunctions, recalculateWorkbook } from '../../src/headless/index.js';
import { parseZone, zoneHolds } from '../../src/sheet/address.js';
import { type StoredValue, isCellError } from '../../src/sheet/cellValue.js';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import '../contract/support/built.js';
import { calculatedElsewhere } from './spreadsheet.js';

const sheets = ['Quote', 'Shop', 'Summary', 'List check'];

interface Compared {
  at: string;
  /** Whether a formula of ours stands in the cell, or it holds what one spilled. */
  ours: boolean;
  /** A call of ours spilled into it. */
  spilled: boolean;
  hasFormula: boolean;
  before: StoredValue;
  after: StoredValue;
}

/** The example before anything calculated it. */
let uncalculated: Compared[];
let recalculated: Compared[];

/** The areas that calls of ours spill into, by the number of the sheet from 1: as the file has them once it is calculated. */
function spills(bytes: Uint8Array, sheet: number): (row: number, column: number) => boolean {
  const part = strFromU8(unzipSync(bytes)[`xl/worksheets/sheet${sheet}.xml`] ?? new Uint8Array());
  const refs = [...part.matchAll(/<f t="array" ref="([A-Z]+\d+(?::[A-Z]+\d+)?)">/g)];
  const zones = refs.flatMap(([, ref = '']) => parseZone(ref) ?? []);
  return (row, column) => zones.some((zone) => zoneHolds(zone, row, column));
}

/** Every filled cell of a workbook, before and after another spreadsheet opened and saved it. */
async function compare(bytes: Uint8Array): Promise<Compared[]> {
  const saved = calculatedElsewhere(bytes);
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(bytes.slice().buffer);
  return sheets.flatMap((name, index) => {
    const after = readSheetValues(saved, name);
    const isSpilled = spills(bytes, index + 1);
    return readSheetValues(bytes, name).flatMap((row, r) =>
      row.flatMap((before, c) => {
        const cell = workbook.getWorksheet(name)?.getCell(r + 1, c + 1);
        if (before === null && !cell?.formula) return [];
        const spilled = isSpilled(r, c);
        const ours = spilled || cell?.formula?.includes('_xldudf_TONROW_') === true;
        const given = { before, after: after[r]?.[c] ?? null };
        const at = `${name}!${cell?.address}`;
        return [{ at, ours, spilled, hasFormula: Boolean(cell?.formula), ...given }];
      }),
    );
  });
}

beforeAll(async () => {
  const bytes: Uint8Array = quoteWorkbook(path.join(root, 'examples/quote'), verdicts);
  uncalculated = await compare(bytes);
  const functions = await builtFunctions(path.join(root, 'dist'));
  recalculated = await compare((await recalculateWorkbook(bytes, functions)).bytes);
});

/** The same value, but for the last of the digits the other program writes. */
function same({ before, after }: Compared): boolean {
  if (typeof before !== 'number' || typeof after !== 'number') return before === after;
  return Math.abs(before - after) <= 1e-14 * Math.abs(before);
}

describe('the example without results, opened by a desktop spreadsheet that does not know our functions', () => {
  it('has every typed value intact', () => {
    const typed = uncalculated.filter(({ hasFormula }) => !hasFormula);
    expect(typed.length).toBeGreaterThan(900);
    expect(typed.filter((cell) => !same(cell))).toEqual([]);
  });

  it('has the formulas of the sheet’s own that hang on none of ours intact', () => {
    const native = uncalculated.filter(
      ({ ours, hasFormula, before }) => hasFormula && !ours && before !== null,
    );
    expect(native.length).toBeGreaterThan(50);
    expect(native.filter((cell) => !same(cell))).toEqual([]);
  });

  it('says #NAME? where our functions stand, never a number of its own', () => {
    const own = uncalculated.filter(({ ours, hasFormula }) => ours && hasFormula);
    expect(own.length).toBeGreaterThan(300);
    const shown = own.map(({ after }) => (isCellError(after) ? after.error : after));
    expect([...new Set(shown)]).toEqual(['#NAME?']);
  });
});

describe('the recalculated copy, opened by a desktop spreadsheet that does not know our functions', () => {
  it('has every value intact but our texts and what our spilling calls spilled', () => {
    const lost = recalculated.filter((cell) => !same(cell));
    // The sheet's own formula that shows the stamp loses it with the stamp.
    expect(lost.filter(({ ours }) => !ours).map(({ at }) => at)).toEqual(['Quote!E3']);
    expect(lost.filter((cell) => typeof cell.before !== 'string' && !cell.spilled)).toEqual([]);
    const numbers = recalculated.filter(
      (cell) => typeof cell.before === 'number' && cell.ours && !cell.spilled,
    );
    expect(numbers.length).toBeGreaterThan(150);
  });

  it('says #NAME? where one is lost, never another value', () => {
    const lost = recalculated.filter((cell) => !same(cell));
    expect(lost.length).toBeGreaterThan(0);
    const shown = lost.map(({ after }) => (isCellError(after) ? after.error : after));
    expect([...new Set(shown)]).toEqual(['#NAME?']);
  });
});
