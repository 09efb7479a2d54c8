// Bends beside cuts, in plate 1/4 in thick: made in a V of 3 in they ask for flanges of 0.77 · 3 = 2.31 in.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { verdicts } from '../../../src/core/check/verdict.js';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith({ 'Bend length': 30, 'Bend V openings': '3', 'Punch force': 200 });
const plate: Row = { Section: 'PL1/4X6', Length: 20, Qty: 1, 'Bend length': 6, 'Bend at': 'left end 4' };
const check = (row: Row) => checkedRow({ Grade: 'A36', Press: 'Bay A', ...plate, ...row }, shop);
const rank = (row: Row) => verdicts.indexOf(check(row).verdict);

describe('a bend beside cuts', () => {
  it.each<[string, Row, string, RegExp]>([
    ['far from a miter', { 'Miter right': 45, 'Long side': 'right bottom' }, 'OK', /^Understood as: /],
    [
      'far from a miter whose long side is not given',
      { 'Miter right': 45, 'Bend at': 'right end 11' },
      'OK',
      /Understood as: /,
    ],
    [
      'near a miter',
      { 'Miter right': 45, 'Long side': 'right bottom', 'Bend at': 'right end 8' },
      'Edge short',
      /^Bend: 2 in from the line to the miter at the right end is under 2\.31 in \(press practice: the flange must reach over the V opening\)\./,
    ],
    [
      'with a clip in its flange',
      { 'Corner clip': '2x2', 'Clip at': 'top left' },
      'Edge short',
      /^Bend: 2 in from the line to clipped corner 1 is under 2\.31 in/,
    ],
    [
      'with a small clip in its flange',
      { 'Corner clip': '1x1', 'Clip at': 'top left' },
      'OK',
      /^Understood as: /,
    ],
    [
      'beside a notch',
      { 'Notch width': 4, 'Notch depth': 1, 'Notch at': 'top edge 7' },
      'Edge short',
      /^Bend: 1 in from the line to notch 1 is under 2\.31 in/,
    ],
    [
      'parted by a notch that reaches over it',
      { 'Notch width': 4, 'Notch depth': 5, 'Notch at': 'left end', 'Bend length': 2 },
      'OK',
      /Understood as: /,
    ],
    [
      'over a notch at the corner that ends beyond it',
      { 'Notch width': 4.5, 'Notch depth': 1, 'Notch at': 'bottom left', 'Bend length': 5 },
      'OK',
      /Understood as: /,
    ],
    [
      'over a notch at the corner that ends before it',
      { 'Notch width': 3, 'Notch depth': 1, 'Notch at': 'bottom left' },
      'Edge short',
      /^Bend: 1 in from the line to notch 1/,
    ],
    [
      'beside a notch whose place is not given',
      { 'Notch width': 4, 'Notch depth': 1, 'Notch at': 'top edge' },
      'OK so far',
      /Notch at/,
    ],
    [
      'that runs into a clip',
      { 'Corner clip': '2x2', 'Clip at': 'top left', 'Bend at': 'left end 1', 'Bend length': 5 },
      'Edge short',
      /^Bend: 0 in from the line to clipped corner 1/,
    ],
    [
      'off the plate',
      { 'Bend at': 'left end 26' },
      'Check input',
      /^Bend: its line lies beside the plate, which is 20 in long\. Correct Bend at\./,
    ],
    [
      'longer than the steel along its line',
      { 'Notch width': 4, 'Notch depth': 1, 'Notch at': 'top edge 4' },
      'Check input',
      /^Bend length 6 in: a bend across the part runs from edge to edge, 5 in\. Correct Bend length or Bend at\./,
    ],
    [
      'across another',
      { Section: 'PL1/4X20', 'Bend at': 'left end 4, bottom edge 4', 'Bend length': 20, Bends: 2 },
      'Check input',
      /^Bend 1 and bend 2 cross on the plate: cut the corner out, or correct Bend at\./,
    ],
  ])('%s', (_what, row, verdict, note) => {
    expect(check(row).note).toMatch(note);
    expect(check(row).verdict).toBe(verdict);
  });

  it('depends on the corner that is clipped where the row does not say', () => {
    const { verdict, note } = check({ 'Corner clip': '2x2', Corners: 1 });
    expect(verdict).toBe('OK so far');
    expect(note).toContain('It depends on Clip at: fill it in.');
  });
});

const eighths = (least: number, most: number) =>
  fc.integer({ min: least * 8, max: most * 8 }).map((parts) => parts / 8);

describe('a bend beside a cut, whatever its size', () => {
  it('is never better where the cut comes nearer', () => {
    fc.assert(
      fc.property(eighths(1, 8), eighths(3, 10), eighths(1, 4), (clip, at, less) => {
        const row = (along: number): Row => ({
          'Corner clip': `${along}x1`,
          'Clip at': 'top left',
          'Bend at': `left end ${at}`,
          'Cut by': 'burn',
        });
        const found = (along: number) =>
          check(row(along)).findings.filter(
            ({ outcome, rule }) => outcome === 'failed' && rule === 'distance',
          );
        const nearer = found(clip + less).length;
        const farther = found(clip).length;
        // Beyond the line it takes nothing more from this flange.
        if (clip + less <= at) expect(nearer).toBeGreaterThanOrEqual(farther);
      }),
      { numRuns: 150 },
    );
  });

  it('is the same seen from the other end and from the other edge', () => {
    fc.assert(
      fc.property(eighths(1, 3), eighths(1, 3), eighths(1, 18), (along, across, at) => {
        const row = (end: string, side: string): Row => ({
          'Corner clip': `${along}x${across}`,
          'Clip at': `${side} ${end}`,
          'Bend at': `${end} end ${at}`,
        });
        const own = check(row('left', 'top')).verdict;
        expect(check(row('right', 'top')).verdict).toBe(own);
        expect(check(row('left', 'bottom')).verdict).toBe(own);
      }),
      { numRuns: 150 },
    );
  });

  it('is never better where the row does not say which corner is clipped', () => {
    fc.assert(
      fc.property(eighths(1, 3), eighths(3, 17), (along, at) => {
        const row: Row = { 'Corner clip': `${along}x1`, 'Bend at': `left end ${at}` };
        const best = Math.max(
          ...['top left', 'top right', 'bottom left', 'bottom right'].map((corner) =>
            rank({ ...row, 'Clip at': corner }),
          ),
        );
        expect(rank(row)).toBeLessThanOrEqual(best);
      }),
      { numRuns: 80 },
    );
  });
});
