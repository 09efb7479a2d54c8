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
      'Edge short',
      /^Bend: notch 1 crosses the line by 1 in, /,
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

describe('a notch over a bend line', () => {
  const notched: Row = { Section: 'PL1/4X10', Length: 12, 'Bend at': 'left end 3', 'Cut by': 'burn' };
  const inEnd: Row = { ...notched, 'Bend length': 10, 'Notch width': 2, 'Notch at': 'left end 5' };
  const inEdge: Row = {
    ...notched,
    'Bend at': 'bottom edge 3',
    'Bend length': 12,
    'Notch width': 2,
    'Notch at': 'bottom edge 6',
  };

  it.each<[string, Row, RegExp]>([
    [
      'before it',
      { ...inEnd, 'Notch depth': 2.75 },
      /^Bend: 1\/4 in from the line to notch 1 is under 2\.31 in/,
    ],
    ['on it', { ...inEnd, 'Notch depth': 3 }, /^Bend: 0 in from the line to notch 1 is under 2\.31 in/],
    ['across it', { ...inEnd, 'Notch depth': 3.125 }, /^Bend: notch 1 crosses the line by 1\/8 in, /],
    [
      'far across it',
      { ...inEnd, 'Notch depth': 8 },
      /crosses the line by 5 in, and the steel beside it bends out of true/,
    ],
    ['across nearly all of it', { ...inEnd, 'Notch width': 9, 'Notch depth': 4 }, /crosses the line by 1 in/],
    [
      'with the steel as its length',
      { ...inEnd, 'Bend length': 8, 'Notch depth': 4 },
      /crosses the line by 1 in/,
    ],
    [
      'from the far end',
      { ...inEnd, 'Notch at': 'right end 5', 'Notch depth': 10 },
      /crosses the line by 1 in/,
    ],
    ['in an edge', { ...inEdge, 'Notch depth': 3.5 }, /Correct Notch depth, Notch at or Bend at\./],
    [
      'across the second of two',
      {
        ...inEnd,
        Bends: 2,
        'Bend at': 'left end 3, left end 7',
        'Notch at': 'right end 5',
        'Notch depth': 6,
      },
      /^Bend 2: notch 1 crosses the line by 1 in, /,
    ],
  ])('is short %s', (_where, row, note) => {
    expect(check(row)).toMatchObject({ verdict: 'Edge short' });
    expect(check(row).note).toMatch(note);
  });

  it('is none where a notch takes the end of the line away and the row says how long the rest is', () => {
    const corner: Row = { ...inEnd, 'Notch at': 'bottom left', 'Notch width': 4, 'Notch depth': 4 };
    expect(check({ ...corner, 'Bend length': 6 }).verdict).toBe('OK');
    expect(check(corner)).toMatchObject({ verdict: 'Check input' });
    expect(check(corner).note).toMatch(
      /^Bend length 10 in: a bend across the part runs from edge to edge, 6 in\./,
    );
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

  it('is never better where a notch is deeper or wider, before the line, across it and beyond', () => {
    const sides = fc.constantFrom('left end', 'right end', 'bottom edge', 'top edge');
    const notchAt = fc.oneof(
      fc.record({ of: sides, mm: eighths(3, 9) }).map(({ of, mm }) => `${of} ${mm}`),
      fc.constantFrom('bottom left', 'bottom right', 'top left', 'top right'),
    );
    const bendAt = fc.record({ of: sides, mm: eighths(2, 10) });
    const size = fc.record({ width: eighths(1, 5), depth: eighths(1, 8) });
    const more = fc.record({ width: fc.oneof(fc.constant(0), eighths(0, 2)), depth: eighths(0, 3) });
    fc.assert(
      fc.property(notchAt, bendAt, size, more, (at, { of, mm }, { width, depth }, by) => {
        const row: Row = {
          Section: 'PL1/4X12',
          Length: 12,
          'Notch at': at,
          'Bend at': `${of} ${mm}`,
          'Bend length': 12,
          'Cut by': 'burn',
        };
        const smaller: Row = { ...row, 'Notch width': width, 'Notch depth': depth };
        const larger: Row = { ...row, 'Notch width': width + by.width, 'Notch depth': depth + by.depth };
        const [better, worse] = [rank(smaller), rank(larger)];
        expect(worse, JSON.stringify([smaller, larger])).toBeLessThanOrEqual(better);
      }),
      { numRuns: 400 },
    );
  });
});
