import { expect, it } from 'vitest';
import { inventedPresses, verdictTable } from '../../scripts/verdictTable.mjs';

const headings = ['Mark', 'Verdict', 'Share of rating', 'Governs', 'Note'];
const note = "Hole: end distance 7/8 in is under 1-1/4 in. Punch force is 52% of Bay A's rating.";
const rows = [headings, ['BK1', 'Edge short', 0.52, 'end distance', note], ['CL1', 'OK', 0.36, 'hole', '']];

it('a note is printed whole where it fits, else its first sentence', () => {
  expect(verdictTable(rows, 200)).toContain(note);
  const lines = verdictTable(rows, 100).split('\n');
  expect(lines).toHaveLength(3);
  expect(lines[1]).toMatch(/Hole: end distance 7\/8 in is under 1-1\/4 in\.$/);
});

it('a sentence that does not fit on a line goes on below its heading, and is there to its end', () => {
  const lines = verdictTable(rows, 72).split('\n');
  const at = lines[0]?.indexOf('Note') ?? 0;
  const told = lines.slice(1, -1).map((line) => line.slice(at));
  expect(told.length).toBeGreaterThan(1);
  expect(told.join(' ')).toBe('Hole: end distance 7/8 in is under 1-1/4 in.');
  expect(lines[2]?.slice(0, at).trim()).toBe('');
});

it('names the presses that say that they are invented', () => {
  const shop = [
    ['Stamp', 'in · 2 presses'],
    ['Item', 'Unit', 'Bay A', 'Bay B'],
    ['Punch force', 'US ton', 55, 88],
    ['Invented', null, 'yes', 'no'],
  ];
  expect(inventedPresses(shop)).toEqual(['Bay A']);
  expect(inventedPresses(shop.slice(0, 3))).toEqual([]);
});
