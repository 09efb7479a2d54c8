import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { turnedDatesOfRow } from '../../../src/core/row/turnedDates.js';
import { checkedRow } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

/** 8 March 2025, as 3/8 typed in that year; 5 March 2025 comes of no size. */
const [march, fifth] = [45_724, 45_721];
const sizes = ['Hole', 'Bolt', 'Edge', 'End', 'Pitch', 'Gage', 'Leg', 'Hole 2', 'Edge 3'];
const otherSizes = ['Corner clip', 'Notch width', 'Notch depth'];

function dates(row: Record<string, CellValue>, unit: 'in' | 'mm' = 'in') {
  const whole = { Section: 'FB 3/8x4', ...row };
  return turnedDatesOfRow(Object.values(whole), readHeadings(Object.keys(whole)), unit);
}

describe('turnedDatesOfRow', () => {
  it.each([...sizes, ...otherSizes])('finds a date under %s', (heading) => {
    expect(dates({ [heading]: march })).toEqual([{ at: 1, date: '8 March 2025', readings: ['3/8'] }]);
    expect(dates({ [heading]: String(march) })).toHaveLength(1);
  });

  it.each([...sizes.slice(0, 7), ...otherSizes])(
    'finds what the check of the row refuses under %s',
    (heading) => {
      const row = { Section: 'L3X3X1/4', Grade: 'A36', Hole: '9/16', [heading]: march };
      const { verdict, note } = checkedRow(row, shopWith());
      expect(verdict).toBe('Check input');
      expect(note).toContain('turned into a date');
    },
  );

  it('takes a mixed number under Hole that may be a count for both, and for one elsewhere', () => {
    // 1 February 2004: 2-1/4. 1 January 2016: 1-1/16, which no press takes for a count.
    expect(dates({ Hole: 38_018 })[0]?.readings).toEqual(['Ø2-1/4', '2 @ 1/4']);
    expect(dates({ Edge: 38_018 })[0]?.readings).toEqual(['2-1/4']);
    expect(dates({ Hole: 42_370 })[0]?.readings).toEqual(['1-1/16']);
    // 1 January 2032.
    expect(dates({ Hole: 48_214 })[0]?.readings).toEqual(['1-1/32', '1/32']);
  });

  it('keeps a date that no size turns into, without a reading', () => {
    expect(dates({ Edge: fifth })).toEqual([{ at: 1, date: '5 March 2025', readings: [] }]);
  });

  it.each(['Length', 'Bend length', 'Qty', 'Holes', 'Remark', 'Hole (mm)', 'Edge (ft)'])(
    'takes no number under %s for a date',
    (heading) => {
      expect(dates({ [heading]: march })).toEqual([]);
    },
  );

  it('takes a heading in inches as one without a unit', () => {
    expect(dates({ 'Hole (in)': march })).toHaveLength(1);
    const row = { Section: 'FB 3/8x4', Grade: 'A36', 'Hole (in)': march };
    expect(checkedRow(row, shopWith()).note).toContain('looks like 3/8');
  });

  it('finds it in a row that is called a total and has a hole: no total has one', () => {
    expect(dates({ Section: null, Mark: 'Total', Hole: march })).toHaveLength(1);
  });

  it('finds nothing in a mm shop and in numbers that are no date', () => {
    expect(dates({ Hole: march }, 'mm')).toEqual([]);
    expect(dates({ Hole: 1.0625, Edge: 10_958, End: 'x 45724' })).toEqual([]);
  });
});
