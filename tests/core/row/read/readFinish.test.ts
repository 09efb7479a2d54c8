import { describe, expect, it } from 'vitest';
import { readFinish } from '../../../../src/core/row/read/readFinish.js';

describe('a finish', () => {
  it.each([
    'galvanized',
    'GALV.',
    'galvanised',
    'HDG',
    'H.D.G.',
    'H.D. GALV',
    'hot-dip galv',
    'hot dipped',
    'ASTM A123',
    'HDG + paint',
    'galv after fab',
    'no paint, galv',
    'feuerverzinkt',
    'verzinkt',
    'duplex',
    'thermisch verzinkt',
    'tZn',
    'galvanisé',
  ])('%s is a bath of zinc', (text) => {
    expect(readFinish(text)).toBe('galvanized');
  });

  it.each([
    null,
    '',
    'none',
    'black',
    'mill finish',
    'paint',
    'SHOP PRIMER',
    'SP-6 prime',
    'powder coat',
    'no galv',
    'not HDG',
    'no. galv',
    'NO HOT DIP',
    'w/o galv',
    'NON-GALV',
    'pre-galv',
    'cold galv',
    'electrogalvanized',
    'zinc rich primer',
    'galv paint',
    'galvalume',
    'galv bolts',
    'paint (not galv)',
  ])('%s changes nothing', (text) => {
    expect(readFinish(text)).toBe('nothing');
  });

  it.each(['zinc plated', 'G90', 'TBG', 'red', 'P1'])('%s is not known, and the note says so', (text) => {
    expect(readFinish(text)).toBe('unknown');
  });
});
