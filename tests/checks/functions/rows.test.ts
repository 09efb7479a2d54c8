import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { type Verdict, verdicts } from '../../../src/core/check/verdict.js';
import { readShop, type Shop } from '../../../src/core/shop/readShop.js';
import { bayA, bayB, type PressCells, pressTable, shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

type Part = Record<string, CellValue>;

/** A clip that runs, with every cell that its checks need: 28.716 US tons of the plate's 58.905 at the punch. */
const clip: Part = {
  Mark: 'C1',
  Qty: 4,
  Section: 'FB 3/8x4',
  Grade: 'A36',
  Length: 12,
  Hole: '13/16',
  Holes: 2,
  Bolt: '3/4',
  Edge: '1-1/2',
  End: '1-1/2',
  'End kind': 'sheared',
  Pitch: 3,
  Press: 'Bay A',
};
/** The same without holes. */
const plain: Part = { Mark: 'C1', Qty: 4, Section: 'FB 3/8x4', Grade: 'A36', Length: 12, Press: 'Bay A' };

function checked(part: Part, shop: Shop, item?: string): CellValue[] {
  const headings = Object.keys(part);
  const row = headings.map((heading) => part[heading] ?? null);
  const result = new SheetRuntime(shop).call('ROWCHECK', [headings], [row], shop.stamp, item ?? null);
  return (result as CellValue[][])[0] ?? [];
}

const verdictOf = (part: Part, shop: Shop) => checked(part, shop, 'verdict')[0];
const noteOf = (part: Part, shop: Shop) => String(checked(part, shop, 'note')[0]);

interface Case {
  part: Part;
  cells?: PressCells;
  tools?: CellValue[][];
  governs: string | RegExp;
  note: RegExp;
}

/**
 * One row for each word, worked out by hand. The rules are those of the functions, whose own checks name their
 * sources; which word goes before which is common practice, no source.
 */
const rowOf: Record<Verdict, Case> = {
  // A3 is no grade.
  'Check input': {
    part: { ...clip, Grade: 'A3x6' },
    governs: 'Grade',
    note: /^Grade: 'A3x6' is not a known grade\. Did you mean .*\?/,
  },
  // The row has no section, no grade and no length: whose ends are coped stands in another row.
  'No part': {
    part: { ...Object.fromEntries(Object.keys(clip).map((name) => [name, null])), Mark: 'w/ cope both ends' },
    governs: 'work without a part',
    note: /^'w\/ cope both ends' says work, and no part stands in this row/,
  },
  'No press': {
    part: { ...clip, Press: 'Bay Z' },
    governs: 'press',
    note: /^'Bay Z' is not a press of the shop\. Presses: Bay A\./,
  },
  'No station': {
    part: { ...plain, Section: 'RB 1' },
    cells: { 'Bar shear': 'no' },
    governs: 'bar shear',
    note: /^Bay A has no bar shear\./,
  },
  // 1 in is thicker than both flat bars on the plate, 12 × 1/2 and 8 × 3/4.
  'Too big': {
    part: { ...plain, Section: 'FB 1x4' },
    governs: /flat shear/,
    note: /^1 in thick is over Bay A's rated size 8 × 3\/4 in\./,
  },
  // A throat of 5 in: the hole is 5-1/4 in from one edge, 5-3/4 from the other and 6 from either end.
  "Can't reach": {
    part: { ...clip, Section: 'FB 3/8x11', Length: 12, Holes: 1, Pitch: null, Edge: '5-1/4', End: 6 },
    cells: { 'Punch throat': 5 },
    governs: 'punch throat',
    note: /^Hole at 5-1\/4 in from the nearer edge is over Bay A's punch throat, 5 in\./,
  },
  // A36: the hole must be at least the thickness, 3/4; it is 9/16.
  'Hole too small': {
    part: { ...clip, Section: 'FB 3/4x4', Hole: '9/16', Bolt: '1/2' },
    governs: /smallest hole/,
    note: /^A Ø9\/16 in hole in metal 3\/4 in thick may burst the punch; the smallest to punch is 3\/4 in\. Drill it\./,
  },
  // AISC 360-22 J3.4: 2⅔ × 3/4 = 2 in between holes.
  'Holes too close': {
    part: { ...clip, Pitch: '1-15/16' },
    governs: 'spacing',
    note: /^Hole: 1-15\/16 in from the center to the next hole is under 2 in \(AISC, bolt 3\/4 in\)\./,
  },
  // AISC 360-05 Table J3.4 at a sheared end: 3/4 in bolts need 1-1/4 in.
  'Edge short': {
    part: { ...clip, End: '1-3/16' },
    governs: 'end distance',
    note: /^Hole: 1-3\/16 in from the center to the left end is under 1-1\/4 in \(AISC, sheared edge, bolt 3\/4 in\)\./,
  },
  // Ø1-1/4 through 5/8 in of A572-50, 0.75 × 85 = 63.75 ksi: π · 1.25 · 0.625 · 31.875 = 78.2 of 58.9 tons, 133%.
  'Over capacity': {
    part: {
      ...clip,
      Section: 'FB 5/8x6',
      Grade: 'A572-50',
      Hole: '1-1/4',
      Bolt: 'none',
      Edge: 2.5,
      End: 2.5,
    },
    governs: /^punch force/,
    note: /^Punch force is 133% of Bay A's rating; 100% is the rated Ø1-1\/2 in hole through 1\/2 in at 50 ksi\./,
  },
  'No tool': {
    part: clip,
    tools: [
      ['Press', 'Kind', 'Size'],
      ['any', 'punch', '11/16'],
    ],
    governs: 'punch',
    note: /^No punch Ø13\/16 for Bay A; nearest on hand: Ø11\/16\./,
  },
  'Not checked': {
    part: clip,
    cells: { 'Punch stroke': null },
    governs: 'punch stroke',
    note: /^Punch stroke of Bay A is blank, so it was not checked\./,
  },
  // Ø1-1/4 through 1/2 in of mild steel is 1.25 / 1.5 of the plate's own hole: 83%, over the 80% the shop uses.
  'Near limit': {
    part: {
      ...clip,
      Section: 'FB 1/2x6',
      Grade: 'Mild',
      Hole: '1-1/4',
      Bolt: 'none',
      Edge: 2.5,
      End: 2.5,
    },
    governs: /^punch force/,
    note: /^Punch force is 83% of Bay A's rating, above the 80% the shop uses; 100% is /,
  },
  // Where the second hole lies is not said, and nothing else is amiss.
  'OK so far': {
    part: { ...clip, Pitch: null },
    governs: 'end distance',
    note: /^Hole: Pitch is blank, so the distances to the edges and between holes are not known\./,
  },
  // Round bars of 2 in are over the shear, and this one is sawn.
  'Off press': {
    part: { ...plain, Section: 'RB 2', 'Cut by': 'saw' },
    governs: '',
    note: /^Understood as: sawn, as the row says; the cut was not checked on a press\./,
  },
  OK: { part: clip, governs: /^punch force/, note: /^Understood as: the shop has no list of tools/ },
};

const toolsFor = (tools?: CellValue[][]) => (tools ? { tools } : {});

describe('ROWCHECK', () => {
  it.each(verdicts.map((verdict) => [verdict, rowOf[verdict]] as const))(
    'says %s, what governs, and why',
    (verdict, { part, cells, tools, governs, note }) => {
      const shop = shopWith(cells, toolsFor(tools));
      expect(verdictOf(part, shop)).toBe(verdict);
      expect(checked(part, shop, 'governs')[0]).toMatch(governs);
      expect(noteOf(part, shop)).toMatch(note);
    },
  );

  it('says the worst word of several, and notes every failure, worst first', () => {
    // Press practice leaves max(t, d / 2) = 5/8 in; 1-13/16 − 1-1/4 and 1-3/16 − 5/8 leave 9/16.
    const part = { ...rowOf['Over capacity'].part, Pitch: '1-13/16', End: '1-3/16' };
    const shop = shopWith({ 'Punch stroke': null });
    expect(verdictOf(part, shop)).toBe('Over capacity');
    const note = noteOf(part, shop);
    const order = [
      'Punch force is 133%',
      '9/16 in from the rim to the next hole is under 5/8 in',
      '9/16 in from the rim to the left end is under 5/8 in',
      'Punch stroke of Bay A is blank',
    ];
    const found = order.map((words) => note.indexOf(words));
    expect(found[0], note).toBe(0);
    expect(found, note).toEqual([...new Set(found)].sort((a, b) => a - b));
  });

  it('gives verdict, share and note side by side when no item is asked for', () => {
    const shop = shopWith();
    const [verdict, share, note] = checked(clip, shop);
    expect(verdict).toBe('OK');
    // π · 13/16 · 3/8 · 30 of π · 1.5 · 0.5 · 25
    expect(share).toBeCloseTo((0.8125 * 0.375 * 30) / (1.5 * 0.5 * 25), 12);
    expect(note).toBe(noteOf(clip, shop));
  });

  it('adds up force, hits and mass of the whole row', () => {
    const shop = shopWith();
    expect(checked(clip, shop, 'force')[0]).toBeCloseTo(Math.PI * 0.8125 * 0.375 * 30, 10);
    expect(checked(clip, shop, 'hits')[0]).toBe(4 * 2);
    // Four pieces of 3/8 × 4 × 12 in: 72 in³ at 7850 kg/m³, 16.387064 cm³ per in³, 0.45359237 kg per lb.
    expect(checked(clip, shop, 'mass')[0]).toBeCloseTo((72 * 16.387064e-6 * 7850) / 0.45359237, 9);
  });

  it('repeats what was understood and assumed', () => {
    const few = { ...clip, Qty: null, Holes: null, Hole: '4 @ 13/16', Bolt: null, 'End kind': null };
    expect(verdictOf(few, shopWith())).toBe('OK');
    expect(noteOf(few, shopWith())).toBe(
      'Understood as: quantity 1 assumed; the shop has no list of tools, so none were checked; ' +
        'bolt 3/4 in taken from the hole; edge rolled, end sheared.',
    );
  });

  it('leaves blank rows and rows of totals blank, in every item', () => {
    const shop = shopWith();
    const blank = Object.fromEntries(Object.keys(clip).map((heading) => [heading, null]));
    for (const item of ['verdict', 'use', 'governs', 'note', 'force', 'hits', 'mass']) {
      expect(checked(blank, shop, item)).toEqual(['']);
      expect(checked({ ...blank, Mark: '  ' }, shop, item)).toEqual(['']);
      expect(checked({ ...blank, Mark: 'Subtotal', Length: 512 }, shop, item)).toEqual(['']);
    }
    expect(verdictOf({ ...blank, Mark: 'C2' }, shop)).toBe('Check input');
  });

  it('reads a heading in any order, by its usual synonyms, with a unit of its own', () => {
    const shop = shopWith();
    const metric: Part = {
      Machine: 'bay a',
      'Length (mm)': 304.8,
      'Piece mark': 'C1',
      Material: 'a 36',
      Profile: '3/8 x 4',
      'Our remark': 'x',
      'Hole size': '13/16',
      'No. of holes': 2,
      Quantity: 4,
      'Bolt size': '3/4',
      'Edge distance (mm)': 38.1,
      'End distance': '1-1/2',
      'End kind': 'sheared',
      'Pitch (mm)': 76.2,
    };
    expect(verdictOf(metric, shop)).toBe('OK');
    expect(checked(metric, shop, 'mass')[0]).toBeCloseTo(Number(checked(clip, shop, 'mass')[0]), 9);
    expect(noteOf(metric, shop)).toBe(noteOf(clip, shop));
  });

  describe('without a press in the row', () => {
    const both = readShop({ presses: pressTable({ 'Bay A': bayA, 'Bay B': bayB }) });
    const free = { ...clip, Press: null };

    it('chooses the press with the better word, then with the smaller share, and says so', () => {
      // Bay B: 28.716 of 30 US tons is 96%; Bay A 49%.
      expect(noteOf(free, both)).toContain('No press given: Bay A chosen of 2.');
      expect(noteOf({ ...clip, Press: 'Bay B' }, both)).toMatch(/^Punch force is 9\d% of Bay B's rating/);
      const equal = readShop({ presses: pressTable({ 'Bay A': { ...bayA, Punch: 'no' }, 'Bay B': bayA }) });
      expect(noteOf(free, equal)).toContain('No press given: Bay B chosen of 2.');
    });

    it('names the one that comes nearest where none runs it', () => {
      const part = { ...plain, Section: 'FB 1x4', Press: null };
      expect(verdictOf(part, both)).toBe('Too big');
      expect(noteOf(part, both)).toMatch(/Bay [AB] comes nearest/);
    });

    it('says that a shop without presses has none', () => {
      const empty = readShop({ presses: [['Item', 'Unit']] });
      expect(verdictOf(free, empty)).toBe('No press');
    });
  });

  describe('a blank limit', () => {
    const angle: Part = { ...clip, Section: 'L3X3X1/4', Edge: null, Gage: '1-3/4' };
    // Far enough from the miter, whichever leg and side it is in.
    const mitered: Part = { ...angle, Grade: 'Mild', 'Miter left': 45, End: 5 };
    const round: Part = { ...plain, Section: 'RB 1' };
    const punch = ['Punch', 'Punch force', 'Punch throat', 'Punch largest hole', 'Punch stroke'];
    const support = ['Longest bar', 'Heaviest bar'];
    const flat = ['Flat shear', 'Flat shear blade length', 'Flat shear rake'];
    const leg = ['Punch clear under die', 'Punch die half width', 'Angle shear'];
    const square = ['Angle shear leg square', 'Angle shear thickness square'];
    const at45 = ['Angle shear leg at 45°', 'Angle shear thickness at 45°'];

    it.each([
      ['a flat bar', clip, [...punch, ...flat, ...support]],
      ['an angle', angle, [...punch, ...leg, ...square, ...support]],
      ['a mitered angle', mitered, [...punch, ...leg, ...at45, ...support]],
      ['a round bar', round, ['Bar shear', 'Bar shear round', ...support]],
    ])('of %s is never OK', (_, part, items) => {
      expect(verdictOf(part, shopWith())).toBe('OK');
      for (const item of items) {
        const shop = shopWith({ [item]: null });
        expect(verdictOf(part, shop), item).toBe('Not checked');
        expect(noteOf(part, shop)).toContain(`${item} of Bay A is blank, so it was not checked.`);
      }
    });

    it('that the part does not need changes nothing', () => {
      for (const item of [...leg, ...square, ...at45])
        expect(verdictOf(clip, shopWith({ [item]: null })), item).toBe('OK');
    });

    it('called none is no limit', () => {
      for (const item of ['Punch stroke', 'Punch throat', 'Longest bar', 'Flat shear blade length'])
        expect(verdictOf(clip, shopWith({ [item]: 'none' })), item).toBe('OK');
    });
  });

  it('lets one bad cell of the shop spoil only the rows that use it', () => {
    const shop = shopWith({ 'Bar shear round': 'big', 'Angle shear leg square': 'long' });
    expect(verdictOf(clip, shop)).toBe('OK');
    const round = { ...plain, Section: 'RB 1' };
    expect(verdictOf(round, shop)).toBe('Check input');
    expect(noteOf(round, shop)).toMatch(/^Presses, Bay A, Bar shear round: 'big' is not a length\./);
  });
});

describe('LISTCHECK', () => {
  it('answers every row of a list in its order, each as ROWCHECK does', () => {
    const headings = [...new Set(verdicts.flatMap((verdict) => Object.keys(rowOf[verdict].part)))];
    const plain = verdicts.filter((verdict) => !rowOf[verdict].cells && !rowOf[verdict].tools);
    const parts = plain.map((verdict) => rowOf[verdict].part);
    const list = [headings, ...parts.map((part) => headings.map((heading) => part[heading] ?? null))];
    const shop = shopWith();
    const shown = new SheetRuntime(shop).call(
      'LISTCHECK',
      list,
      shop.stamp,
      'verdict, governs, note, hits',
    ) as CellValue[][];
    expect(shown[0]).toEqual(['Verdict', 'Governs', 'Note', 'Hits']);
    expect(shown.slice(1).map(([verdict]) => verdict)).toEqual(plain);
    parts.forEach((part, at) => expect(shown[at + 1]?.[2]).toBe(noteOf(part, shop)));
  });

  it('keeps blank rows and rows of totals where they are, blank', () => {
    const headings = Object.keys(clip);
    const row = Object.values(clip);
    const blank = headings.map(() => null);
    const total = headings.map((heading) => (heading === 'Mark' ? 'Total' : null));
    const shop = shopWith();
    const list = [headings, row, blank, total, row];
    const shown = new SheetRuntime(shop).call(
      'LISTCHECK',
      list,
      shop.stamp,
      'verdict, mass',
    ) as CellValue[][];
    expect(shown.map(([verdict]) => verdict)).toEqual(['Verdict', 'OK', '', '', 'OK']);
    expect(shown[2]).toEqual(['', '']);
  });
});
