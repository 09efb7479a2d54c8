import { describe, expect, it } from 'vitest';
import { parseStructured, resolveStructured } from '../../../src/sheet/formula/tableReference.js';
import { zoneAddress } from '../../../src/sheet/address.js';
import type { Table } from '../../../src/sheet/table.js';

const parts: Table = {
  name: 'Parts',
  sheet: 0,
  zone: { top: 2, left: 1, bottom: 9, right: 4 },
  headerRows: 1,
  totalsRows: 1,
  columns: ['Mark', 'Qty', "Hole [#1's]", 'Press'],
};

/** The A1 form of `Parts[inner]` as row 5 of the sheet sees it. */
function resolved(inner: string, table = parts, row = 4): string | undefined {
  const reference = parseStructured(inner);
  const zone = reference && resolveStructured(table, reference, row);
  return zone && zoneAddress(zone);
}

describe('structured references', () => {
  it.each([
    ['Qty', 'C4:C9'],
    ['qty', 'C4:C9'],
    ['[Qty]', 'C4:C9'],
    ['[Mark]:[Press]', 'B4:E9'],
    ['[Press]:[Mark]', 'B4:E9'],
    ['', 'B4:E9'],
    ['#All', 'B3:E10'],
    ['#Data', 'B4:E9'],
    ['#Headers', 'B3:E3'],
    ['#Totals', 'B10:E10'],
    ['[#Headers],[#Data]', 'B3:E9'],
    ['[#Data],[#Totals],[Qty]', 'C4:C10'],
    ['[#Headers],[Mark]:[Press]', 'B3:E3'],
    ['[#All],[Qty]', 'C3:C10'],
    ['@Qty', 'C5'],
    ['@', 'B5:E5'],
    ['@[Mark]:[Press]', 'B5:E5'],
    ['[#This Row],[Mark]:[Press]', 'B5:E5'],
    ['[#This Row],[Qty]', 'C5'],
    ['#This Row', 'B5:E5'],
    [' [#Headers] , [Qty] ', 'C3'],
    ["Hole '['#1''s']", 'D4:D9'],
    ["[#This Row],[Hole '['#1''s']]", 'D5'],
    ["@[Hole '['#1''s']]", 'D5'],
  ])('Parts[%s] is %s', (inner, zone) => {
    expect(resolved(inner)).toBe(zone);
  });

  it.each(['Nope', '[#Headers],[Nope]', '[#Wrong],[Qty]', '[Qty', '[Qty] [Mark]'])(
    'Parts[%s] is nothing',
    (inner) => {
      expect(resolved(inner)).toBeUndefined();
    },
  );

  it('the row at hand must be a row of the list', () => {
    expect(resolved('@Qty', parts, 3)).toBe('C4');
    expect(resolved('@Qty', parts, 8)).toBe('C9');
    expect(resolved('@Qty', parts, 2)).toBeUndefined();
    expect(resolved('@Qty', parts, 9)).toBeUndefined();
  });

  it('a table without headings or totals has none', () => {
    const bare = { ...parts, headerRows: 0, totalsRows: 0 };
    expect(resolved('#Data', bare)).toBe('B3:E10');
    expect(resolved('#Headers', bare)).toBeUndefined();
    expect(resolved('#Totals', bare)).toBeUndefined();
  });
});
