import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/core/inputError.js';
import { readGrade } from '../../../src/core/material/readGrade.js';
import { refusal, refusalText } from '../../support/refusal.js';

describe('readGrade: arguments', () => {
  it.each([null, '', '   '])('refuses the blank cell %j', (value) => {
    expect(refusal(() => readGrade(value, 'Grade')).problem).toBe('the cell is blank.');
  });

  it.each([true, false, Number.NaN, Infinity, -304, 0, 3.5])('refuses %j', (value) => {
    expect(refusal(() => readGrade(value, 'Grade')).code).toBe('invalid');
  });

  it('refuses a number that is no name of a grade', () => {
    expect(refusal(() => readGrade(345, 'Grade')).code).toBe('unknown');
  });

  it('refuses a strength without a unit', () => {
    expect(refusalText(() => readGrade('tensile 65', 'Grade'))).toBe(
      "Grade: 'tensile 65' has no unit. Write MPa, N/mm2, ksi or psi behind it.",
    );
  });

  it('refuses a strength that may be shear or tensile, and says how to write both', () => {
    expect(refusalText(() => readGrade('310 MPa', 'Grade'))).toBe(
      `Grade: '310 MPa' may be a shear or a tensile strength. Write "shear 310 MPa", or "tensile 310 MPa" for the highest tensile strength.`,
    );
  });

  it('refuses a number with two readings', () => {
    expect(refusal(() => readGrade('shear 1,500 MPa', 'Grade')).problem).toContain('may be 1.5 or 1500');
  });

  it.each(['shear', 'tensile MPa', 'shear 310 stone', 'tensile 5.5.5 MPa'])('refuses %j', (text) => {
    expect(refusal(() => readGrade(text, 'Grade')).code).toBe('invalid');
  });

  it('never throws anything but a refusal', () => {
    const piece = fc.constantFrom('shear', 'tensile', ' ', '3', '.', ',', 'MPa', 'ksi', '=', 'A', '-');
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(piece).map((pieces) => pieces.join('')),
        ),
        (text) => {
          try {
            expect(readGrade(text, 'Grade').name).not.toBe('');
          } catch (error) {
            expect(error).toBeInstanceOf(InputError);
          }
        },
      ),
    );
  });
});

describe('readGrade: limits', () => {
  it.each([
    ['shear 20 MPa', 20],
    ['shear 2000 MPa', 2000],
  ])('reads %s', (text, shearMPa) => {
    expect(readGrade(text, 'Grade').shearMPa).toBe(shearMPa);
  });

  it.each(['shear 19.9 MPa', 'shear 2000.1 MPa', 'tensile 0 ksi', 'tensile 300 ksi'])(
    'refuses %s',
    (text) => {
      expect(refusal(() => readGrade(text, 'Grade')).problem).toContain('out of range');
    },
  );
});

describe('readGrade: values', () => {
  it('gives shear alone for a shear strength', () => {
    const grade = readGrade('shear 310 MPa', 'Grade');
    expect(grade).toEqual({
      name: 'shear 310 MPa',
      family: 'steel',
      densityKgPerM3: 7850,
      source: 'strength as typed',
      shearMPa: 310,
    });
  });

  it('gives both bounds for a tensile strength', () => {
    const grade = readGrade('Tensile  450 N/mm²', 'Grade');
    expect([grade.tensileMinMPa, grade.tensileUpperMPa, grade.shearMPa]).toEqual([450, 450, undefined]);
  });

  it.each(['shear 45 ksi', 'shear 45ksi', 'SHEAR=45 ksi', 'shear 45000 psi', 'shear strength: 45 ksi'])(
    'reads %j as 310.26 MPa',
    (text) => {
      expect(readGrade(text, 'Grade').shearMPa).toBeCloseTo(310.264, 3);
    },
  );

  it('reads a number as a name', () => {
    expect(readGrade(304, 'Grade')).toBe(readGrade('304', 'Grade'));
  });

  it.each([
    [1.4301, '1.4301'],
    [1.0038, 'S235'],
    [1.057, 'S355'],
    [304, '304'],
  ])('takes the number %d for the name of %s', (value, name) => {
    expect(readGrade(value, 'Grade').name).toBe(name);
  });
});
