import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { numberWithUnit } from '../../../src/core/quantity/numberWithUnit.js';

describe('numberWithUnit', () => {
  it.each<[CellValue, number | string, string]>([
    ['65 US ton', '65', 'US ton'],
    [' 310MPa ', '310', 'MPa'],
    ['1,500 kg', '1,500', 'kg'],
    ['.5', '.5', ''],
    [42, 42, ''],
  ])('takes %j apart into %j and %j', (value, number, unit) => {
    expect(numberWithUnit(value)).toEqual({ number, unit });
  });

  it.each<CellValue>([null, '', 'ton 65', '-5 kN', true])('is undefined for %j', (value) => {
    expect(numberWithUnit(value)).toBeUndefined();
  });
});
