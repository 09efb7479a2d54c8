import { describe, expect, it } from 'vitest';
import { recalculateWorkbook, readSheetValues } from '../../src/headless/index.js';
import { buildWorkbook, formula } from '../xlsx/support/buildWorkbook.js';
import { sampleFunctions } from './support/sample.js';

/** Recalculates a formula over A1 and B1 after A1 was changed to itself, the file's value a sign of its own. */
async function evaluated(text: string, a: number, b: number) {
  const file = buildWorkbook([{ name: 'Data', rows: [[a - 1, b, formula(text)]] }]);
  const { bytes, report } = await recalculateWorkbook(file, sampleFunctions(), {
    changes: [{ sheet: 'Data', cell: 'A1', value: a }],
  });
  return { value: readSheetValues(bytes, 'Data')[0]?.[2] ?? null, stale: report.stale };
}

describe('a call with which the engine is known to differ from the host', () => {
  it.each([
    ['ACOS(A1)', 2, 0],
    ['LN(A1)', -1, 0],
    ['LOG(A1,B1)', -1, 10],
    ['SQRT(A1)', -4, 0],
    ['LARGE(A1:B1,3)', 1, 2],
    ['SMALL(A1:B1,0)', 1, 2],
    ['DAY(A1)', 59, 0],
    ['MONTH(A1)', 60, 0],
    ['WEEKDAY(A1)', 1, 0],
    ['EDATE(A1,1)', 31, 0],
    ['DATE(A1,2,29)', 1900, 0],
    ['RIGHT("abc",A1)', 1.5, 0],
    ['REPLACE("abcd",A1,1,"x")', 1.9, 0],
    ['SUBSTITUTE("aaa","a","b",A1)', 1.5, 0],
    ['FLOOR(A1,B1)', 1, 0],
    ['SUMPRODUCT(A1:B1,A1)', 1, 2],
    ['XLOOKUP(A1,A1:B1,A1:B1,0,0,2)', 1, 2],
    ['YEAR(IF(A1=1,"",1))', 1, 0],
    ['NETWORKDAYS(-A1,46000)', 1, 0],
    ['WEEKDAY(46000,A1)', 2.7, 0],
    ['INDEX(A1:B1,1,A1)', 1.5, 0],
    ['REPLACE("abcdef",2,A1,"x")', -1, 0],
    ['SUBSTITUTE("aaa","a","b",A1)', 0, 0],
    ['REPT(A1=1,2)', 1, 0],
    ['SLN(A1,1,B1)', 10, 0],
    ['RATE(60,-400,A1)', 1, 0],
    ['MAXIFS(A1:B1,A1,1)', 1, 2],
    ['MATCH(A1,A1:B1)', 2, 1],
    ['MATCH(A1,A1:B1,-1)', 1, 2],
    ['HLOOKUP(A1,A1:B1,1)', 2, 1],
    ['LOOKUP(A1,A1:B1)', 2, 1],
  ])('%s is left alone and told, with %d and %d', async (text, a, b) => {
    const { value, stale } = await evaluated(text, a, b);
    expect(value).toBeNull();
    expect(stale.map(({ cell }) => cell)).toEqual(['Data!C1']);
  });

  it.each([
    ['ACOS(A1)', 1, 0, 0],
    ['DAY(A1)', 61, 0, 1],
    ['RIGHT("abc",A1)', 2, 0, 'bc'],
    ['FLOOR(A1,B1)', 5, 2, 4],
    ['SUMPRODUCT(A1:B1,A1:B1)', 3, 4, 25],
    ['LARGE(A1:B1,1)', 1, 2, 2],
    ['MATCH(A1,A1:B1)', 1, 2, 1],
    ['MATCH(A1,A1:B1,-1)', 2, 1, 1],
    ['MATCH(A1,A1:B1,0)', 2, 1, 1],
    ['HLOOKUP(A1,A1:B1,1)', 1, 2, 1],
    ['LOOKUP(A1,A1:B1)', 1, 2, 1],
    ['SUBSTITUTE("aaa","a","b",A1)', 2, 0, 'aba'],
    ['REPLACE("abcdef",2,A1,"x")', 0, 0, 'axbcdef'],
  ])('%s is evaluated where they agree, with %d and %d', async (text, a, b, value) => {
    expect(await evaluated(text, a, b)).toEqual({ value, stale: [] });
  });
});
