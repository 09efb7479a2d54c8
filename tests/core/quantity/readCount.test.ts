import { describe, expect, it } from 'vitest';
import { countWords, readCount } from '../../../src/core/quantity/readCount.js';
import { refusal } from '../../support/refusal.js';

const read = (value: string | number) => readCount(value, 'Qty', 'Write a whole number of pieces.');

describe('readCount', () => {
  it.each([4, '4', ' 4 ', '(4)', '4x', 'x4', 'QTY 4', 'No. 4', '4 Stück', "4 REQ'D"])(
    'reads %j as 4',
    (value) => expect(read(value)).toBe(4),
  );

  it.each(countWords)('reads a count with the word %s', (word) => {
    expect(read(`12 ${word.toUpperCase()}`)).toBe(12);
    expect(read(`12${word}.`)).toBe(12);
  });

  it.each(['4 and 2', '4 L', '2R 2L', 'four', '4-2', '(4', '4/2', '4 ea ea'])('refuses %s', (text) => {
    expect(refusal(() => read(text)).problem).toBe(`'${text}' is not a number.`);
  });

  it.each([
    ['1,500', "'1,500' may be 1.5 or 1500."],
    ['1.500', "'1.500' may be 1.5 or 1500."],
    ['1,500 pcs', "'1,500 pcs' may be 1.5 or 1500."],
  ])('refuses %s with both readings', (text, problem) => {
    expect(refusal(() => read(text)).problem).toMatch(problem.slice(-20));
  });

  it('refuses a count that became a date', () => {
    expect(refusal(() => read(46_024)).problem).toBe(
      '46024 may be a count that became the date 2 January 2026.',
    );
    expect(read(1200)).toBe(1200);
  });
});
