// Tools for a hole and the order of marks. Sizes of tools, clearances and how changes are counted: common practice, no
// source. The fewest changes are counted by hand; every order of up to eight marks is tried in tests/core/setup.
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { type PressCells, settingTable, shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const headings = ['Press', 'Kind', 'Shape', 'Size', 'Length', 'Body', 'Holder', 'Count'];
/** An invented crib: two sleeves, and two dies for the 13/16 punch. */
const tools: CellValue[][] = [
  headings,
  ['Bay A', 'punch', 'round', '9/16', null, null, 'Sleeve 1', 1],
  ['Bay A', 'punch', 'round', '11/16', null, null, 'Sleeve 1', 1],
  ['Bay A', 'punch', 'round', '13/16', null, null, 'Sleeve 2', 2],
  ['Bay A', 'punch', 'slot', '13/16', '1-7/8', null, 'Sleeve 2', 1],
  ['Bay A', 'die', 'round', '19/32', null, null, null, 1],
  ['Bay A', 'die', 'round', '23/32', null, null, null, 1],
  ['Bay A', 'die', 'round', '27/32', null, null, null, 1],
  ['Bay A', 'die', 'round', '7/8', null, null, null, 1],
  ['Bay A', 'die', 'slot', '27/32', '1-29/32', null, null, 1],
];

function sheetWith(cells: PressCells = {}, crib: CellValue[][] | undefined = tools) {
  const shop = shopWith(cells, { tools: crib, settings: settingTable({ Units: 'in' }) });
  const sheet = new SheetRuntime(shop);
  return (name: string, ...inputs: (string | number | CellValue[][])[]) =>
    sheet.call(name, ...inputs, shop.stamp) as CellValue[][];
}

describe('TOOLPICK', () => {
  const pick = (hole: string, thickness: string, cells?: PressCells, crib?: CellValue[][]) =>
    sheetWith(cells, crib)('TOOLPICK', 'Bay A', hole, thickness, 'A36')[0];

  it.each([
    // Total clearance 1/32 in to 1/2 in of thickness and 1/16 in above (common practice, no source).
    ['13/16', '3/8', ['Ø13/16', 'Ø27/32', 1 / 32, 'Sleeve 2']],
    ['13/16', '5/8', ['Ø13/16', 'Ø7/8', 1 / 16, 'Sleeve 2']],
    ['9/16', '1/2', ['Ø9/16', 'Ø19/32', 1 / 32, 'Sleeve 1']],
    ['13/16x1-7/8', '1/4', ['slot 13/16 × 1-7/8', 'slot 27/32 × 1-29/32', 1 / 32, 'Sleeve 2']],
  ])(
    'for %s through %s takes the punch of the size and the die of the clearance',
    (hole, thickness, cells) => {
      expect(pick(hole, thickness)).toEqual(cells);
    },
  );

  it('says what is lacking, and what comes nearest', () => {
    expect(pick('15/16', '3/8')).toEqual([
      'No tool',
      'No punch Ø15/16 for Bay A; nearest on hand: Ø13/16, Ø11/16.',
      '',
      '',
    ]);
    expect(pick('13/16', '3/8', {}, tools.slice(0, 4))?.slice(0, 2)).toEqual([
      'No tool',
      'No die for punch Ø13/16 on Bay A: opening 27/32 in is needed; none of that shape is on hand.',
    ]);
  });

  it('is not known without a punch station, a list of tools, or a body that the press says', () => {
    expect(pick('13/16', '3/8', { Punch: 'no' })?.[0]).toBe('No station');
    expect(pick('13/16', '3/8', { Punch: null })?.slice(0, 2)).toEqual([
      'Not checked',
      'Punch of Bay A is blank, so it was not checked.',
    ]);
    const bodied = tools.map((row) => row.map((cell, at) => (at === 5 && row[1] === 'punch' ? 2 : cell)));
    expect(pick('13/16', '3/8', {}, bodied)?.slice(0, 2)).toEqual([
      'Not checked',
      'Punch body of Bay A is blank, so the body of punch Ø13/16 was not checked.',
    ]);
    expect(pick('13/16', '3/8', { 'Punch body': 2 }, bodied)?.[0]).toBe('Ø13/16');
    const shop = shopWith();
    expect(new SheetRuntime(shop).call('TOOLPICK', 'Bay A', '13/16', '3/8', 'A36', shop.stamp)).toEqual([
      ['Not checked', 'The shop has no Tools table, so its tools are not known.', '', ''],
    ]);
  });
});

describe('TOOLORDER', () => {
  const titles = [
    'Mark',
    'Section',
    'Grade',
    'Length',
    'Hole',
    'Holes',
    'Edge',
    'End',
    'Pitch',
    'Hole 2',
    'Holes 2',
    'Edge 2',
    'End 2',
    'Press',
  ];
  const mark = (
    name: string,
    hole: string | null,
    more: Partial<Record<string, CellValue>> = {},
  ): CellValue[] => {
    const row: Partial<Record<string, CellValue>> = {
      ...{ Mark: name, Section: 'FB 3/8x6', Grade: 'A36', Length: 24, Hole: hole, Holes: 1, Edge: 3, End: 4 },
      ...(hole === null ? { Holes: null, Edge: null, End: null } : {}),
      ...more,
    };
    return titles.map((title) => row[title] ?? null);
  };
  const order = (marks: CellValue[][], cells?: PressCells, crib?: CellValue[][]) =>
    sheetWith(cells, crib)('TOOLORDER', [titles, ...marks], 'Bay A');

  it('brings marks of one tool together, and tools of one holder', () => {
    // By hand: 9/16 and 11/16 in one sleeve, 13/16 in the other: one change of sleeve, two of tools.
    const list = [
      mark('A', '9/16'),
      mark('B', '13/16'),
      mark('C', '11/16'),
      mark('D', '13/16'),
      mark('E', '9/16'),
    ];
    expect(order(list)).toEqual([
      ['Mark', 'Holder', 'Punch', 'Die', 'Changes so far'],
      ['A', 'Sleeve 1', 'Ø9/16', 'Ø19/32', 0],
      ['E', 'Sleeve 1', 'Ø9/16', 'Ø19/32', 0],
      ['C', 'Sleeve 1', 'Ø11/16', 'Ø23/32', 1],
      ['B', 'Sleeve 2', 'Ø13/16', 'Ø27/32', 2],
      ['D', 'Sleeve 2', 'Ø13/16', 'Ø27/32', 2],
      ['1 change of holder and 2 changes of tools: no order has fewer.', '', '', '', ''],
      // 3 sets at 5 min and 2 sleeves at 8 min
      [
        expect.stringMatching(/^Setting up 3 sets of tools and 2 holders takes 31 min in all\. /),
        '',
        '',
        '',
        '',
      ],
    ]);
  });

  it('counts a change of the die alone, and keeps the punch in for it', () => {
    const thick = mark('T', '13/16', { Section: 'FB 5/8x6' });
    const shown = order([mark('A', '13/16'), mark('B', '13/16x1-7/8'), thick], { 'Punch largest hole': 2 });
    expect(shown.slice(1, 4).map((row) => [row[0], row[3], row[4]])).toEqual([
      ['A', 'Ø27/32', 0],
      ['T', 'Ø7/8', 1],
      ['B', 'slot 27/32 × 1-29/32', 2],
    ]);
  });

  it('counts both ways where marks need several tools, and shows the better', () => {
    const two = (name: string) =>
      mark(name, '9/16', { 'Hole 2': '13/16', 'Holes 2': 1, 'Edge 2': 3, 'End 2': 12 });
    // By hand, finishing each: 9/16, 13/16 | 13/16, 9/16 | 9/16, 13/16: three changes of tools, each of the sleeve.
    const shown = order([two('A'), two('B'), two('C')]);
    expect(shown.at(-2)?.[0]).toBe(
      'All marks of a tool before the next tool, with 1 change of holder and 1 change of tools: no order has fewer. ' +
        'Finishing each mark before the next takes 3 changes of holder and 3 changes of tools.',
    );
    expect(shown.slice(1, -2).map(([name, , tool]) => `${name} ${tool}`)).toEqual([
      ...['A Ø9/16', 'B Ø9/16', 'C Ø9/16'],
      ...['A Ø13/16', 'B Ø13/16', 'C Ø13/16'],
    ]);
    expect(order([two('A')]).at(-2)?.[0]).toBe(
      'Each mark is finished before the next, with 1 change of holder and 1 change of tools: no order has fewer.',
    );
  });

  it('names the marks that are not in it, and counts those of other presses and without holes', () => {
    const list = [
      mark('A', '9/16'),
      mark('B', '15/16'),
      mark('C', '4-13/16Ø'),
      mark('D', null),
      mark('E', '9/16', { Press: 'Bay B' }),
      mark('', '11/16'),
      titles.map(() => null),
    ];
    const shown = order(list);
    expect(shown.map((row) => row.slice(0, 3))).toEqual([
      ['Mark', 'Holder', 'Punch'],
      ['A', 'Sleeve 1', 'Ø9/16'],
      ['row 6', 'Sleeve 1', 'Ø11/16'],
      ['B', '', 'No tool'],
      ['C', '', 'Check input'],
      [expect.stringMatching(/^0 changes of holder and 1 change of tools/), '', ''],
      [expect.stringMatching(/^Setting up 2 sets of tools and 1 holder takes 18 min/), '', ''],
    ]);
    expect(shown[3]?.[3]).toBe('No punch Ø15/16 for Bay A; nearest on hand: Ø13/16, Ø11/16.');
    expect(shown.at(-2)?.[0]).toMatch(
      /2 marks are left out; why stands beside the mark\. 1 mark is on another press\. 1 mark has nothing to punch\.$/,
    );
  });

  it('says where holders are not named', () => {
    const none = tools.map((row) => row.map((cell, at) => (at === 6 && cell !== 'Holder' ? null : cell)));
    expect(order([mark('A', '9/16'), mark('B', '13/16')], {}, none).at(-2)?.[0]).toBe(
      '1 change of tools: no order has fewer. The Tools table names no holder for these punches, so changes of holder are not counted.',
    );
    const some = tools.map((row) => row.map((cell) => (cell === 'Sleeve 2' ? null : cell)));
    expect(order([mark('A', '9/16'), mark('B', '13/16')], {}, some).at(-2)?.[0]).toContain(
      'Holder is blank for punch Ø13/16: counted as a holder of its own.',
    );
  });

  it.each([
    [
      'no mark to punch',
      [mark('D', null)],
      {},
      'No mark of the list is punched on Bay A. 1 mark has nothing to punch.',
    ],
    ['no marks', [], {}, 'No mark of the list is punched on Bay A.'],
    ['no punch station', [mark('A', '9/16')], { Punch: 'no' }, 'Bay A has no punch.'],
    [
      'a blank Punch',
      [mark('A', '9/16')],
      { Punch: null },
      'Punch of Bay A is blank, so it was not checked.',
    ],
  ])('of %s is one sentence', (_, marks, cells, words) => {
    expect(order(marks, cells)).toEqual([
      ['Mark', 'Holder', 'Punch', 'Die', 'Changes so far'],
      [words, '', '', '', ''],
    ]);
  });
});
