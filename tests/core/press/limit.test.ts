import { describe, expect, it } from 'vitest';
import { governsOf, shareFinding } from '../../../src/core/press/limit.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { bayA, pressTable } from '../../support/sampleShop.js';

function noteOf(use: number, shareToUse = 0.8): string {
  const presses = pressTable({ 'Bay A': { ...bayA, 'Share of rating to use': shareToUse } });
  const [press] = readShop({ presses }).presses;
  if (!press) throw new Error('there is no press');
  return shareFinding(press, use, 1000, 'punch force').note;
}

describe('the share of a rating in a note', () => {
  it.each([
    [0.83, "punch force is 83 % of Bay A's rating, above the 80 % the shop uses."],
    [0.803, "punch force is 80.3 % of Bay A's rating, above the 80 % the shop uses."],
    [0.8004, "punch force is 80.04 % of Bay A's rating, above the 80 % the shop uses."],
    [0.996, "punch force is 99.6 % of Bay A's rating, above the 80 % the shop uses."],
    [1, "punch force is 100 % of Bay A's rating, above the 80 % the shop uses."],
    [1.003, "punch force is 100.3 % of Bay A's rating."],
    [1.33, "punch force is 133 % of Bay A's rating."],
    [0.8, ''],
  ])('%s of it', (use, note) => {
    expect(noteOf(use)).toBe(note);
  });

  it('is told apart from a share of the shop that has a decimal', () => {
    expect(noteOf(0.806, 0.805)).toContain("is 80.6 % of Bay A's rating, above the 80.5 %");
  });
});

describe('governsOf', () => {
  it('keeps capitals within the name', () => {
    expect(governsOf('bendVeeOpenings')).toBe('bend V openings');
    expect(governsOf('punchThroat')).toBe('punch throat');
  });
});
