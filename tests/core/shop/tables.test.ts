import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { sentenceInCell } from '../../../src/core/inputError.js';
import { megapascalPerKsi } from '../../../src/core/quantity/units.js';
import { type Press, pressValue } from '../../../src/core/press/press.js';
import { readGrades } from '../../../src/core/shop/readGrades.js';
import { readPresses } from '../../../src/core/shop/readPresses.js';
import { readTools, unreadToolText } from '../../../src/core/shop/readTools.js';
import { readSettings, settingRows } from '../../../src/core/shop/settings.js';
import { nameKey, readTable, shortNames } from '../../../src/core/shop/table.js';
import { describeHole } from '../../../src/core/tooling/hole.js';
import { refusalText } from '../../support/refusal.js';

describe('readTable', () => {
  const table = readTable(
    [
      ['Item ', 'UNIT', 'Item', null],
      ['a', 'b', 'c'],
    ],
    'Presses',
    ['Item', 'Unit'],
  );

  it('finds columns without regard to case and spaces, the first of two', () => {
    expect([table.column('item'), table.column(' Unit'), table.column('Price')]).toEqual([0, 1, undefined]);
    expect(table.cell(['a', 'b'], 'Unit')).toBe('b');
    expect(table.cell(['a'], 'Unit')).toBeNull();
    expect(table.cell(['a'], 'Price')).toBeNull();
  });

  it('says which heading is missing, and what was read instead', () => {
    expect(refusalText(() => readTable([['Punch', 'yes']], 'Presses', ['Item', 'Unit']))).toBe(
      'Presses: there is no column "Item" in its first row (read: Punch, yes). ' +
        'Give the whole table with its headings: Item, Unit.',
    );
    expect(refusalText(() => readTable([], 'Tools', ['Press']))).toContain('(read: nothing)');
  });
});

describe('names', () => {
  it.each([
    [' Bay  A ', 'bay a'],
    ['BAY_A', 'bay a'],
    ['Bay\nA', 'bay a'],
    [7, '7'],
    [null, ''],
    ['   ', ''],
  ])('%j is compared as %j', (name, key) => {
    expect(nameKey(name)).toBe(key);
  });

  it('are shortened in number and length for a message', () => {
    expect(shortNames(['x'.repeat(99), 'b'])).toBe(`${'x'.repeat(30)}, b`);
    expect(shortNames(Array.from({ length: 20 }, (_, at) => String(at))).split(', ')).toHaveLength(8);
  });
});

describe('readPresses', () => {
  const problemIn = (press?: Press) => {
    const value = press && pressValue(press, 'punchThroat');
    return value?.state === 'bad' ? sentenceInCell(value.failure) : value;
  };
  const read = (...rows: CellValue[][]) => readPresses([['Item', 'Unit', 'Bay A', 'Bay B'], ...rows], 'in');

  it('reads a column for each press and a row for each item, in any order and spelling', () => {
    const { presses, unknownRows } = read(
      ['PUNCH  throat', null, 12, '12 mm'],
      ['General'],
      ['Punch', '', 'yes', 'no'],
    );
    const [a, b] = presses;
    expect(presses.map(({ name }) => name)).toEqual(['Bay A', 'Bay B']);
    expect(a && pressValue(a, 'punchThroat')).toEqual({ state: 'value', value: 12 * 25.4 });
    expect(b && pressValue(b, 'punchThroat')).toEqual({ state: 'value', value: 12 });
    expect(a && pressValue(a, 'punch')).toEqual({ state: 'value', value: 1 });
    expect(b && pressValue(b, 'punch')).toEqual({ state: 'value', value: 0 });
    expect(a && pressValue(a, 'punchStroke')).toEqual({ state: 'unknown' });
    expect(unknownRows).toEqual([]);
  });

  it('keeps a cell that cannot be read as the problem of that item alone', () => {
    const [a, b] = read(['Punch throat', '', 'abc', 12]).presses;
    expect(problemIn(a)).toBe(
      "Presses, Bay A, Punch throat: 'abc' is not a length. Write 3/8, 9.5 mm or 0.375.",
    );
    expect(b && pressValue(b, 'punchThroat').state).toBe('value');
  });

  it('names rows it does not know, and keeps them out', () => {
    expect(read(['Color', '', 'green', 'blue']).unknownRows).toEqual(['Presses, Color']);
  });

  it('refuses to choose between two rows of one item, and between two presses of one name', () => {
    const [a] = read(['Punch throat', '', 12, 12], ['punch throat', '', 14, 14]).presses;
    expect(problemIn(a)).toBe('Presses, Punch throat: the row stands in the table twice. Keep one.');
    const twins = readPresses(
      [
        ['Item', 'Unit', 'Bay A', 'bay a'],
        ['Punch', '', 'yes', 'yes'],
      ],
      'in',
    ).presses;
    for (const twin of twins)
      expect(twin.problem && sentenceInCell(twin.problem)).toMatch(
        /^Presses: 2 presses are called .* Give each its own name\./,
      );
  });

  it('asks for the name of a column with values, and passes over an empty one', () => {
    const unnamed = (value: CellValue) =>
      readPresses(
        [
          ['Item', 'Unit', 'Bay A', ''],
          ['Punch', '', 'yes', value],
        ],
        'in',
      );
    expect(refusalText(() => unnamed('yes'))).toMatch(
      /^Presses: column 4 has values but no press name\. Write/,
    );
    expect(unnamed(null).presses).toHaveLength(1);
  });
});

describe('readTools', () => {
  const headings = ['Press', 'Kind', 'Shape', 'Size', 'Length', 'Count'];
  const read = (...rows: CellValue[][]) => readTools([headings, ...rows], 'in');
  const sizes = (...rows: CellValue[][]) => read(...rows)?.tools.map(({ size }) => describeHole(size, 'in'));

  it('reads the body of a tool; a family of bodies written there does not take the tool away', () => {
    const withBody = (body: CellValue) =>
      readTools(
        [
          ['Press', 'Kind', 'Size', 'Body'],
          ['any', 'punch', '13/16', body],
        ],
        'in',
      );
    expect(withBody('1-3/8')?.tools[0]?.bodyMm).toBeCloseTo(34.925, 9);
    expect(withBody(null)?.tools[0]).not.toHaveProperty('bodyMm');
    const family = withBody('28XX');
    expect(family?.problems).toEqual([]);
    expect(family?.tools[0]).not.toHaveProperty('bodyMm');
    expect(family?.tools[0]?.bodyProblem).toMatch(/^Tools, punch Ø13\/16, Body: '28XX' is not a length\./);
  });

  it('has none to check where there is no table', () => {
    expect(readTools(undefined, 'in')).toBeUndefined();
    expect(read()).toEqual({ tools: [], problems: [] });
  });

  it('reads every shape, with its length in a column of its own', () => {
    expect(
      sizes(
        ['any', 'punch', '', '13/16'],
        ['any', 'Punch', 'round', 0.8125],
        ['any', 'punch', 'square', '3/4'],
        ['any', 'punch', 'rectangle', 1, 2],
        ['any', 'punch', 'slot', '13/16', '1-7/8'],
        ['any', 'die', 'hexagon', '7/8'],
      ),
    ).toEqual(['Ø13/16', 'Ø13/16', 'square 3/4', 'rectangle 1 × 2', 'slot 13/16 × 1-7/8', 'hexagon 7/8']);
  });

  it('keeps a size that is text as it stands, and a number as every size of the shop', () => {
    const tools = read(
      ['any', 'die', '', ' 22.8 mm '],
      ['any', 'punch', 'slot', '13/16', '1-7/8'],
      ['any', 'punch', 'square', 0.75],
    )?.tools;
    expect(tools?.map(({ written }) => written)).toEqual(['Ø22.8 mm', 'slot 13/16 × 1-7/8', undefined]);
  });

  it('takes one where the count is blank, and any press where that is', () => {
    const [first, second] = read(['', 'punch', '', '1'], ['Bay A', 'die', '', '1', '', 3])?.tools ?? [];
    expect(first).toMatchObject({ count: 1 });
    expect(first?.press).toBeUndefined();
    expect(second).toMatchObject({ count: 3, press: 'Bay A', kind: 'die' });
  });

  it.each([
    [
      ['any', 'hammer', '', '1'],
      /^Tools, row 1, Kind: 'hammer' is not a kind of tool\. Write punch or die\./,
    ],
    [['any', 'punch', 'oval', '1'], /^Tools, row 1, Shape: 'oval' is not a shape\. Write round, square/],
    [['any', 'punch', 'constructor', '1'], /^Tools, row 1, Shape: 'constructor' is not a shape\./],
    [['any', 'punch', '', ''], /^Tools, row 1, Size: the cell is blank\. Write/],
    [
      ['any', 'punch', '', 'abc'],
      /^Tools, row 1, Size: 'abc' is not a hole\. Write the size alone, such as 13\/16 or 22 mm; /,
    ],
    [['any', 'punch', '', '1', '', 'two'], /^Tools, row 1, Count: 'two' is not a number\. Write/],
  ] as const)('keeps a row it cannot read as a problem: %j', (row, message) => {
    const tools = read([...row], ['any', 'punch', '', '1']);
    expect(tools?.problems.map(unreadToolText)).toEqual([expect.stringMatching(message)]);
    expect(tools?.tools).toHaveLength(1);
  });
});

describe('readGrades', () => {
  const read = (...rows: CellValue[][]) =>
    readGrades([['Grade', 'Tensile min', 'Tensile upper', 'Shear', 'Density', 'Source'], ...rows], 'in');

  it('reads strengths in ksi of an inch shop or in their own unit, and the density of steel where it is blank', () => {
    const [plate] = read(['Bay plate', 60, '520 MPa', null, null, 'certificate']);
    expect(plate?.grade).toMatchObject({
      name: 'Bay plate',
      tensileMinMPa: expect.closeTo(60 * megapascalPerKsi, 9) as number,
      tensileUpperMPa: 520,
      densityKgPerM3: 7850,
      source: "the shop's Grades table: certificate",
    });
  });

  it('reads a density in lb/ft³ of an inch shop: 490 is 7849 kg/m³', () => {
    const [plate] = read(['Plate', null, 75, null, 490]);
    // 490 × 0.45359237 / 0.3048³
    expect(plate?.grade?.densityKgPerM3).toBeCloseTo((490 * 0.45359237) / 0.3048 ** 3, 9);
  });

  it.each([
    [['Plate', 60], /^Grades, Plate: Tensile upper and Shear are both blank\. Fill in one/],
    [['Plate', null, 'strong'], /^Grades, Plate, Tensile upper: 'strong' is not a strength\. Write/],
    [['Plate', null, 75, null, 5], /^Grades, Plate, Density: 5 is out of range\. Write kg\/m³/],
  ] as const)('keeps a grade it cannot use with the reason: %j', (row, problem) => {
    const [own] = read([...row]);
    expect(own?.name).toBe('Plate');
    expect(own?.problem && sentenceInCell(own.problem)).toMatch(problem);
  });

  it('refuses to choose between two grades of one name', () => {
    const twins = read(['Plate', null, 75], ['PLATE', null, 80]);
    for (const twin of twins)
      expect(twin.problem && sentenceInCell(twin.problem)).toMatch(
        /stands in the table 2 times\. Keep one\./,
      );
  });

  it('passes over blank rows', () => {
    expect(read([null, null], ['', 60])).toEqual([]);
    expect(readGrades(undefined, 'in')).toEqual([]);
  });
});

describe('readSettings', () => {
  const read = (...rows: CellValue[][]) => readSettings([['Setting', 'Value'], ...rows]);

  it('has the usual rules and inches where nothing is said', () => {
    expect(readSettings(undefined)).toEqual(read());
    expect(read(['Shear ratio', ''])).toEqual(read());
    expect(read().unit).toBe('in');
  });

  it('reads each setting by its name', () => {
    expect(read(['units', 'MM'], ['SHEAR ratio', '0.7'], ['Edge code', 'en'])).toMatchObject({
      unit: 'mm',
      settings: { shearRatio: 0.7, edgeCode: 'EN' },
      bad: {},
    });
    expect(Object.values(settingRows).every(({ name }) => name !== '')).toBe(true);
  });

  it.each([
    ['Shear ratio', 0.5, 0.49],
    ['Shear ratio', 1, 1.01],
    ['Hole-to-thickness ratio', 1, 0.99],
    ['Hole-to-thickness ratio', 3, 3.01],
  ])('holds %s to its range: %d but not %d', (name, inside, outside) => {
    expect(read([name, inside]).bad).toEqual({});
    expect(Object.values(read([name, outside]).bad).map(sentenceInCell)).toEqual([
      expect.stringMatching(/is out of range\. Write a number from/),
    ]);
  });

  it('keeps a setting it cannot read as its own problem, and names those it does not know', () => {
    const { bad, unknownRows } = read(['Shear ratio', 'high'], ['Color', 'blue']);
    expect(Object.fromEntries(Object.entries(bad).map(([key, each]) => [key, sentenceInCell(each)]))).toEqual(
      {
        shearRatio: expect.stringMatching(/^Settings, Shear ratio: 'high' is not a number\./) as string,
      },
    );
    expect(unknownRows).toEqual(['Settings, Color']);
  });

  it('will have its units right, since they decide what every number means', () => {
    expect(refusalText(() => read(['Units', 'cm']))).toBe(
      "Settings, Units: 'cm' is not one of the choices. Write in, mm.",
    );
    expect(refusalText(() => read(['Units', '']))).toContain(
      'Settings, Units: a blank cell is not one of the choices',
    );
  });
});
