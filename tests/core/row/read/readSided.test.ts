import { describe, expect, it } from 'vitest';
import { sidesOf } from '../../../../src/core/row/read/faces.js';
import { readEdge, readEnd } from '../../../../src/core/row/read/readSided.js';
import { refusalText } from '../../../support/refusal.js';
import { inInches, lengthsIn, sectionOf } from './support.js';

const length = (text: string) => lengthsIn('in')(text);
const end = (text: string) => inInches(readEnd(text, 'End', length));
const edge = (text: string, section = 'PL1/4X6', leg?: string) =>
  inInches(readEdge(text, 'Edge', length, sidesOf(sectionOf(section), leg)));

describe('an end distance', () => {
  it.each(['1-1/2', '1 1/2"', '1.5 in', '1-1/2 TYP', '1-1/2 typ.'])(
    '%s is from no end in particular',
    (text) => {
      expect(end(text)).toEqual({ end: 1.5 });
    },
  );

  it.each([
    'right 1-1/2',
    '1-1/2 right',
    '1-1/2 R',
    'RH 1-1/2',
    '1-1/2 from right end',
    '1-1/2 from the right hand end',
    'right: 1-1/2',
    '1-1/2 (right)',
  ])('%s is from the right end', (text) => {
    expect(end(text)).toEqual({ end: 1.5, endFrom: 'right' });
  });

  it('may name the left end, too', () => {
    for (const text of ['left 2', '2 L', 'LH 2', '2 from left'])
      expect(end(text)).toEqual({ end: 2, endFrom: 'left' });
  });

  it('at both ends is refused with the way to write it', () => {
    for (const text of ['2 each end', 'both ends 2', '2 ea. end', '2 both']) {
      expect(refusalText(() => end(text))).toBe(
        `End: '${text}' is at both ends. Write the distance alone here, and the holes as 2 each end under Holes.`,
      );
    }
  });

  it.each([
    'top 2',
    'right',
    'left 2, right 3',
    'right 2 left',
    '2 far',
    '2 rt',
    'right 2-',
    'right 1/',
    'right -2',
  ])('%s is refused', (text) => {
    expect(refusalText(() => end(text))).toMatch(/^(?:End|Cell): .+\. .+\.$/);
  });
});

describe('an edge distance', () => {
  it.each<[string, unknown]>([
    ['1-1/2', { edge: 1.5 }],
    ['2 TYP', { edge: 2 }],
    ['top 1-1/2', { edge: 1.5, edgeFrom: 'top' }],
    ['1-1/2 from top', { edge: 1.5, edgeFrom: 'top' }],
    ['1-1/2 (top)', { edge: 1.5, edgeFrom: 'top' }],
    ['btm 1 1/2"', { edge: 1.5, edgeFrom: 'bottom' }],
  ])('of a plate: %s', (text, distance) => {
    expect(edge(text)).toEqual(distance);
  });

  it('of a leg is from its toe', () => {
    expect(edge('toe 1-1/2', 'L4X3X1/4')).toEqual({ edge: 1.5 });
    expect(refusalText(() => edge('heel 1-1/2', 'L4X3X1/4'))).toContain('under Gage');
    expect(refusalText(() => edge('top 1-1/2', 'L4X3X1/4'))).toContain('Edge is from its toe');
    expect(refusalText(() => edge('toe 1-1/2'))).toContain('Write bottom 1-1/2 or top 1-1/2.');
  });

  it('of a channel goes by its face', () => {
    expect(edge('top 2', 'C8X11.5', 'web')).toEqual({ edge: 2, edgeFrom: 'top' });
    expect(edge('toe 1', 'C8X11.5', 'flange')).toEqual({ edge: 1 });
    expect(refusalText(() => edge('top 1', 'C8X11.5', 'flange'))).toContain('has no top');
  });

  it('from an end is refused with where it belongs', () => {
    for (const text of ['2 from end', 'from the end 2', '2 (from end)'])
      expect(refusalText(() => edge(text))).toBe(
        `Edge: '${text}' is from an end. Give the distance under End.`,
      );
  });

  it.each([
    'left 2',
    '2 right',
    'center',
    'CL',
    '2 each',
    'top',
    'top 1-',
    'top 1/',
    'top/2',
    'top 2 3',
    '2 t',
  ])('%s is refused', (text) => {
    expect(refusalText(() => edge(text))).toMatch(/^(?:Edge|Cell): .+\. .+\.$/);
  });
});
