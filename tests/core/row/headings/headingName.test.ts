import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupFields, rowFields } from '../../../../src/core/row/headings/heading.js';
import { headingName } from '../../../../src/core/row/headings/headingName.js';
import { holdsLengths } from '../../../../src/core/row/headings/headingUnits.js';
import { headingNames, readHeadings } from '../../../../src/core/row/headings/readHeadings.js';

const all = [...rowFields, ...groupFields];

describe('headingName', () => {
  it.each<[string, string, string?]>([
    ['Length (mm)', 'length', 'mm'],
    ['Edge, in.', 'edge', 'in'],
    ['Edge (")', 'edge', 'in'],
    ['Edge″', 'edge', 'in'],
    ["Length (')", 'length', 'ft'],
    ['Length mm', 'length', 'mm'],
    ['Länge in mm', 'länge', 'mm'],
    ['Length in', 'length', 'in'],
    ['Bolt:', 'bolt'],
    ['* Edge *', 'edge'],
    ['[Hole 2]', 'hole 2'],
    ['“Qty”', 'qty'],
    ['d₀', 'd0'],
    ['Weld', 'weld'],
  ])('takes %j as %s, %s', (heading, bare, unit) => {
    const name = headingName(heading);
    expect([name?.bare, name?.unit]).toEqual([bare, unit]);
  });

  it('is none of a number, of nothing and of a sentence', () => {
    for (const cell of [7, null, '', ' ', '*', 'x'.repeat(61)]) expect(headingName(cell)).toBeUndefined();
  });
});

describe('a heading with marks around it', () => {
  it('is read as the heading itself', () => {
    const frames = fc.constantFrom(
      ...['X:', 'X *', '*X', '(X)', '[X]', '"X"', '“X”', '• X', 'X †', ' X ', 'X\u00a0:'],
    );
    fc.assert(
      fc.property(fc.constantFrom(...all), frames, ({ name }, frame) => {
        expect(headingNames([frame.replace('X', name)])).toEqual(headingNames([name]));
      }),
      { numRuns: 400 },
    );
  });
});

describe('a unit behind a heading', () => {
  it('is that of the numbers below, where lengths stand there; else the column is not read by that name', () => {
    const frames = fc.constantFrom('X mm', 'X (mm)', 'X in mm', 'X, mm', 'X [mm]');
    fc.assert(
      fc.property(fc.constantFrom(...all), frames, ({ key, name }, frame) => {
        const isLoose = /X [im]/.test(frame);
        fc.pre(key !== 'section' && (holdsLengths(key) || isLoose));
        const { fields, groups } = readHeadings(['Section', frame.replace('X', name)]);
        const column = { ...fields, ...groups[0] }[key];
        expect(column?.unit).toBe(holdsLengths(key) ? 'mm' : undefined);
        expect(column === undefined).toBe(!holdsLengths(key));
      }),
      { numRuns: 400 },
    );
  });
});
