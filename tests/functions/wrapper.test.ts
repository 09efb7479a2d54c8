import { describe, expect, it } from 'vitest';
import { define, type Result } from '../../src/functions/descriptor/descriptor.js';
import { type SheetResult, wrap } from '../../src/functions/wrapper.js';
import { shopOrUnitArgument } from '../../src/functions/argument/shop.js';
import { readShop } from '../../src/core/shop/readShop.js';
import { settingTable, shopTables } from '../support/sampleShop.js';
import { SheetError, SheetRuntime } from '../support/sheetRuntime.js';

const inchShop = readShop(shopTables());
const metricShop = readShop(shopTables({ settings: settingTable({ Units: 'mm' }) }));
const sheet = new SheetRuntime(inchShop, metricShop);

/** A function that gives what it is told to. */
function giving(result: unknown): SheetResult | Promise<SheetResult> {
  const descriptor = define({
    name: 'GIVEN',
    purpose: 'What it is told to give',
    arguments: { shop: shopOrUnitArgument },
    result: 'cells',
    gives: '',
    errors: '',
    source: '',
    example: '',
    compute: () => {
      if (result instanceof Error) throw result;
      return result as Result;
    },
  });
  return wrap(descriptor, sheet.runtime)();
}

describe('what leaves the wrapper', () => {
  it.each([0, -1, '', 'text', [['a', 1]], [[true]]])('lets %j through', (result) => {
    expect(giving(result)).toEqual(result);
  });

  it.each([
    Number.NaN,
    Number.POSITIVE_INFINITY,
    null,
    undefined,
    [],
    [[]],
    [[1], []],
    [['a', null]],
    [[undefined]],
    [[Number.NaN]],
    [[{}]],
  ])('never lets %j through, which a sheet would show as a zero', (result) => {
    expect(() => giving(result)).toThrow(/^GIVEN gave a value|^GIVEN failed/);
    expect(() => giving(result)).toThrow(SheetError);
  });

  it('turns a fault of the program into an error that asks for a report', () => {
    const message = 'GIVEN failed (x is not a function). This is a fault of Tonrow: please report it.';
    expect(() => giving(new TypeError('x is not a function'))).toThrow(message);
  });
});

describe('what a function is given', () => {
  it.each([
    [undefined, 30.5],
    [null, 30.5],
    ['', 30.5],
    ['in', 30.5],
    [' MM ', 774.7],
    [inchShop.stamp, 30.5],
    [metricShop.stamp, 774.7],
  ])('takes its unit from the shop %j', (shop, length) => {
    expect(sheet.number('LENGTH', `2'-6 1/2"`, shop)).toBe(length);
  });

  it('reads bare numbers in that unit', () => {
    expect(sheet.number('LENGTH', 12, 'in')).toBe(12);
    expect(sheet.number('LENGTH', 12, 'mm')).toBe(12);
    expect(sheet.number('LENGTH', '12 mm', 'in')).toBeCloseTo(12 / 25.4, 14);
  });

  it('gives a result in the digits a sheet shows', () => {
    for (let inches = 1; inches <= 400; inches += 1) expect(sheet.number('LENGTH', inches)).toBe(inches);
  });

  it('refuses a range of several cells, an empty one, and an error cell, by the name of the argument', () => {
    const error = { type: 'Error', basicValue: '#DIV/0!' };
    const message = (...inputs: Parameters<SheetRuntime['error']>[1][]) =>
      sheet.error('LENGTH', ...inputs).message;
    expect(message([[1, 2]])).toBe('Text: a range of 2 cells was given. Give one cell.');
    expect(message([[]])).toBe('Text: a range of 0 cells was given. Give one cell.');
    expect(message(error)).toBe('Text: the cell shows the error #DIV/0!. Correct that cell first.');
    expect(message('1', error)).toBe('Shop: the cell shows the error #DIV/0!. Correct that cell first.');
  });

  it('says that a unit is not enough before it reads anything in that unit', () => {
    const { message } = sheet.error('PUNCHUSE', 'Bay A', '13/16', '3/8', 'A36', 'mm');
    expect(message).toBe("Shop: 'mm' is not the shop cell. Give the cell named ShopStamp.");
  });

  it('distinguishes what cannot be read from what is not there', () => {
    expect(sheet.error('HOLEMIN', 'abc', 'A36').code).toBe('#VALUE!');
    expect(sheet.error('HOLEMIN', '3/8', 'A63').code).toBe('#N/A');
    expect(sheet.error('PRESSVALUE', 'Bay Z', 'Punch', inchShop.stamp).code).toBe('#N/A');
  });
});

describe('a stamp this runtime has never seen', () => {
  it('ends in #N/A and says what to do', async () => {
    const result = new SheetRuntime().call('PRESSVALUE', 'Bay A', 'Punch', inchShop.stamp);
    await expect(result).rejects.toMatchObject({
      code: '#N/A',
      message:
        'The shop this cell was given is not known here yet: press Ctrl+Alt+F9, or enter the cell ShopStamp again (F2, then Enter).',
    });
  });

  it('is known once the shop cell is calculated', () => {
    const fresh = new SheetRuntime();
    const { presses } = shopTables();
    const stamp = fresh.call('SHOP', presses as never) as string;
    expect(fresh.call('PRESSVALUE', 'Bay A', 'Punch', stamp)).toBe('yes');
  });
});
