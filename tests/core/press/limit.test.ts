import { describe, expect, it } from 'vitest';
import { governsOf, withinLimit } from '../../../src/core/press/limit.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const inch = 25.4;

function within(lengthIn: number, cells: PressCells = {}) {
  const [press] = shopWith(cells).presses;
  if (!press) throw new Error('the sample shop has no press');
  return withinLimit(press, { item: 'longestBar', sized: { is: 'part' }, given: lengthIn * inch });
}

describe('governsOf', () => {
  it('keeps capitals within the name', () => {
    expect(governsOf('bendVeeOpenings')).toBe('bend V openings');
    expect(governsOf('punchThroat')).toBe('punch throat');
  });
});

describe('withinLimit', () => {
  it('is held up to the limit and failed above it, with both', () => {
    const limit = 480 * inch;
    const held = { outcome: 'held', verdict: 'OK', press: 'Bay A', given: limit, limit };
    expect(within(480)).toMatchObject(held);
    expect(within(480.1)).toMatchObject({ outcome: 'failed', verdict: 'Too big', limit });
  });

  it('is held without a limit where the press has none', () => {
    const found = within(9999, { 'Longest bar': 'none' });
    expect(found).toMatchObject({ outcome: 'held', verdict: 'OK', given: 9999 * inch });
    expect(found).not.toHaveProperty('limit');
  });

  it('is open where the cell is blank, and refused where it cannot be read', () => {
    expect(within(1, { 'Longest bar': null })).toEqual({
      rule: 'blank item',
      outcome: 'open',
      verdict: 'Not checked',
      press: 'Bay A',
      item: 'longestBar',
    });
    expect(within(1, { 'Longest bar': 'long' })).toMatchObject({
      rule: 'refusal',
      verdict: 'Check input',
      press: 'Bay A',
      about: 'longest bar',
      ofPressCell: true,
      failure: { argument: 'Presses, Bay A, Longest bar' },
    });
  });
});
