import { describe, expect, it } from 'vitest';
import { readShop } from '../../../src/core/shop/readShop.js';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { bayA, bayB, type PressCells, pressTable, shopWith } from '../../support/sampleShop.js';

const brace: Row = {
  Grade: 'A36',
  Press: 'Bay A',
  Section: 'L2X2X3/16',
  Length: 24,
  Qty: 2,
  'Miter left': 45,
  'Miter leg': 'long',
};
/** One cut makes a right end with its long point at the heel and a left end with it at the toe: both right-hand. */
const right: Row = { ...brace, 'Long side': 'left toe' };
const left: Row = { ...brace, 'Long side': 'left heel' };
const frame: Row = { ...brace, 'Miter right': 45, 'Long side': 'heel' };

const on = (position: string | null, row: Row, cells: PressCells = {}) =>
  checkedRow(row, shopWith({ 'Angle shear leg position': position, ...cells }));

describe('the hand of the miters of an angle', () => {
  it.each([
    ['down', right, 'OK'],
    ['down', left, 'No station'],
    ['down', frame, 'No station'],
    ['up', right, 'No station'],
    ['up', left, 'OK'],
    ['up', frame, 'No station'],
    ['both', right, 'OK'],
    ['both', left, 'OK'],
    ['both', frame, 'OK'],
  ] as const)('with the leg %s: %j is %s', (position, row, verdict) => {
    expect(on(position, row).verdict).toBe(verdict);
  });

  it('that a press does not make is told with the hand it makes', () => {
    expect(on('down', left).note).toContain(
      'Bay A miters angles with the standing leg down only, which makes right-hand miters; the part needs left-hand ones. Saw the miter.',
    );
    expect(on('up', frame).note).toContain(
      'with the standing leg up only, which makes left-hand miters; the part needs both hands. Saw the miter.',
    );
  });

  it('is open where Long side is blank and the press makes one hand', () => {
    const { verdict, note } = on('down', brace);
    expect(verdict).toBe('Not checked');
    expect(note).toContain(
      'Long side is blank, so it is not known whether a press that makes one hand of miter makes it. Fill it in.',
    );
    expect(on('both', brace).verdict).toBe('OK');
  });

  it.each([right, left, frame, brace])('is not checked where the press does not say: %j', (row) => {
    const { verdict, note } = on(null, row);
    expect(verdict).toBe('Not checked');
    expect(note).toContain('Angle shear leg position of Bay A is blank, so it was not checked.');
  });

  it('is not asked of a square end, a flat, a sawn angle, nor of two equal legs that are both mitered', () => {
    const both: Row = { ...brace, 'Miter leg': 'both' };
    const square: Row = { ...brace, 'Miter left': 0 };
    const flat: Row = { ...brace, Section: 'FB 1/4X2', 'Miter leg': '' };
    for (const row of [both, square, flat, { ...frame, 'Cut by': 'saw' }]) {
      for (const position of ['down', null]) {
        expect(on(position, row).note).not.toMatch(/leg position|hand/i);
      }
    }
  });

  it('is open where two equal legs might both be mitered, which has no hand', () => {
    expect(on('down', { ...left, 'Miter leg': '' }).verdict).toBe('Not checked');
    expect(on('down', { ...right, 'Miter leg': '' }).verdict).toBe('OK');
    const unequal: Row = { ...left, Section: 'L3X2X3/16', 'Miter leg': '' };
    expect(on('down', unequal).verdict).toBe('No station');
  });

  it('of a press that miters one leg is known where the row gives the leg', () => {
    const one: PressCells = { 'Angle shear legs mitered': 'one' };
    expect(on('both', frame, one).verdict).toBe('OK');
    expect(on('down', frame, one).verdict).toBe('No station');
    expect(on('both', { ...frame, 'Miter leg': '' }, one).verdict).toBe('Not checked');
  });

  it('of right-hand and left-hand pieces in one row needs a press that makes both', () => {
    const pair: Row = { ...right, Qty: '2R 2L' };
    expect(on('down', pair).verdict).toBe('No station');
    expect(on('both', pair).verdict).toBe('OK');
  });

  it('asks for a word that the cell of the press may hold', () => {
    const { verdict, note } = on('sideways', right);
    expect(verdict).toBe('Check input');
    expect(note).toContain('Write down, up or both.');
  });

  it('sends a row without a press to one that makes it', () => {
    const presses = pressTable({
      'Bay A': { ...bayA, 'Angle shear leg position': 'down' },
      'Bay B': { ...bayB, 'Angle shear leg position': 'up' },
    });
    const shop = readShop({ presses });
    const pressOf = (row: Row) => checkedRow({ ...row, Press: null }, shop).press;
    expect([right, left].map(pressOf)).toEqual(['Bay A', 'Bay B']);
    expect(checkedRow({ ...frame, Press: null }, shop).verdict).toBe('No station');
  });
});
