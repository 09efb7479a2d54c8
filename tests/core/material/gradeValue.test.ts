import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import { type GradeItem, gradeItems, gradeValue } from '../../../src/core/material/gradeValue.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const value = (name: string, item: GradeItem) =>
  gradeValue({ grade: findGrade(name, 'Grade'), item, shearRatio: 0.75 });

describe('gradeValue: arguments', () => {
  it.each([
    ['6061-T6', 'tensile upper'],
    ['Brass C260', 'tensile min'],
    ['Brass C260', 'tensile upper'],
  ] as const)('%s has no %s', (name, item) => {
    expect(refusal(() => value(name, item))).toMatchObject({ code: 'unknown', argument: 'Item' });
  });

  it('refuses a share outside its range, where it is used', () => {
    const grade = findGrade('A36', 'Grade');
    expect(refusal(() => gradeValue({ grade, item: 'shear', shearRatio: 2 })).argument).toBe('Shear ratio');
  });
});

describe('gradeValue: values', () => {
  it.each([
    ['S355', 'shear', 'stress', 472.5],
    ['S355', 'tensile min', 'stress', 470],
    ['S355', 'tensile upper', 'stress', 630],
    ['S355', 'density', 'density', 7850],
    ['304', 'density', 'density', 7900],
  ] as const)('%s, %s', (name, item, kind, size) => {
    expect(value(name, item)).toMatchObject({ kind, value: size });
  });

  it('gives the source as text', () => {
    expect(value('S355', 'source')).toMatchObject({ kind: 'text' });
    expect(value('S355', 'source').value).toContain('EN 10025-2');
  });

  it.each(gradeItems)('shows its working of %s', (item) => {
    const working = new Working();
    const input = { grade: findGrade('A36', 'Grade'), item, shearRatio: 0.75 };
    const { value: shown } = gradeValue(input, working);
    expect(working.steps.at(-1)?.result.value).toBe(shown);
    expect(working.steps).toHaveLength(1);
    expect(working.steps[0]?.source).not.toBe('');
  });
});
