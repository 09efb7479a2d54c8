// What the steps and the notes of a row say.
import { describe, expect, it } from 'vitest';
import { formatQuantity } from '../../../src/core/quantity/formatQuantity.js';
import { checkedRow, type Row, stepsOf } from '../../support/checkedRow.js';
import { settingTable, shopWith } from '../../support/sampleShop.js';

const clip: Row = {
  Section: 'FB 3/8x4',
  Grade: 'A36',
  Length: 12,
  Hole: '11/16',
  Edge: '1-1/2',
  End: '1-1/2',
  Pitch: 3,
  Press: 'Bay A',
};
const rows: Row[] = [
  clip,
  { ...clip, Section: 'L3X3X1/4', Edge: null, 'Miter left': 45 },
  { ...clip, Section: 'L3X3X1/4', 'Corner clip': '1x2', 'Notch width': 1, 'Notch depth': 1 },
  { ...clip, Section: 'PL1/4X8', 'Bend length': 8, 'Hole 2': '13/16', 'Edge 2': 2 },
  { ...clip, Section: 'C8X11.5', Leg: 'web', Edge: null },
  { Section: 'RB 1', Grade: 'A36', Length: 12, Press: 'Bay A' },
  { ...clip, Bolt: 'M16', Hole: null },
];

function checked(row: Row, settings: Row = {}) {
  const shop = shopWith({}, { settings: settingTable(settings) });
  return { ...checkedRow(row, shop), steps: stepsOf(row, shop) };
}

describe('the steps of a row', () => {
  it.each(rows)('tell no value in its label as well: %j', (row) => {
    const values = checked(row).steps.flatMap((step) => step.values);
    expect(values.length).toBeGreaterThan(5);
    for (const value of values.filter(({ kind }) => kind !== 'text')) {
      expect(value.meaning).not.toContain(formatQuantity(value, 'in'));
      expect(value.meaning).not.toMatch(/[,;:]$/);
    }
  });

  it.each(rows)('tell every step once: %j', (row) => {
    const told = checked(row).steps.map((step) => JSON.stringify(step));
    expect(new Set(told).size).toBe(told.length);
  });

  it('keep the steps of like work with other sizes', () => {
    const titles = checked({ ...clip, 'Hole 2': '13/16' }).steps.map(({ title }) => title);
    expect(titles.filter((title) => title === 'Shear strength')).toHaveLength(1);
    expect(titles.filter((title) => title === 'Punching force')).toHaveLength(2);
  });

  it('name the source of the code, and press practice beside it', () => {
    const source = (row: Row, what: string) =>
      checked(row).steps.find(({ title }) => title === `Hole: ${what}`)?.source;
    expect(source(clip, 'edge distance by code')).toMatch(/^AISC 360-/);
    expect(source(clip, 'steel left at the edge')).toBe('common practice, no source');
    expect(source({ ...clip, Bolt: 'none' }, 'edge distance by code')).toBeUndefined();
  });
});

describe('the note of a hole that is too small', () => {
  const small = (row: Row) => checked({ ...clip, Edge: null, End: null, Pitch: null, ...row }).note;

  it('names the smallest hole as the next size that can be punched', () => {
    // A572-50: τ = 0.75 · 85 = 63.75 ksi; 4 · 63.75 / 240 = 1.0625; 1.0625 · 5/8 = 0.664, 11/16 in 32nds.
    expect(small({ Section: 'FB 5/8x4', Grade: 'A572-50', Hole: '9/16' })).toMatch(
      /^A Ø9\/16 in hole in metal 5\/8 in thick may burst the punch; the smallest to punch is 11\/16 in\. Drill it\./,
    );
    expect(small({ Section: 'FB 5/8x4', Grade: 'A572-50', Hole: '11/16' })).not.toContain('burst');
  });

  it('names slots by both sizes', () => {
    expect(small({ Section: 'FB 5/8x4', Grade: 'A36', Hole: '9/16x1' })).toMatch(
      /^A slot 9\/16 × 1 in in metal 5\/8 in thick may burst the punch; the smallest to punch is 5\/8 in\. Drill it\./,
    );
  });
});

describe('holes far from every edge', () => {
  const far = { ...clip, Section: 'PL3/8X12', Edge: 5, End: 5, Pitch: null };

  it('are a caution in the note, never a failure', () => {
    // 12 · 3/8 = 4-1/2 in.
    const { verdict, note } = checked(far);
    expect(verdict).toBe('OK');
    expect(note).toContain('caution: 5 in from bolt to nearest edge is over 4-1/2 in, the most AISC allows');
  });

  it('are not told at the greatest distance, near one edge, or where an edge is not given', () => {
    for (const row of [
      { ...far, Edge: 4.5, End: 4.5 },
      { ...far, Edge: 2 },
      { ...far, End: 2 },
      { ...far, End: null },
      { ...far, Edge: null },
      { ...far, Hole: '0.7' },
    ]) {
      expect(checked(row).note).not.toContain('caution');
    }
  });

  it('are held to the rule of the code that is set', () => {
    // 4 · 9.525 + 40 = 78.1 mm, 3.075 in.
    const { note } = checked({ ...far, Edge: 4, End: 4, Hole: '22 mm', Bolt: 'M20' }, { 'Edge code': 'EN' });
    expect(note).toContain('is over 3.075 in, the most EN allows');
  });
});
