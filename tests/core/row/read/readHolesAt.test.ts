import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readHolesAt } from '../../../../src/core/row/read/readHolesAt.js';
import { refusalText } from '../../../support/refusal.js';
import { inInches, lengthsIn } from './support.js';

const read = (text: string) => inInches(readHolesAt(text, 'Holes at', lengthsIn('in')));
const points = (...of: [number, number][]) => of.map(([x, y]) => ({ x, y }));

describe('centers of holes one by one', () => {
  it.each([
    'x2 y2; x8 y2',
    'X2 Y2, X8 Y2',
    'x2y2 x8y2',
    'y2 x2; y2 x8',
    'x=2 y=2; x=8 y=2',
    'x: 2, y: 2; x: 8, y: 2',
    '2, 2; 8, 2',
    '2,2;8,2',
    '(2, 2), (8, 2)',
    '(2,2) (8,2)',
    'x2 y2\nx8 y2',
    'x2" y2"; x8" y2"',
    'x2 y2; x8 y2 in',
  ])('%j is two holes', (text) => {
    expect(read(text)).toEqual(points([2, 2], [8, 2]));
  });

  it('takes fractions, feet, and a decimal comma where each point has both sizes', () => {
    expect(read("x1'-2 y1-1/2; x8 y1 1/2")).toEqual(points([14, 1.5], [8, 1.5]));
    expect(read('1-1/2, 2; 8, 2')).toEqual(points([1.5, 2], [8, 2]));
    expect(read('1,5, 2; 8, 2')).toEqual(points([1.5, 2], [8, 2]));
  });

  it('a unit behind the last size holds for all', () => {
    const mm = readHolesAt('x50 y40; x200 y40 mm', 'Holes at', lengthsIn('in'));
    expect(mm).toEqual([
      { xMm: 50, yMm: 40 },
      { xMm: 200, yMm: 40 },
    ]);
  });

  it.each([
    '2',
    '2, 2, 8, 2',
    '2 2; 8 2',
    '2x2; 8x2',
    '2/2; 8/2',
    '2-2; 8-2',
    '2,2 8,2',
    '2 1/2; 8 1/2',
    'x2 y2 x8',
    'x2 x8 y2',
    'a2 b2',
    'x-2 y2',
    'x2- y2',
    'x2 y1/',
    'x2 y2 / x8 y2',
    'x2 y2; x2 y2',
    'left x2 y2',
    '(2,2)1,(8,2)',
    '(2,2,(8,2)',
    '(2,2),8,2',
  ])('%j is refused', (text) => {
    expect(refusalText(() => readHolesAt(text, 'Holes at', lengthsIn('in')))).toMatch(
      /^(?:Holes at|Cell): .+\. .+\.$/,
    );
  });

  it('every list of unlike points reads back, in each spelling', () => {
    const quarters = fc.integer({ min: 1, max: 300 }).map((each) => each / 4);
    const list = fc.uniqueArray(fc.tuple(quarters, quarters), {
      minLength: 1,
      maxLength: 9,
      selector: (point) => point.join(),
    });
    fc.assert(
      fc.property(list, (of) => {
        expect(read(of.map(([x, y]) => `x${x} y${y}`).join('; '))).toEqual(points(...of));
        expect(read(of.map(([x, y]) => `y${y},x${x}`).join(' '))).toEqual(points(...of));
        expect(read(of.map(([x, y]) => `(${x}, ${y})`).join(', '))).toEqual(points(...of));
      }),
    );
  });
});
