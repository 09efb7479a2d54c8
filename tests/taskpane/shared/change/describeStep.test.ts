import { describe, expect, it } from 'vitest';
import { describeSteps, shownHeld } from '../../../../src/taskpane/shared/change/describeStep.js';
import type { Area } from '../../../../src/workbook/area.js';
import type { Content } from '../../../../src/workbook/content.js';
import type { Step } from '../../../../src/workbook/step.js';

const area = (row: number, rows = 1, column = 3): Area => ({
  sheet: 'Quote',
  row: row - 1,
  column,
  rows,
  columns: 1,
});
const cells = (at: Area, ...contents: Content[]): Step => ({
  kind: 'cells',
  area: at,
  contents: contents.map((content) => [content]),
});

describe('what a change will write', () => {
  it('tells cells that become the same value together', () => {
    expect(describeSteps([cells(area(4), 'Bay B'), cells(area(7, 2), 'Bay B', 'Bay B')])).toEqual([
      'Quote!D4, D7:D8: 3 cells become Bay B',
    ]);
  });

  it('names four areas and counts the cells of all', () => {
    const steps = Array.from({ length: 6 }, (_, at) => cells(area(2 * at + 1), 'Bay B'));
    expect(describeSteps(steps)).toEqual(['Quote!D1, D3, D5, D7 and more: 6 cells become Bay B']);
  });

  it('keeps apart what becomes something else, and formulas', () => {
    const formula = { formula: '=A1' };
    expect(
      describeSteps([
        { kind: 'sheet', name: 'Notes' },
        cells(area(1), 'Bay A'),
        cells(area(2), 'Bay B'),
        cells(area(3, 2), formula, formula),
        cells(area(5), formula),
      ]),
    ).toEqual([
      'New sheet Notes',
      'Quote!D1 becomes Bay A',
      'Quote!D2 becomes Bay B',
      'Quote!D3:D4: 2 formulas',
      'Quote!D5 becomes =A1',
    ]);
  });

  it('tells single cells of a column one by one, and many together', () => {
    const steps = (count: number) =>
      Array.from(
        { length: count },
        (_, at): Step => ({
          kind: 'cells',
          area: area(2 * at + 1),
          contents: [[`${at}/16`]],
          formats: [['@']],
        }),
      );
    expect(describeSteps(steps(2))).toEqual(['Quote!D1 becomes 0/16', 'Quote!D3 becomes 1/16']);
    expect(describeSteps(steps(11))).toEqual(['Quote!D1, D3, D5, D7 and more: 11 cells as listed below']);
  });

  it('tells fractions that were dates one by one: each becomes its own', () => {
    const step = (at: number, text: string): Step => ({
      ...(cells(area(at), text) as Extract<Step, { kind: 'cells' }>),
      formats: [['@']],
    });
    expect(describeSteps([step(1, '3/8'), step(2, '3/8')])).toEqual([
      'Quote!D1 becomes 3/8',
      'Quote!D2 becomes 3/8',
    ]);
  });
});

describe('what a cell holds', () => {
  it.each([
    [46281, 'd-mmm', '16 September 2026 (46281)'],
    [46281, 'm/d/yyyy', '16 September 2026 (46281)'],
    [46281, 'General', '46281'],
    [46281, '0.00" days"', '46281'],
    ['16-Sep', 'd-mmm', '16-Sep'],
    [null, 'd-mmm', 'blank'],
  ])('%j in the format %s is %s', (content, format, text) => {
    expect(shownHeld(content, format)).toBe(text);
  });
});
