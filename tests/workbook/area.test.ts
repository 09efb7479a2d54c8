import { describe, expect, it } from 'vitest';
import { absoluteAddress, cellAddress, overlap, readAddresses } from '../../src/workbook/area.js';
import { columnLetters } from '../../src/sheet/address.js';

const area = (row: number, column: number, rows = 1, columns = 1, sheet = 'Parts') => ({
  sheet,
  row,
  column,
  rows,
  columns,
});

describe('addresses', () => {
  it.each([
    [0, 'A'],
    [25, 'Z'],
    [26, 'AA'],
    [701, 'ZZ'],
    [702, 'AAA'],
    [16_383, 'XFD'],
  ])('column %i is %s', (column, letters) => {
    expect(columnLetters(column)).toBe(letters);
    expect(readAddresses(`${letters}1`, 'Parts')).toEqual([area(0, column)]);
  });

  it.each([
    ['B3', area(2, 1)],
    ['$B$3:$D$9', area(2, 1, 7, 3)],
    ['Shop!A1', area(0, 0, 1, 1, 'Shop')],
    ["'It''s'!A1:B2", area(0, 0, 2, 2, "It's")],
    ["'a!b, c'!A1", area(0, 0, 1, 1, 'a!b, c')],
    ['5:7', area(4, 0, 3, 16_384)],
    ['C:D', area(0, 2, 1_048_576, 2)],
  ])('%s is read', (address, expected) => {
    expect(readAddresses(address, 'Parts')).toEqual([expected]);
  });

  it('reads several areas with commas', () => {
    expect(readAddresses("'a,b'!A1,Parts!B2:C3", 'x')).toEqual([area(0, 0, 1, 1, 'a,b'), area(1, 1, 2, 2)]);
  });

  it.each(['#REF!', 'A1:', 'R1C1', 'SUM(A1)', '!'])('refuses %s', (address) => {
    expect(() => readAddresses(address, 'Parts')).toThrow('cells that cannot be read');
  });

  it('writes what it reads', () => {
    expect(cellAddress(area(2, 1, 7, 3))).toBe('B3:D9');
    expect(absoluteAddress(area(2, 1, 1, 1, "It's"))).toBe("'It''s'!$B$3");
  });

  it.each([
    ['touching corners share a cell', area(0, 0, 2, 2), area(1, 1, 2, 2), true],
    ['neighbors below share none', area(0, 0, 2, 2), area(2, 0, 2, 2), false],
    ['neighbors beside share none', area(0, 0, 2, 2), area(0, 2, 2, 2), false],
    ['sheets share none', area(0, 0), area(0, 0, 1, 1, 'Shop'), false],
  ])('%s', (_, a, b, expected) => {
    expect([overlap(a, b), overlap(b, a)]).toEqual([expected, expected]);
  });
});
