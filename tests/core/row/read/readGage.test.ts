import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readGage } from '../../../../src/core/row/read/readGage.js';
import { refusalText } from '../../../support/refusal.js';
import { lengthsIn } from './support.js';

const inch = 25.4;
const context = (unit: 'in' | 'mm', onLeg = false) => ({
  argument: 'Gage',
  length: (text: string) => lengthsIn(unit)(text),
  onLeg,
  leastApartMm: unit === 'in' ? (13 / 16) * inch : 18,
});
const inches = (text: string) => readGage(text, context('in')) / inch;
const mm = (text: string) => readGage(text, context('mm'));

describe('a gage', () => {
  it.each([
    ['3', 3],
    ['1-3/4', 1.75],
    ['1 3/4"', 1.75],
    ['GOL 1-3/4', 1.75],
    ['g = 1-3/4', 1.75],
    ['1@3', 3],
    ['8 ga', 8],
    ['8" gage', 8],
    ['3 o.c.', 3],
    ['3 TYP', 3],
    ['1,75', 1.75],
  ])('%s is %s in', (text, size) => {
    expect(inches(text)).toBeCloseTo(size, 9);
  });

  it.each([
    ['45', 45],
    ['w=45', 45],
    ['w1 = 45', 45],
    ['62,5', 62.5],
    ['45 mm', 45],
  ])('%s is %s mm', (text, size) => {
    expect(mm(text)).toBeCloseTo(size, 9);
  });

  it.each([
    ['2@3', 'three'],
    ['2x3', 'three'],
    ['3; 3', 'three'],
    ['3, 3', 'three'],
    ['3 & 3', 'three'],
    ['3@3', 'four'],
    ['2@3, 4', 'four'],
  ])('%s is %s lines, which a group does not have', (text, lines) => {
    expect(refusalText(() => inches(text))).toBe(
      `Gage: '${text}' is ${lines} lines of holes; a group has one or two. Give the others as a further group, Hole 2 with its own distances, or every hole under Holes at.`,
    );
  });

  it('is one line in a leg', () => {
    expect(refusalText(() => readGage('2 & 4', context('in', true)))).toContain(
      "Gage: '2 & 4' is two lines of holes; a group has one in a leg.",
    );
  });

  it('names both readings of a comma that may part two spaces', () => {
    expect(refusalText(() => inches('3,3'))).toBe(
      "Gage: '3,3' may be 3.3 or spaces of 3 and 3. Write 3.3 for one.",
    );
    expect(refusalText(() => mm('50,50'))).toContain('may be 50.50 or spaces of 50 and 50.');
  });

  it('is never another number than the one written', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 400 }),
        fc.constantFrom('', 'w=', 'w1 ', 'GOL '),
        (size, mark) => {
          expect(mm(`${mark}${size}`)).toBe(size);
        },
      ),
    );
  });
});
