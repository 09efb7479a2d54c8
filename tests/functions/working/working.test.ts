import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readShop } from '../../../src/core/shop/readShop.js';
import type { Argument } from '../../../src/functions/argument/argument.js';
import { catalog } from '../../../src/functions/catalog.js';
import type { HostInput } from '../../../src/functions/descriptor/hostValue.js';
import type { SheetResult } from '../../../src/functions/wrapper.js';
import { bayA, pressTable, shopTables } from '../../support/sampleShop.js';
import { inchText } from '../../support/inches.js';
import { SheetError, SheetRuntime } from '../../support/sheetRuntime.js';

const inches = readShop(shopTables());
const millimeters = readShop(
  shopTables({
    settings: [
      ['Setting', 'Value'],
      ['Units', 'mm'],
    ],
  }),
);
const sheet = new SheetRuntime(inches, millimeters);
const calculations = catalog.filter(({ name }) => name !== 'WORKING');
const [stepAt, resultAt, sourceAt] = [0, 3, 5];

const headings = [
  ['Mark', 'Qty', 'Section', 'Grade', 'Length', 'Hole', 'Bolt', 'Edge', 'End', 'Pitch', 'Gage', 'Press'],
];
const rows = [
  ['C1', 4, 'FB 3/8x4', 'A36', 6, '2 @ 13/16', '3/4', 2, 1.5, 3, null, 'Bay A'],
  ['L1', 2, 'L3X3X1/4', 'A572-50', 8, '13/16', null, null, 1.25, null, 1.75, null],
  ['R1', 9, 'RB 3/4', 'A36', 20, null, null, null, null, null, null, 'Bay B'],
  ['S1', 1, 'C8X11.5', 'A36', 120, null, null, null, null, null, null, null],
];

/** Holes that lie on the plate in whichever unit they are read. */
const plate = ['2', '10'].flatMap((x) => ['2', '8'].map((y) => [`${x}"`, `${y}"`]));

const inchLengths = fc.integer({ min: 1, max: 96 }).map((parts) => `${inchText(parts, 64)}"`);
const mmLengths = fc.integer({ min: 1, max: 40 }).map((mm) => `${mm} mm`);

/** Readable input of an argument, by its kind, or by its name where the kind does not say enough. */
function readable(name: string, argument: Argument<unknown>, of: string): fc.Arbitrary<HostInput> {
  const { choices } = argument;
  if (choices) return fc.constantFrom(...choices.map(({ value }) => value));
  const named: Record<string, HostInput[]> = {
    press: ['Bay A', 'Bay B'],
    presses: [pressTable({ 'Bay A': bayA })],
    tools: [null],
    grades: [null],
    settings: [
      null,
      [
        ['Setting', 'Value'],
        ['Units', 'mm'],
      ],
    ],
    item: ['Punch throat', 'Punch force', 'Flat shear', 'Heaviest bar', 'Flat shear rake', 'Shear force'],
    row: rows.map((row) => [row]),
    list: [[...headings, ...rows]],
    items: [null, 'verdict', 'use, note', 'force', 'mass, hits'],
    leg: ['3', '80 mm', '2-1/2"', '65 mm'],
    long: [`1'-0`, `2'-6 1/2"`, '750 mm'],
    'FRAMECUTS width': [`2'-0`, '900 mm'],
    'HOLESCORNER length': ['12"', '300 mm'],
    'HOLESCORNER width': ['10"', '250 mm'],
    'HOLESCORNER fromEnd': ['2"', '40 mm'],
    'HOLESCORNER fromSide': [null, '1-1/2"'],
    'HOLESROW length': ['24"', '600 mm'],
    'HOLESROW count': [2, 5],
    'HOLESROW end': ['2"', '40 mm'],
    'HOLESROW greatestPitch': [null, '6"'],
    'HOLESGRID length': ['24"', '600 mm'],
    'HOLESGRID width': ['12"', '300 mm'],
    'HOLESGRID columns': [2, 3],
    'HOLESGRID rows': [2, 4],
    'HOLESGRID fromEnd': ['2"', '40 mm'],
    'HOLESGRID fromSide': ['1-1/2"', '40 mm'],
    'HOLESCIRCLE diameter': ['8"', '200 mm'],
    'HOLESCIRCLE count': [3, 8],
    'HOLESCIRCLE centerX': [null],
    'HOLESCIRCLE centerY': [null],
    holes: [plate],
    parts: [
      [
        [`4'-2"`, 6],
        ['800 mm', 3],
      ],
      [
        ['Length', 'Qty', 'Section', 'Miter left', 'Miter right'],
        ['36"', 4, 'FB 1/4"x2"', 45, -45],
      ],
    ],
    stock: [[["20'", 84, 3]], [["20'"], ["40'"]]],
    kerf: [null, '1/8"', 'none'],
    trim: [null, '1/2"', '20 mm'],
    grip: [null, '6"'],
    'GAUGESETTINGS length': ['12"', '310 mm'],
    'GAUGESETTINGS width': ['10"', '260 mm'],
    'GAUGECOUNT length': ['12"', '310 mm'],
    'GAUGECOUNT width': ['10"', '260 mm'],
    'FRAMECUTS height': [`1'-6 1/2"`, `2'-0`, '1200 mm'],
  };
  if (name === 'headings') return fc.constant(headings);
  const own = named[`${of} ${name}`] ?? named[name];
  if (own) return fc.constantFrom(...own);
  const kinds: Record<string, HostInput[]> = {
    hole: ['13/16"', '4 @ 22 mm', 'sq 3/4"', 'rect 1"x2"', 'hex 7/8"', '13/16"x1-7/8"'],
    grade: ['A36', 'Mild', 'S355', '6061-T6', 'shear 310 MPa', 'A572-50'],
    section: ['PL1/2"X6"', 'FB 10x50 mm', 'L3X3X1/4"', 'C8X11.5', 'UPN100', 'RB 25 mm', 'SQ 3/4"'],
    'any section': [
      ...['PL1/2"X6"', 'FB 10x50 mm', 'L3X3X1/4"', 'C8X11.5', 'UPN100', 'RB 25 mm', 'SQ 3/4"'],
      ...['L80x80x8 mm', 'HSS4X4X1/4"', 'RHS100x50x5 mm', 'CHS60.3x3.2 mm', 'T3X3X3/8"'],
    ],
    'mitered section': ['FB 3/8"x4"', 'L3X3X1/4"', 'L2"X3"X1/4"', 'HSS4X4X1/4"', 'RD 25 mm'],
    bolt: ['3/4', 'M20', '7/8', 'M24'],
    shop: [inches.stamp, millimeters.stamp],
    'shop or unit': [null, 'in', 'mm', inches.stamp, millimeters.stamp],
    count: [null, 1, 3, 12],
    angle: [null, 1, 15, 45],
    'angle to either side': [null, 15, -15, 45],
  };
  return argument.kind === 'length'
    ? fc.oneof(inchLengths, mmLengths)
    : fc.constantFrom(...(kinds[argument.kind] ?? [null]));
}

function optional(argument: Argument<unknown>, input: fc.Arbitrary<HostInput>): fc.Arbitrary<HostInput> {
  return argument.optional ? fc.option(input, { nil: null }) : input;
}

type Cells = Exclude<SheetResult, number | string>;

/** Of a function that spills a table, the number that matters, from its rows below the headings. */
const withHeadings = (rows: Cells) => rows.length + 1;
const mattering: Record<string, (rows: Cells) => number | string> = {
  STOCKPLAN: (rows) => rows.at(-1)?.[0] as number,
  // Layouts have no headings: every row is a hole.
  HOLESCORNER: withHeadings,
  HOLESROW: withHeadings,
  HOLESGRID: withHeadings,
  HOLESCIRCLE: withHeadings,
  ROWHOLES: (rows) => rows.length,
  FRAMECUTS: (rows) => {
    const push = rows[0]?.at(-2);
    if (typeof push === 'string') return push;
    return rows.reduce((sum, row) => sum + Number(row[1]) * Number(row.at(-2)), 0);
  },
};

/** The value the last step must carry: the number or word itself, the first cell of the last row, or what matters. */
function shownLast(name: string, result: SheetResult): unknown {
  if (!Array.isArray(result)) return result;
  if (name === 'GAUGESETTINGS') {
    const marked = result.at(-1)?.[0] === 'mark out';
    const count = result.length - (marked ? 2 : 1);
    return marked ? expect.stringMatching(`^${count} settings? and \\d+ holes? to mark out`) : count;
  }
  const sum = mattering[name]?.(result.slice(1));
  // Each cell is rounded to the digits of a sheet, so their sum is as near as these.
  if (typeof sum === 'number') return expect.closeTo(sum, 9);
  return sum ?? result.at(-1)?.[0];
}

/** The result of a call, or the message it is refused with. */
async function outcome(name: string, inputs: HostInput[]) {
  try {
    return { result: await sheet.call(name, ...inputs) };
  } catch (error) {
    if (error instanceof SheetError) return { refused: error.message };
    throw error;
  }
}

describe('the working of a function', () => {
  it.each(calculations.map((descriptor) => [descriptor.name, descriptor] as const))(
    '%s ends in the value of the function to the last bit, and every step has a source',
    async (name, descriptor) => {
      const entries = Object.entries(descriptor.arguments);
      const inputs = fc.tuple(
        ...entries.map(([key, argument]) => optional(argument, readable(key, argument, name))),
      );
      let computed = 0;
      await fc.assert(
        fc.asyncProperty(inputs, async (given) => {
          const direct = await outcome(name, given);
          const worked = await outcome('WORKING', [name, ...given]);
          if (direct.refused !== undefined) {
            expect(worked.refused).toBe(direct.refused);
            return;
          }
          const [titles, ...steps] = worked.result as (string | number)[][];
          expect(titles).toEqual(['Step', 'Formula', 'Values', 'Result', 'Unit', 'Source', 'Caution']);
          expect(steps.at(-1)?.[resultAt]).toEqual(shownLast(name, direct.result as SheetResult));
          for (const step of steps) {
            expect(step[stepAt]).not.toBe('');
            expect(step[sourceAt]).not.toBe('');
          }
          computed += 1;
        }),
        { numRuns: 150, seed: 20_261 },
      );
      expect(computed).toBeGreaterThan(30);
    },
  );

  it('shows values with their units as the trade writes them', () => {
    const steps = sheet.call('WORKING', 'PUNCHFORCE', '13/16', '3/8', 'A36') as string[][];
    expect(steps.map((step) => step[2]).join(' | ')).toContain('d = 13/16 in');
    expect(steps.map((step) => step[2]).join(' | ')).toContain('t = 3/8 in');
    expect(steps.at(-1)?.[4]).toBe('US ton');
  });

  it('puts the governing check of a row first', () => {
    const short = ['C1', 4, 'FB 3/8x4', 'A36', 6, '2 @ 13/16', '3/4', 2, 0.75, 3, null, 'Bay A'];
    const steps = sheet.call('WORKING', 'ROWCHECK', headings, [short], inches.stamp, 'verdict') as string[][];
    const firstOutcome = steps.findIndex((step) => step[3] === 'Edge short');
    expect(steps[firstOutcome]?.[0]).toBe('Hole: edge distance by code');
    const firstShare = steps.findIndex((step) => step[0] === 'Share of rating');
    expect(firstOutcome).toBeGreaterThan(0);
    expect(firstShare).toBeGreaterThan(firstOutcome);
    expect(steps.at(-1)?.[3]).toBe('Edge short');
  });

  it('refuses a name that is no function, with the names there are', () => {
    const error = sheet.error('WORKING', 'PUNCHFORCES', '13/16');
    expect(error.code).toBe('#N/A');
    expect(error.message).toContain('PUNCHFORCE');
  });
});
