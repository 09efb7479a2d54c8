import { describe, expect, it } from 'vitest';
import type { PartEnd } from '../../../../src/core/row/job/rowJob.js';
import { readLongSide, readMiterLeg } from '../../../../src/core/row/read/readMiterSides.js';
import { refusalText } from '../../../support/refusal.js';
import { sectionOf } from './support.js';

const both: readonly PartEnd[] = ['left', 'right'];
const longSide = (text: string, section = 'PL1/4X4', ends = both) =>
  readLongSide(text, 'Long side', { section: sectionOf(section), ends });
const miterLeg = (cell: string | number, section = 'L4X3X1/4', ends = both) =>
  readMiterLeg(cell, 'Miter leg', { section: sectionOf(section), ends }, 'in');

describe('the side that keeps the long point', () => {
  it.each(['top', 'TOP', 'upper', 'top edge', 'top both ends', 'both top', 'long point top', 'LP top'])(
    '%s is the top at each mitered end',
    (text) => {
      expect(longSide(text)).toEqual({ left: 'top', right: 'top' });
      expect(longSide(text, 'PL1/4X4', ['right'])).toEqual({ right: 'top' });
    },
  );

  it.each([
    'left top, right bottom',
    'top left; bottom right',
    'left: top, right: bottom',
    'L top, R btm',
    'left end top & right end bottom',
  ])('%s is one for each end', (text) => {
    expect(longSide(text)).toEqual({ left: 'top', right: 'bottom' });
  });

  it.each([
    ['links oben, rechts unten', 'PL1/4X4', { left: 'top', right: 'bottom' }],
    ['boven', 'PL1/4X4', { left: 'top', right: 'top' }],
    ['links boven; rechts onder', 'PL1/4X4', { left: 'top', right: 'bottom' }],
    ['Ferse', 'L3X3X1/4', { left: 'heel', right: 'heel' }],
    ['links hiel, rechts teen', 'L3X3X1/4', { left: 'heel', right: 'toe' }],
  ])('%s of %s is read in German and Dutch', (text, section, sides) => {
    expect(longSide(text, section)).toEqual(sides);
  });

  it('is heel or toe of an angle', () => {
    expect(longSide('heel', 'L3X3X1/4')).toEqual({ left: 'heel', right: 'heel' });
    expect(longSide('left heel, right toe', 'L3X3X1/4')).toEqual({ left: 'heel', right: 'toe' });
    for (const text of ['top', 'toe out', 'toes in'])
      expect(refusalText(() => longSide(text, 'L3X3X1/4'))).toContain('Write heel or toe');
  });

  it.each([
    'top, bottom',
    'top/bottom',
    'left top, left bottom',
    'left',
    'heel',
    'outside',
    'T',
    'top 2',
    'left right top',
  ])('%s is refused', (text) => {
    expect(refusalText(() => longSide(text))).toMatch(/^Long side: .+\. .+\.$/);
  });

  it('is refused at an end that is square', () => {
    expect(refusalText(() => longSide('right top', 'PL1/4X4', ['left']))).toContain(
      'the right end is not mitered',
    );
    expect(refusalText(() => longSide('top', 'PL1/4X4', []))).toContain('neither end is mitered');
  });
});

describe('the leg that is mitered', () => {
  it.each<[string | number, string]>([
    ['both', 'both'],
    ['Both legs', 'both'],
    ['long', 'long'],
    ['LONG LEG', 'long'],
    ['the short leg', 'short'],
    ['4', '4'],
    [4, '4'],
    ['leg 4', '4'],
    ['4" leg', '4"'],
  ])('%s', (cell, leg) => {
    expect(miterLeg(cell)).toBe(leg);
  });

  it.each(['one', 'each leg', '5', 'vertical', 'OSL', 'leg', 'long, short'])('%s is refused', (cell) => {
    expect(refusalText(() => miterLeg(cell))).toContain("Write both, long, short or the leg's size.");
  });

  it('is refused on a plate and without a miter', () => {
    expect(refusalText(() => miterLeg('both', 'PL1/4X4'))).toContain('has no legs');
    expect(refusalText(() => miterLeg('both', 'L4X3X1/4', []))).toContain('neither end is mitered');
  });
});
