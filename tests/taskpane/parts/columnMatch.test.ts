import { describe, expect, it } from 'vitest';
import { starterShop } from '../../../src/taskpane/shop/sheet/starterShop.js';
import {
  asItStands,
  fieldOf,
  headingsOf,
  matchColumns,
  matchedTo,
} from '../../../src/taskpane/parts/list/columnMatch.js';
import { headingsProblem } from '../../../src/taskpane/parts/list/headingsProblem.js';
import { headingRowOf } from '../../../src/taskpane/parts/list/headingRow.js';

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

  it('a unit below a heading is told of lengths only: M below Mark is a mark', () => {
    const rows = [
      ['M', null, null, null],
      ['P1', 1, 'PL3/8X6', 12],
    ];
    expect(headingsOf(matchColumns(['Mark', 'Qty', 'Section', 'Length'], rows, shop))[0]).toBe('Mark');
    const units = [['M', 'EA', 'mm', 'mm'], ...rows.slice(1)];
    expect(headingsOf(matchColumns(['Mark', 'Qty', 'Section', 'Length'], units, shop))).toEqual([
      ...['Mark', 'Qty', 'Section (mm)', 'Length (mm)'],
    ]);
  });

  it('a heading that begins or ends as a known one is taken for it, and marked as a guess', () => {
    const matches = matchColumns(['Pc mark', 'Section of bar', 'Price'], [], shop);
    expect(matches.map(({ field }) => field)).toEqual(['Mark', 'Section', undefined]);
  });

  it.each([
    ['No. Req’d', 'Qty'],
    ["No. Req'd", 'Qty'],
    ['NO. REQ`D', 'Qty'],
    ["Qty Req'd", 'Qty'],
    ['No. off', 'Qty'],
    ['Lgth', 'Length'],
    ['Lg.', 'Length'],
    ['Lg (mm)', 'Length'],
    ['Mk.', 'Mark'],
    ['# of holes', 'Holes'],
    ['No', undefined],
    ['Price each', undefined],
  ])('the heading %j is guessed to be %j', (heading, field) => {
    const [match] = matchColumns([heading, 'Section'], [], shop);
    expect(match?.field).toBe(field);
    expect(match?.guessed).toBe(field !== undefined);
  });

  it('the unit that a guessed heading states is kept', () => {
    expect(matchColumns(['Lgth (mm)'], [], shop)[0]?.rename).toBe('Length (mm)');
  });

  it('a heading that reads Qty goes before one that is only usual for it', () => {
    const matches = matchColumns(['No. off', 'Qty'], [], shop);
    expect(matches.map(({ field }) => field)).toEqual([undefined, 'Qty']);
  });

  it('a column that was chosen not to be read is not guessed again', () => {
    const rows = [['A36'], ['A36']];
    expect(matchColumns(['Steel grade (not read)'], rows, shop)[0]?.field).toBeUndefined();
  });

  it('as it stands, a column is what its heading says and not what was guessed', () => {
    const matches = matchColumns(['Color', 'Profile'], [['A36', 'PL3/8X6']], shop);
    expect(matches.map(({ field }) => field)).toEqual(['Grade', 'Section']);
    expect(matches.map(asItStands).map(({ field }) => field)).toEqual([undefined, 'Section']);
    expect(headingsOf(matches.map(asItStands))).toEqual(['Color', 'Profile']);
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
});

describe('headings that cannot be read', () => {
  const problem = (headings: string[], first = 0) => headingsProblem(matchColumns(headings, [], shop), first);

  it('two columns for one input are named by letter and heading, with what to do', () => {
    expect(problem(['Section', 'Cut length', 'Len'], 1)).toBe(
      'Columns C (Cut length) and D (Len) are both read as Length. Choose “not read” for one of them above, or what else it is.',
    );
  });
  it('two headings that are the same word are told apart', () => {
    expect(problem(['Mark', 'Section', 'Hole', 'Edge', 'Hole'], 3)).toBe(
      'Columns F (Hole) and H (Hole) are both read as Hole. Choose “not read” for one of them above, or “Hole 2” where it belongs to a second group of holes.',
    );
  });
  it('two columns of sections are named too', () => {
    expect(problem(['Section', 'Section'])).toContain('Columns A (Section) and B (Section) are both read as');
  });
  it('one of them not read, or the second of a group, is no problem', () => {
    const [section, first, second] = matchColumns(['Section', 'Hole', 'Hole'], [], shop);
    if (!section || !first || !second) throw new Error('three columns');
    expect(headingsProblem([section, first, matchedTo(second, undefined)], 0)).toBeUndefined();
    expect(headingsProblem([section, first, matchedTo(second, 'Hole 2')], 0)).toBeUndefined();
  });
  it('a heading of its own beside a synonym of it is no problem, and two marks are none', () => {
    expect(problem(['Section', 'Length', 'Cut length'])).toBeUndefined();
    expect(problem(['Section', 'Mark', 'Mark'])).toBeUndefined();
  });
  it('a column chosen for what another is read as is a problem, though its heading would go first', () => {
    const [section, length, remarks] = matchColumns(['Section', 'Cut length', 'Remarks'], [], shop);
    if (!section || !length || !remarks) throw new Error('three columns');
    const chosen = [section, length, matchedTo(remarks, 'Length')];
    expect(headingsProblem(chosen, 0)).toContain('Columns B (Cut length) and C (Remarks) are both read as');
  });
  it('no Section column is a problem', () => {
    expect(problem(['Mark', 'Qty'])).toContain('no Section column');
    expect(problem(['Mark', 'Qty'])).toContain('Say above what the columns are.');
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
