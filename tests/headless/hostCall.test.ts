import { describe, expect, it } from 'vitest';
import {
  errorArgument,
  isHostError,
  prepareCall,
  type HostArgument,
  type HostOptions,
} from '../../src/headless/functions/hostCall.js';
import { readResult, readThrown } from '../../src/headless/functions/hostResult.js';
import type { FunctionMetadata, ParameterMetadata } from '../../src/headless/functions/metadata.js';

const options: HostOptions = { blank: null, allowErrors: true };

const metadata = (...parameters: Partial<ParameterMetadata>[]): FunctionMetadata => ({
  id: 'F',
  name: 'F',
  parameters: parameters.map((parameter, i) => ({ name: `p${i + 1}`, type: 'any', ...parameter })),
});

/** The arguments a function gets, or the error in their place. */
function passed(
  parameters: Partial<ParameterMetadata>[],
  given: HostArgument[],
  more: Partial<HostOptions> = {},
) {
  const prepared = prepareCall(metadata(...parameters), given, { ...options, ...more });
  return isHostError(prepared) ? prepared : prepared.arguments;
}

const matrix = { dimensionality: 'matrix' } as const;
const optional = { optional: true };

describe('arguments', () => {
  it('pass values of type any as they are', () => {
    expect(passed([{}, {}, {}], ['3/8', 12.5, true])).toEqual(['3/8', 12.5, true]);
  });

  it('left out arrive as null, at the end or between', () => {
    expect(passed([{}, optional, optional, optional], [1, undefined, 2])).toEqual([1, null, 2, null]);
  });

  it('left out where one is required are an error that names it', () => {
    expect(passed([{}, {}], [1])).toEqual({ error: '#VALUE!', message: 'F: the argument p2 is missing.' });
  });

  it('too many are an error', () => {
    expect(passed([{}], [1, 2])).toMatchObject({ error: '#VALUE!' });
  });

  it.each([[null], [''], [0]] as const)('blank cells arrive as the host has them: %j', (blank) => {
    expect(passed([{}, matrix], [null, [[null, 1]]], { blank })).toEqual([blank, [[blank, 1]]]);
  });

  it('a single value for a matrix is one row of one', () => {
    expect(passed([matrix], [7])).toEqual([[[7]]]);
    expect(passed([matrix], ['A'])).toEqual([[['A']]]);
  });

  it('a range for a single value gives its first', () => {
    expect(
      passed(
        [{}],
        [
          [
            [7, 8],
            [9, 10],
          ],
        ],
      ),
    ).toEqual([7]);
  });

  it('errors reach parameters of type any where the metadata allows them', () => {
    const error = { error: '#DIV/0!' };
    expect(passed([{}], [error])).toEqual([errorArgument('#DIV/0!')]);
    expect(passed([matrix], [[[1, error]]])).toEqual([[[1, errorArgument('#DIV/0!')]]]);
    expect(errorArgument('#DIV/0!')).toMatchObject({
      type: 'Error',
      basicValue: '#DIV/0!',
      errorType: 'Div0',
    });
  });

  it('errors are the result of the call elsewhere', () => {
    const error = { error: '#REF!' };
    expect(passed([{ type: 'number' }], [error])).toEqual(error);
    expect(passed([{}], [error], { allowErrors: false })).toEqual(error);
    expect(passed([{ ...matrix, type: 'number' }], [[[1, error]]])).toEqual(error);
  });

  it.each([
    ['number', '12', 12],
    ['number', null, 0],
    ['number', true, 1],
    ['number', '3/8', { error: '#VALUE!' }],
    ['number', '', { error: '#VALUE!' }],
    ['string', 12, '12'],
    ['string', true, 'TRUE'],
    ['string', null, ''],
    ['boolean', 1, true],
    ['boolean', 'false', false],
    ['boolean', 'maybe', { error: '#VALUE!' }],
  ] as const)('of type %s turn %j into %j', (type, value, expected) => {
    const result = passed([{ type }], [value]);
    expect(isHostError(expected) ? result : (result as unknown[])[0]).toEqual(expected);
  });

  it('of a repeating parameter arrive together', () => {
    expect(passed([{}, { repeating: true }], ['F', 1, 2, undefined])).toEqual(['F', [1, 2, null]]);
    expect(passed([{}, { repeating: true }], ['F'])).toEqual(['F', []]);
    expect(passed([{ ...matrix, repeating: true }], [[[1]], 2])).toEqual([[[[1]], [[2]]]]);
  });
});

describe('results', () => {
  it.each([[1], ['x'], [false]])('%j is shown as it is', (value) => {
    expect(readResult('F', value)).toBe(value);
  });

  it.each([[NaN], [Infinity], [undefined], [null], [{}], [new Date(0)], [[]], [() => 1]])(
    '%s is an error, not a silent 0',
    (value) => {
      expect(readResult('F', value)).toEqual({
        error: '#VALUE!',
        message: 'F gave something that a cell cannot show.',
      });
    },
  );

  it('rows are read value by value, short rows filled with blank text', () => {
    expect(readResult('F', [[1, 'a'], [2]])).toEqual([
      [1, 'a'],
      [2, ''],
    ]);
    expect(readResult('F', [[1, null]])).toEqual([
      [1, { error: '#VALUE!', message: 'F gave something that a cell cannot show.' }],
    ]);
  });

  it('error objects, thrown or returned, keep code and sentence', () => {
    expect(readThrown({ code: '#N/A', message: 'No such press.' })).toEqual({
      error: '#N/A',
      message: 'No such press.',
    });
    expect(readResult('F', { code: '#VALUE!', message: '' })).toEqual({ error: '#VALUE!' });
    expect(readThrown(new TypeError('x'))).toBeUndefined();
  });
});
