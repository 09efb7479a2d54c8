import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/core/inputError.js';
import { findGrade } from '../../../src/core/material/findGrade.js';
import type { Grade } from '../../../src/core/material/grade.js';
import { otherGradeNames } from '../../../src/core/material/gradeNames.js';
import { builtInGrades } from '../../../src/core/material/gradeTable.js';
import { refusal } from '../../support/refusal.js';

const own = (name: string, shearMPa: number): Grade => ({
  name,
  family: 'steel',
  shearMPa,
  densityKgPerM3: 7850,
  source: 'certificate',
});

describe('findGrade: arguments', () => {
  it.each(['A999', 'steel', 'S355J2+C', 'A57', 'S355J2+CR', '38W', '6061', 'brass', 'S275N', '', 'A36X'])(
    'refuses the unknown name %j and never reads it as Mild',
    (name) => {
      const failure = refusal(() => findGrade(name, 'Grade'));
      expect(failure.code).toBe('unknown');
      expect(failure.argument).toBe('Grade');
      expect(failure.problem).toContain('not a known grade');
    },
  );

  it('names at most three near grades, the nearest first', () => {
    const { allowed } = refusal(() => findGrade('A57', 'Grade'));
    expect(allowed).toMatch(/^Did you mean A572-50, [^?]*\? /);
    expect(allowed.split('.')[0]?.split(',').length).toBeLessThanOrEqual(3);
  });

  it('offers no other steel for its digits alone', () => {
    for (const name of ['AR400', '4140', 'AR500', '1045', '400'])
      expect(refusal(() => findGrade(name, 'Grade')).allowed, name).toMatch(/^Write a grade/);
    expect(refusal(() => findGrade('S335', 'Grade')).allowed).toMatch(/^Did you mean S235, S355/);
  });

  it('names none that is not near, and shows a strength in the unit of the shop', () => {
    expect(refusal(() => findGrade('Weldox', 'Grade', [], 'mm')).allowed).toBe(
      'Write a grade such as S235, or its highest tensile strength such as "tensile 450 MPa", or add the grade to the shop\'s own.',
    );
    expect(refusal(() => findGrade('Weldox', 'Grade', [], 'in')).allowed).toContain('"tensile 65 ksi"');
  });

  it('suggests grades of the shop too', () => {
    expect(refusal(() => findGrade('Zinc plate 9', 'Grade', [own('Wear plate 450', 900)])).code).toBe(
      'unknown',
    );
    expect(refusal(() => findGrade('Wear plate', 'Grade', [own('Wear plate 450', 900)])).allowed).toContain(
      'Wear plate 450',
    );
  });
});

describe('findGrade: limits', () => {
  it('reads a name of 60 characters and refuses one of 61 unread', () => {
    const spaced = `A36${' '.repeat(57)}`;
    expect(findGrade(spaced, 'Grade').name).toBe('A36');
    expect(refusal(() => findGrade(`${spaced} `, 'Grade')).code).toBe('unknown');
  });

  it('takes the grade of the shop before a built-in one', () => {
    const grades = [own('A36', 300)];
    expect(findGrade('astm a36', 'Grade', grades).shearMPa).toBe(300);
    expect(findGrade('A36', 'Grade').shearMPa).toBeUndefined();
  });

  it('does not mix two lists of own grades', () => {
    const [first, second] = [[own('Special', 300)], [own('Special', 400)]];
    expect(findGrade('Special', 'Grade', first).shearMPa).toBe(300);
    expect(findGrade('Special', 'Grade', second).shearMPa).toBe(400);
    expect(refusal(() => findGrade('Special', 'Grade')).code).toBe('unknown');
  });

  it('takes the name as written before a loose reading of another entry', () => {
    const grades = [own('S355J2', 500), own('S355', 470)];
    expect(findGrade('S355J2', 'Grade', grades).shearMPa).toBe(500);
    expect(findGrade('S355', 'Grade', grades).shearMPa).toBe(470);
  });
});

describe('findGrade: values', () => {
  it.each([
    ['A36', 'A36'],
    ['astm a36', 'A36'],
    ['ASTM A36/A36M', 'A36'],
    ['a572 gr 50', 'A572-50'],
    ['A572-50', 'A572-50'],
    ['A572GR50', 'A572-50'],
    ['ASTM A572 Grade 50', 'A572-50'],
    ['A572/A572M Gr. 50', 'A572-50'],
    ['A529 Gr 50', 'A529-50'],
    ['S355', 'S355'],
    ['S355J2', 'S355'],
    ['S355 JR', 'S355'],
    ['S355J2+N', 'S355'],
    ['EN 10025-2 S355J2', 'S355'],
    ['s235jr', 'S235'],
    ['S460NL', 'S460'],
    ['300W', '300W'],
    ['44W', '300W'],
    ['G40.21 300W', '300W'],
    ['CSA G40.21-50W', '350W'],
    ['304', '304'],
    ['AISI 304', '304'],
    ['SS304', '304'],
    ['SS 316', '316'],
    ['6061-T6', '6061-T6'],
    ['Al 6061 T6', '6061-T6'],
    ['C260', 'Brass C260'],
    ['Mild', 'Mild'],
    ['mild steel', 'Mild'],
  ])('reads %j as %s', (text, name) => {
    expect(findGrade(text, 'Grade').name).toBe(name);
  });

  it.each([
    ['A572', 'A572-50'],
    ['A500', 'A500-C'],
    ['A500 GR B', 'A500-B'],
    ['A53 Gr. B', 'A53-B'],
    ['A53', 'A53-B'],
    ['A588 Gr A', 'A588'],
    ['1018', '1018'],
    ['304L', '304L'],
    ['T304', '304'],
    ['304/304L', '304L'],
    ['GR 50', 'A572-50'],
    ['A709 Gr 50W', 'A588'],
    ['A572 Gr. 65', 'A572-65'],
    ['St37-2', 'S235'],
    ['RSt 37-2', 'S235'],
    ['St52-3', 'S355'],
    ['1.0038', 'S235'],
    ['W.-Nr. 1.0577', 'S355'],
    ['S355J2G3', 'S355'],
    ['S235JRG2', 'S235'],
    ['S355J0H', 'S355'],
    ['S355J2H', 'S355'],
    ['S355NL', 'S355'],
    ['S355J2W', 'S355'],
    ['S355J2C+N', 'S355'],
    ['S355J2+N+Z25', 'S355'],
    ['S235JR+AR', 'S235'],
    ['S355JO', 'S355'],
    ['S355MC', 'S355MC'],
    ['S690QL', 'S690'],
    ['1.4301', '1.4301'],
    ['V2A', '1.4301'],
    ['V4A', '1.4401'],
    ['Fe 360 B', 'S235'],
    ['E36', 'S355'],
    ['43A', 'S275'],
    ['SS400', 'SS400'],
  ])('reads %j, as shops write it, as %s', (text, name) => {
    expect(findGrade(text, 'Grade').name).toBe(name);
  });

  it('finds every other name of the table, each of one grade', () => {
    const names = Object.entries(otherGradeNames).flatMap(([grade, others]) =>
      others.map((other) => [other, grade] as const),
    );
    for (const [other, grade] of names) expect(findGrade(other, 'Grade').name, other).toBe(grade);
    expect(new Set(names.map(([other]) => other)).size).toBe(names.length);
  });

  it('finds every built-in grade by its own name, in any case and with stray spaces', () => {
    for (const grade of builtInGrades) {
      expect(findGrade(grade.name, 'Grade')).toBe(grade);
      expect(findGrade(` ${grade.name.toLowerCase()} `, 'Grade')).toBe(grade);
    }
  });

  it('gives a grade or a refusal for any text', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (text) => {
        try {
          expect(builtInGrades).toContain(findGrade(text, 'Grade'));
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
        }
      }),
    );
  });
});
