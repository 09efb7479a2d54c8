import { describe, expect, it } from 'vitest';
import type { ReadContext } from '../../../src/functions/argument/argument.js';
import { optionalChoiceArgument } from '../../../src/functions/argument/choice.js';
import { lengthArgument, optionalLengthArgument } from '../../../src/functions/argument/length.js';
import { optionalAngleArgument, optionalCountArgument } from '../../../src/functions/argument/number.js';
import { readShopReference } from '../../../src/functions/argument/shop.js';
import { optionalRangeArgument, rangeArgument, textArgument } from '../../../src/functions/argument/text.js';
import { ShopNotRegistered, ShopRegistry } from '../../../src/functions/shop/registry.js';
import { shopWith } from '../../support/sampleShop.js';
import { refusalText } from '../../support/refusal.js';

const context: ReadContext = { argument: 'Thing', unit: 'in', shop: undefined, grades: [] };

describe('a count', () => {
  const count = optionalCountArgument('How many', 9, '1');

  it.each([1, 9, '9', ' 3 '])('may be %j', (value) => {
    expect(count.read(value, context)).toBe(Number(value));
  });

  it.each([null, '', ' '])('is left out where the cell is %j', (value) => {
    expect(count.read(value, context)).toBeUndefined();
  });

  it.each([
    [0, 'Thing: 0 is out of range. Write a whole number from 1 to 9.'],
    [10, 'Thing: 10 is out of range. Write a whole number from 1 to 9.'],
    [-1, 'Thing: -1 is out of range. Write a whole number from 1 to 9.'],
    [1.5, 'Thing: 1.5 is not a whole number. Write a whole number from 1 to 9.'],
    ['two', "Thing: 'two' is not a number. Write a whole number from 1 to 9."],
    [true, 'Thing: TRUE is not a number. Write a whole number from 1 to 9.'],
  ])('is not %j', (value, message) => {
    expect(refusalText(() => count.read(value, context))).toBe(message);
  });
});

describe('an angle', () => {
  const angle = optionalAngleArgument('From square', 60);

  it.each([
    [null, 0],
    [0, 0],
    [60, 60],
    ['45°', 45],
    ['30 deg', 30],
  ])('of %j is %d degrees', (value, degrees) => {
    expect(angle.read(value, context)).toBeCloseTo((degrees * Math.PI) / 180, 12);
  });

  it.each([-0.1, 60.1])('is not %d', (value) => {
    expect(refusalText(() => angle.read(value, context))).toBe(
      `Thing: ${value} is out of range. Write degrees from 0 to 60.`,
    );
  });
});

describe('a choice', () => {
  const choice = optionalChoiceArgument(
    'Which',
    [
      { value: 'short slot', meaning: 'a short one' },
      { value: 'long slot', meaning: 'a long one' },
    ],
    'short slot',
  );

  it('is read without regard to case and spaces, and left out where blank', () => {
    expect(choice.read('  SHORT   Slot ', context)).toBe('short slot');
    expect(choice.read('', context)).toBeUndefined();
  });

  it.each(['slot', 'constructor', 0])('is not %j', (value) => {
    expect(refusalText(() => choice.read(value, context))).toMatch(
      /^Thing: .* is not one of the choices\. Write short slot, long slot\.$/,
    );
  });
});

describe('a length', () => {
  it('must be given, or may be left out', () => {
    expect(refusalText(() => lengthArgument('distance', '').read(null, context))).toMatch(
      /^Thing: the cell is blank/,
    );
    const optional = optionalLengthArgument('distance', '', '');
    for (const blank of [null, '']) expect(optional.read(blank, context)).toBeUndefined();
    expect(optional.read('1/2', context)).toBeCloseTo(12.7, 12);
    expect(() => optional.read(-1, context)).toThrow();
  });
});

describe('text and ranges', () => {
  it('take what is given as one plain line', () => {
    expect(textArgument('', '').read(' Bay\nA ', context)).toBe('Bay A');
    expect(textArgument('', '').read(7, context)).toBe('7');
    expect(refusalText(() => textArgument('', 'a name').read(' ', context))).toBe(
      'Thing: the cell is blank. Write a name.',
    );
  });

  it('must be given, or count as left out where they are one blank cell', () => {
    expect(refusalText(() => rangeArgument('').read(null, context))).toMatch(
      /^Thing: no range was given\. Give/,
    );
    expect(refusalText(() => rangeArgument('').read([], context))).toMatch(/no range was given/);
    const optional = optionalRangeArgument('', '');
    for (const blank of [null, [], [[null]], [['']]]) expect(optional.read(blank, context)).toBeUndefined();
    expect(optional.read([['', '']], context)).toEqual([['', '']]);
  });
});

describe('the shop', () => {
  const shop = shopWith();
  const shops = new ShopRegistry();
  shops.register(shop);
  const read = (value: string | number | null, needed = false) =>
    readShopReference(value, 'Shop', shops, needed);

  it.each([
    [null, 'in'],
    ['', 'in'],
    ['IN', 'in'],
    [' mm ', 'mm'],
  ])('may be a mere unit: %j is %s', (value, unit) => {
    expect(read(value)).toEqual({ unit, shop: undefined });
  });

  it('is found by its stamp', () => {
    expect(read(shop.stamp)).toEqual({ unit: 'in', shop });
  });

  it('is not yet known by another stamp, whose hash is told', () => {
    const other = shop.stamp.replace(/.{14}$/, '7K7Q-29MX-DT4P');
    expect(() => read(other)).toThrow(ShopNotRegistered);
  });

  it('says what would do, where a unit is enough and where it is not', () => {
    expect(refusalText(() => read('cm'))).toBe(
      `Shop: 'cm' is neither the shop cell nor a unit. Give the cell named ShopStamp, or "in" or "mm".`,
    );
    expect(refusalText(() => read(7, true))).toBe(
      'Shop: 7 is not the shop cell. Give the cell named ShopStamp.',
    );
  });
});
