// Stock plans. The paper rolls: the published example of the cutting stock problem with a parent roll of 5600 mm, 73
// rolls at least (from memory). The steel lists are counted by hand, each beside its call.
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();
type Input = string | number | null | CellValue[][];

async function plan(...inputs: Input[]): Promise<CellValue[][]> {
  return (await sheet.answer('STOCKPLAN', ...inputs)) as CellValue[][];
}
const bars = (...inputs: Input[]) => sheet.answer('STOCKBARS', ...inputs);
async function refusal(...inputs: Input[]): Promise<string> {
  return bars(...inputs).then(
    (result) => `not refused: ${JSON.stringify(result)}`,
    (error: Error) => error.message,
  );
}

const rolls = [
  ...[
    [1380, 22],
    [1520, 25],
    [1560, 12],
    [1710, 14],
    [1820, 18],
    [1880, 18],
    [1930, 20],
  ],
  ...[
    [2000, 10],
    [2050, 12],
    [2100, 14],
    [2140, 16],
    [2150, 18],
    [2200, 20],
  ],
];
const eightOfFiveFeet = [[`5'-0`, 8]];
const twentyFeet = [['20 ft']];

describe('STOCKPLAN', () => {
  it('cuts the paper rolls from 73, and every roll holds what it may', async () => {
    const [, ...lines] = await plan(rolls, [[5600]], 'mm', 'none', 'none', 'none');
    const total = lines.pop() ?? [];
    expect(total.slice(0, 3)).toEqual([73, 73 * 5600, 'Total, proven: no plan buys less.']);
    const cut = new Map<number, number>();
    for (const [alike, , pieces, rest] of lines) {
      let used = 0;
      for (const run of String(pieces).split(' + ')) {
        const [count = 0, width = 0] = run.replace(' mm', '').split(' × ').map(Number);
        used += count * width;
        cut.set(width, (cut.get(width) ?? 0) + count * Number(alike));
      }
      expect(used + Number(rest)).toBeCloseTo(5600, 6);
      expect(rest).toBeGreaterThanOrEqual(0);
    }
    expect([...cut].sort(([a], [b]) => a - b)).toEqual(rolls);
  });

  it('three pieces of 5 ft and their cuts in a bar of 20 ft: 3 + 3 + 2', async () => {
    // A fourth piece would need 4 × 60 in and three cuts of 1/8 in: 240-3/8 in.
    const [headings, ...lines] = await plan(eightOfFiveFeet, [['20 ft', 84]], 'in', '1/8', 'none', 'none');
    expect(headings).toEqual(['Bars', 'Length', 'Pieces', 'Rest', 'Price']);
    expect(lines).toEqual(
      expect.arrayContaining([
        [2, 240, `3 × 5'-0"`, 59.625, 168],
        [1, 240, `2 × 5'-0"`, 119.75, 84],
        [3, 720, 'Total, proven: no plan buys less.', 239, 252],
      ]),
    );
    expect(lines).toHaveLength(3);
  });

  it('tells what cannot be cut in a line of its own, and what nobody gave', async () => {
    const lines = await plan(
      [
        [`25'`, 2],
        ['31-1/2', 1],
      ],
      twentyFeet,
    );
    expect(lines.slice(1).map(([, , words]) => words)).toEqual([
      `1 × 31-1/2"`,
      `2 × 25'-0" not cut: no bar that can be had is long enough`,
      expect.stringMatching(
        /^Total, .*\. Some parts are not cut\. .*No kerf, trim and grip given: 0 taken\.$/,
      ),
    ]);
  });
});

describe('STOCKBARS', () => {
  it.each<[string, number, Input[]]>([
    ['without a kerf four of 5 ft are a bar of 20 ft', 2, [eightOfFiveFeet, twentyFeet, 'in', 'none']],
    ['with a kerf three are', 3, [eightOfFiveFeet, twentyFeet, 'in', '1/8']],
    ['a trim costs the fourth, too', 3, [eightOfFiveFeet, twentyFeet, 'in', 'none', '1/2']],
    ['and so does a grip', 3, [eightOfFiveFeet, twentyFeet, 'in', 'none', 'none', '6']],
    // Two of 20 ft are 80, one of 40 ft would be 90, and at 75 is less.
    [
      'buys the cheaper of two lengths',
      2,
      [
        eightOfFiveFeet,
        [
          ['20 ft', 40],
          ['40 ft', 90],
        ],
        'in',
        'none',
      ],
    ],
    [
      'and that may be the longer',
      1,
      [
        eightOfFiveFeet,
        [
          ['20 ft', 40],
          ['40 ft', 75],
        ],
        'in',
        'none',
      ],
    ],
    // Twelve pieces are three bars of 20 ft; with one of these left, the other eight pieces take a bar of 40 ft.
    [
      'as far as there are bars of it',
      2,
      [
        [[60, 12]],
        [
          ['20 ft', 40, 1],
          ['40 ft', 90],
        ],
        'in',
        'none',
      ],
    ],
    // By headings, the mass of steel aside.
    [
      'reads columns by their headings',
      2,
      [
        [
          ['Mark', 'Qty', 'Section', 'Length'],
          ['A', 8, 'FB 1/4x2', 60],
        ],
        [
          ['Section', 'Length', 'Available'],
          ['FB1/4X2', '20 ft', 9],
        ],
        'in',
      ],
    ],
    // Long 40 in, 4 in wide, 45° at both ends: turned in turn they take 36 in each and 4 in once: 148 in for four.
    [
      'mitered pieces share their cuts when turned',
      1,
      [
        [
          ['Length', 'Qty', 'Miter left', 'Miter right', 'Section'],
          [40, 4, 45, 45, 'FB 1/4x4'],
        ],
        [[148]],
      ],
    ],
    [
      'and do not where the bar is a hair shorter',
      2,
      [
        [
          ['Length', 'Qty', 'Miter left', 'Miter right', 'Section'],
          [40, 4, 45, 45, 'FB 1/4x4'],
        ],
        [[147.99]],
      ],
    ],
    // An angle cannot be turned over: 40 in each, three in 148 in.
    [
      'those of an angle do not',
      2,
      [
        [
          ['Length', 'Qty', 'Miter left', 'Miter right', 'Section'],
          [40, 4, 45, 45, 'L4X4X1/4'],
        ],
        [[148]],
      ],
    ],
  ])('%s: %i', async (_, expected, inputs) => {
    expect(await bars(...inputs)).toBe(expected);
  });

  it('is refused where parts cannot be cut, and for what cannot be read', async () => {
    expect(await refusal([[`25'`, 2]], twentyFeet)).toBe(
      `Stock: 2 × 25'-0" not cut: no bar that can be had is long enough. Give longer bars, or more of them.`,
    );
    expect(await refusal(eightOfFiveFeet, [['20 ft', null, 'none']], 'in', 'none')).toMatch(
      /^Stock: 8 × 5'-0" not cut: /,
    );
    expect(await refusal([['abc', 2]], twentyFeet)).toMatch(
      /^Parts, row 1, length: 'abc' is not a length\. /,
    );
    expect(
      await refusal(
        [
          [60, 2],
          [null, 4],
        ],
        twentyFeet,
      ),
    ).toBe('Parts, row 2, Length: the cell is blank. Write the length of the part, or clear the row.');
    expect(await refusal([[40, 2, 45]], twentyFeet)).toBe(
      'Parts, row 1: a mitered part needs its section, which says how wide it is. Add a column Section, such as FB 1/4x2.',
    );
    expect(await refusal(eightOfFiveFeet, [['20 ft', 40], ['40 ft']])).toBe(
      'Stock, row 2: this length has no price and others have one. Give each a price, or none.',
    );
    const sections = [
      ['Length', 'Section'],
      [60, 'FB 1/4x2'],
      [60, 'L3X3X1/4'],
    ];
    expect(await refusal(sections, twentyFeet)).toBe(
      'Parts: FB 1/4x2 and L3X3X1/4 stand in one range. Give the rows of one section: each is planned by itself.',
    );
  });
});
