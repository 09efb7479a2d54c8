import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readShop } from '../../src/core/shop/readShop.js';
import { argumentLabel } from '../../src/functions/argument/argument.js';
import { catalog } from '../../src/functions/catalog.js';
import type { Descriptor } from '../../src/functions/descriptor/descriptor.js';
import type { HostInput, HostValue } from '../../src/functions/descriptor/hostValue.js';
import { pressTable, shopTables } from '../support/sampleShop.js';
import { expectSentence } from '../support/sentence.js';
import { SheetError, SheetRuntime } from '../support/sheetRuntime.js';

const shop = readShop(shopTables());
const sheet = new SheetRuntime(shop);

const tradeTexts = [
  ...['3/8', '1-3/16', '1 3/16"', `2'-6 1/2"`, '1-0 3/8', '12 mm', '1,500', '2-1/4', '4-13/16Ø', '4 @ 13/16'],
  ...['13/16x1-7/8', 'sq 3/4', 'rect 1x2', 'hex 7/8', '4x22', 'A36', 'A572-50', 'shear 310 MPa', '310 MPa'],
  ...['PL1/2X6', 'FB 10x50', 'L3X3X1/4', 'L80x80x8', 'C8X11.5', 'UPN100', 'RB 1', 'SQ 3/4', 'HSS4X4X1/4'],
  ...['M20', '3/4', 'Bay A', 'bay b', 'Bay Z', 'Punch throat', 'in', 'mm', 'IN', shop.stamp, 'sheared', 'EN'],
  ...[
    'verdict',
    'use, note',
    'Section',
    'Hole 2',
    'Total',
    'none',
    'yes',
    'Item',
    'Unit',
    'US ton',
    '0',
    '1/0',
  ],
];
const hostileTexts = [
  ...['=1+1', '<img src=x onerror=alert(1)>', '\u0000', 'a\nb', '\u2028', '\u202E3/8', '💥', 'é', '{{7*7}}'],
  ...['NaN', 'Infinity', '-0', '1e400', '__proto__', 'constructor', 'null', 'undefined', '[object Object]'],
  ...['9'.repeat(400), 'x'.repeat(40_000), '1/'.repeat(2_000), '3/8x'.repeat(500), ' '.repeat(5_000), '-'],
];
const numbers = [0, -0, 1, -1, 0.375, 22, 304, 12_000, 45_000, 1e308, -1e308, 5e-324, 1e21];

const text = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...tradeTexts) },
  { weight: 2, arbitrary: fc.constantFrom(...hostileTexts) },
  fc.string({ unit: 'binary', maxLength: 70 }),
  fc.string({ unit: fc.constantFrom(...`0123456789/.,-x '"@ØmMinLPab`), maxLength: 14 }),
);
const plain: fc.Arbitrary<HostValue> = fc.oneof(
  { weight: 5, arbitrary: text },
  fc.constantFrom(...numbers, Number.NaN, Infinity, -Infinity),
  fc.double(),
  fc.boolean(),
  fc.constantFrom(null, undefined, ''),
);
const errorCell: fc.Arbitrary<HostValue> = fc.constantFrom(
  { type: 'Error', basicType: 'Error', basicValue: '#N/A', code: '#N/A' },
  { type: 'Error', basicType: 'Error', basicValue: '#DIV/0!', errorType: 'Div0' },
  { type: 'Error' },
);
const dataType: fc.Arbitrary<HostValue> = fc
  .oneof(text, fc.double(), fc.boolean(), fc.constant(null))
  .chain((basicValue) =>
    fc.constantFrom(
      { type: 'FormattedNumber', basicType: 'Double', basicValue, numberFormat: '0.0' },
      { type: 'Entity', text: 'part', basicType: 'Error', basicValue: '#VALUE!', properties: {} },
      {},
    ),
  );
const cell = fc.oneof({ weight: 8, arbitrary: plain }, errorCell, dataType);
const matrix: fc.Arbitrary<HostInput> = fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 4 });
const anything: fc.Arbitrary<HostInput> = fc.oneof({ weight: 6, arbitrary: cell }, matrix);

/** Readable input of an argument, so that a bad one elsewhere is reached. */
function readable(kind: string, choices: readonly string[]): fc.Arbitrary<HostInput> {
  const kinds: Record<string, HostInput[]> = {
    hole: ['13/16', '4 @ 22 mm', 'sq 3/4', 'rect 1x2', 0.8125, 'hex 7/8', '13/16x1-7/8'],
    length: ['3/8', '10 mm', 0.5, 1, `1'-0`],
    grade: ['A36', 'Mild', 'S355', '6061-T6', 'shear 310 MPa', 304],
    'any section': ['PL1/2X6', 'UPN100', 'HSS4X4X1/4', 'CHS60.3x3.2 mm', 'T3X3X3/8'],
    'mitered section': ['FB 3/8x4', 'L3X3X1/4', 'L2X3X1/4', 'HSS4X4X1/4', 'RD 25 mm'],
    section: ['PL1/2X6', 'FB 10x50 mm', 'L3X3X1/4', 'C8X11.5', 'UPN100', 'RB 1', 'SQ 3/4'],
    bolt: ['3/4', 'M20', 0.75],
    'shop or unit': [null, 'in', 'mm', shop.stamp],
    shop: [shop.stamp],
    count: [null, 1, 4],
    angle: [null, 0, 4, 45],
    'angle to either side': [null, 45, -45, '-22-1/2'],
    'full angle': [null, 0, 22.5, 270],
    'hole count': [1, 2, '3', 12],
    holes: [
      [
        [0.5, 0.5],
        ['3/8', '5/8'],
      ],
      [
        [null, ''],
        ['10 mm', '1/2'],
      ],
    ],
    parts: [
      [
        ['4\'-2"', 6],
        ['800 mm', null],
      ],
      [
        ['Length', 'Qty', 'Section', 'Miter left', 'Miter right'],
        [36, 4, 'FB 1/4x2', 45, -45],
      ],
    ],
    bars: [
      [['20 ft', 84, 3]],
      [
        ['Length', 'Available'],
        ['6 m', 'none'],
        ['40 ft', null],
      ],
    ],
    choice: [null, ...choices],
    items: [null, 'verdict', 'use, note, mass'],
    any: [null, 'A36', '3/8', 'in', shop.stamp, 'Bay A'],
    text: ['Bay A', 'Bay B', 'Punch force', 'Punch throat'],
    range: [
      pressTable({ 'Bay A': { Punch: 'yes', 'Punch force': 60 } }),
      [['Mark', 'Section', 'Grade', 'Length', 'Hole']],
      [['C1', 'FB 3/8x4', 'A36', 6, '13/16']],
    ],
  };
  const values = kinds[kind];
  if (!values) throw new Error(`no readable input is known for an argument of kind ${kind}`);
  return fc.constantFrom(...values);
}

function callsOf(descriptor: Descriptor): fc.Arbitrary<HostInput[]> {
  const inputs = Object.values(descriptor.arguments).map(({ kind, choices }) =>
    fc.oneof(
      { weight: 3, arbitrary: readable(kind, choices?.map(({ value }) => value) ?? []) },
      { weight: 2, arbitrary: anything },
    ),
  );
  return fc.tuple(...inputs);
}

function replaced<Value>(list: readonly Value[], at: number, value: Value): Value[] {
  return list.map((each, index) => (index === at ? value : each));
}

const isShown = (value: unknown) =>
  typeof value === 'string' || typeof value === 'boolean' || Number.isFinite(value);

/** Every ending a call may have: a value the sheet can show, or one of its two errors with a sentence. */
async function expectSound(descriptor: Descriptor, inputs: HostInput[]): Promise<void> {
  let result: unknown;
  try {
    const answer = sheet.call(descriptor.name, ...inputs);
    // A stamp that no shop has is the one other call that may wait; it must not be reached by chance.
    if (!descriptor.isCancelable) expect(answer).not.toBeInstanceOf(Promise);
    result = await answer;
  } catch (error) {
    if (!(error instanceof SheetError)) throw error;
    expectSentence(error.message);
    expect(['#VALUE!', '#N/A']).toContain(error.code);
    return;
  }
  const rows = Array.isArray(result) ? (result as unknown[][]) : [[result]];
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) {
    expect(row.length).toBe(rows[0]?.length);
    for (const value of row) expect(isShown(value), `${String(value)} in the result`).toBe(true);
  }
}

describe('any input at all', () => {
  it.each(catalog.map((descriptor) => [descriptor.name, descriptor] as const))(
    '%s gives a value, or an error with one sentence',
    (_, descriptor) =>
      fc.assert(
        fc.asyncProperty(callsOf(descriptor), (inputs) => expectSound(descriptor, inputs)),
        { numRuns: 2_000 },
      ),
  );

  it.each(catalog.map((descriptor) => [descriptor.name, descriptor] as const))(
    '%s names the argument that is bad',
    (_, descriptor) => {
      const names = Object.keys(descriptor.arguments);
      const bad = { type: 'Error', basicType: 'Error', basicValue: '#REF!', code: '#REF!' };
      names.forEach((name, position) => {
        const { dimensionality } = descriptor.arguments[name] ?? {};
        if (dimensionality === 'matrix') return;
        const inputs = Object.values(descriptor.arguments).map(
          ({ kind, choices }) =>
            fc.sample(readable(kind, choices?.map(({ value }) => value) ?? []), { numRuns: 1, seed: 7 })[0],
        );
        const error = sheet.error(descriptor.name, ...replaced(inputs, position, bad));
        expectSentence(error.message, argumentLabel(name), '#REF!');
      });
    },
  );
});

const partsHeadings = [
  'Mark',
  'Qty',
  'Section',
  'Grade',
  'Length (mm)',
  'Hole',
  'Holes',
  'Bolt',
  'Edge',
  'Press',
];
const validRow = fc.tuple(
  fc.constantFrom('C1', 'B2'),
  fc.constantFrom(1, 12, '3'),
  fc.constantFrom('FB 3/8x4', 'L3X3X1/4', 'PL1/2X6', 'C8X11.5', 'RB 1'),
  fc.constantFrom('A36', 'A572-50', 'S355'),
  fc.constantFrom(150, 1200, '12 in'),
  fc.constantFrom('13/16', '', '2 @ 9/16'),
  fc.constantFrom(null, 2),
  fc.constantFrom(null, '3/4'),
  fc.constantFrom('1-1/2', null),
  fc.constantFrom('Bay A', '', 'bay b'),
);
const spoiledRow = fc
  .tuple(validRow, fc.nat({ max: partsHeadings.length - 1 }), cell)
  .map(([row, at, bad]) => replaced<HostValue>(row, at, bad));

describe('rows of a list, some of them spoiled', () => {
  const rows = fc.array(fc.oneof(validRow, spoiledRow, fc.constant([null, '', ' '])), { maxLength: 8 });

  it('LISTCHECK answers every row, each as ROWCHECK answers it alone', () => {
    fc.assert(
      fc.property(rows, (cells) => {
        const full = cells.map((row) => partsHeadings.map((__, at) => (row as HostValue[])[at] ?? null));
        const items = 'verdict, use, governs, note, force, hits, mass';
        const list = sheet.call('LISTCHECK', [partsHeadings, ...full], shop.stamp, items) as unknown[][];
        expect(list).toHaveLength(full.length + 1);
        full.forEach((row, at) => {
          const alone = items
            .split(', ')
            .map((item) => sheet.call('ROWCHECK', [partsHeadings], [row], shop.stamp, item) as unknown[][]);
          expect(list[at + 1]).toEqual(alone.map((shown) => shown[0]?.[0]));
        });
      }),
      { numRuns: 300 },
    );
  });

  it('a spoiled row leaves the rows beside it as they were', () => {
    fc.assert(
      fc.property(validRow, spoiledRow, (good, bad) => {
        const alone = sheet.call('LISTCHECK', [partsHeadings, good], shop.stamp) as unknown[][];
        const beside = sheet.call('LISTCHECK', [partsHeadings, bad, good], shop.stamp) as unknown[][];
        expect(beside[2]).toEqual(alone[1]);
      }),
      { numRuns: 300 },
    );
  });
});
