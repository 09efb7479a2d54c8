import { describe, expect, it } from 'vitest';
import {
  ErrorCell,
  type HostInput,
  plainMatrix,
  plainValue,
} from '../../../src/functions/descriptor/hostValue.js';

const errorType = { type: 'Error', basicType: 'Error', basicValue: '#REF!', errorType: 'Ref' };
const entity = { type: 'Entity', text: 'plate', basicType: 'Error', basicValue: '#VALUE!' };

describe('plainValue', () => {
  it.each(['3/8', '0', -1.5, true, false])('keeps %j', (value) => {
    expect(plainValue(value)).toBe(value);
  });

  it.each([null, undefined, '', ' ', 0, -0])('takes %j as a blank cell', (value) => {
    expect(plainValue(value)).toBeNull();
  });

  it.each([
    [{ type: 'CustomFunctionError', code: '#N/A' }, '#N/A'],
    [errorType, '#REF!'],
    [{ type: 'Error' }, '#VALUE!'],
    [Number.NaN, '#NUM!'],
    [Number.POSITIVE_INFINITY, '#NUM!'],
    [{ type: 'Double', basicValue: Number.NaN }, '#NUM!'],
  ])('marks %j as the error %s', (value, code) => {
    expect(plainValue(value)).toEqual(new ErrorCell(code));
  });

  it.each([
    [{ type: 'FormattedNumber', basicType: 'Double', basicValue: 0.375, numberFormat: '# ?/?' }, 0.375],
    [{ type: 'String', basicType: 'String', basicValue: 'A36' }, 'A36'],
    [{ type: 'Boolean', basicType: 'Boolean', basicValue: false }, false],
    [entity, '#VALUE!'],
    [{}, null],
    [{ type: 'Empty', basicType: 'Empty', basicValue: {} }, null],
    [{ type: 'Empty', basicType: 'Empty', basicValue: '' }, null],
    [{ type: 'Double', basicType: 'Double', basicValue: 0 }, null],
  ])('takes the basic value of %j', (value, plain) => {
    expect(plainValue(value)).toBe(plain);
  });
});

describe('plainMatrix', () => {
  it.each<[HostInput, unknown[][]]>([
    [
      [
        ['a', null],
        [1, undefined],
      ],
      [
        ['a', null],
        [1, null],
      ],
    ],
    ['a', [['a']]],
    [null, [[null]]],
    [[['a', errorType]], [['a', '#REF!']]],
    [[[]], [[]]],
    [[], []],
  ])('reads %j by rows', (input, cells) => {
    expect(plainMatrix(input)).toEqual(cells);
  });
});
