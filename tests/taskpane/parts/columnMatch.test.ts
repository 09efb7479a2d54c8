import { describe, expect, it } from 'vitest';
import { starterShop } from '../../../src/taskpane/shop/sheet/starterShop.js';
import {
  fieldOf,
  headingsOf,
  headingsProblem,
  matchColumns,
  matchedTo,
} from '../../../src/taskpane/parts/list/columnMatch.js';
import { headingRowOf } from '../../../src/taskpane/parts/list/listSource.js';

const shop = starterShop('in');

describe('what a heading is read as', () => {
  it.each([
    ['Section', 'Section'],
    ['Profile', 'Section'],
    ['Piece mark', 'Mark'],
    ['Length (mm)', 'Length'],
    ['Hole 2', 'Hole 2'],
    ['Remarks', undefined],
    ['', undefined],
  ])('%j is %j', (heading, field) => expect(fieldOf(heading)).toBe(field));
});

describe('guesses', () => {
  it('a column is known by its cells where its heading says nothing', () => {
    const matches = matchColumns(
      ['No', 'Matl', 'What'],
      [
        ['1', 'A36', 'PL3/8X6'],
        ['2', 'A36', 'L3X3X1/4'],
      ],
      shop,
    );
    expect(matches.map(({ field }) => field)).toEqual([undefined, 'Grade', 'Section']);
    expect(matches.map(({ guessed }) => guessed)).toEqual([false, true, true]);
    expect(headingsOf(matches)).toEqual(['No', 'Grade', 'Section']);
  });

  it('a heading that begins or ends as a known one is taken for it, and marked as a guess', () => {
    const matches = matchColumns(['Pc mark', 'Section of bar', 'Price'], [], shop);
    expect(matches.map(({ field }) => field)).toEqual(['Mark', 'Section', undefined]);
  });

  it('no input is guessed twice', () => {
    const rows = [['A36', 'A36', 'PL3/8X6']];
    expect(matchColumns(['x', 'y', 'Section'], rows, shop).map(({ field }) => field)).toEqual([
      'Grade',
      undefined,
      'Section',
    ]);
  });

  it('cells that are mostly something else are not guessed', () => {
    const rows = [['A36'], ['see drawing'], ['tbd']];
    expect(matchColumns(['x'], rows, shop)[0]?.field).toBeUndefined();
  });
});

describe('choosing another field', () => {
  const [size] = matchColumns(['Size (mm)'], [], shop);
  it('renames the heading and keeps its unit', () => {
    expect(size && matchedTo(size, 'Hole')).toMatchObject({ field: 'Hole', rename: 'Hole (mm)' });
  });
  it('a column not to be read gets a heading that is not read', () => {
    const match = size && matchedTo(size, undefined);
    expect(match?.rename).toBeDefined();
    expect(fieldOf(match?.rename ?? 'Size')).toBeUndefined();
  });
  it('going back to what the heading says renames nothing', () => {
    expect(size && matchedTo(matchedTo(size, 'Hole'), 'Section').rename).toBeUndefined();
  });
  it('two columns for one input are a problem, told in a sentence', () => {
    const matches = matchColumns(['Section', 'Cut length', 'Len'], [], shop);
    expect(headingsProblem(matches)).toContain('both mean Length');
  });
  it('no Section column is a problem', () => {
    expect(headingsProblem(matchColumns(['Mark', 'Qty'], [], shop))).toContain('no Section column');
  });
});

describe('the row with the headings', () => {
  it('is the one with the most that is read', () => {
    expect(headingRowOf([['Catwalk'], [''], ['Mark', 'Qty', 'Profile'], ['C1', 2, 'PL3/8X6']])).toBe(2);
  });
  it('is the first with several cells where none is read', () => {
    expect(
      headingRowOf([
        ['Catwalk', null],
        ['a', 'b'],
        ['c', 'd'],
      ]),
    ).toBe(1);
  });
});
