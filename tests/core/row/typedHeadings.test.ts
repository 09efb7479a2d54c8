// Sentences name a cell by the heading that the reader of the list sees.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { bayAInMillimeters, settingTable, shopWith } from '../../support/sampleShop.js';

const inMm = shopWith(bayAInMillimeters, { settings: settingTable({ Units: 'mm', 'Edge code': 'EN' }) });
const german: Row = {
  Profil: 'FL 100x10',
  Werkstoff: 'S235',
  Länge: 500,
  'Bohrung Ø': 18,
  'ANZAHL LÖCHER': 4,
  e1: 40,
  e2: 30,
  Lochabstand: 60,
  Presse: 'Bay A',
};
const told = (more: Row) => checkedRow({ ...german, ...more }, inMm).note;

describe('a heading in a sentence', () => {
  it.each([
    ['a blank length', { Länge: null }, 'Länge is blank, so'],
    ['blank distances', { e1: null, Lochabstand: null }, 'Hole: e1 and Lochabstand are blank, so'],
    ['a hole beside the part', { e2: 130 }, 'Correct e2.'],
    [
      'a count that the hole contradicts',
      { 'Bohrung Ø': '2 @ 18' },
      'ANZAHL LÖCHER: it says 4, Bohrung Ø says 2.',
    ],
    [
      'distances without a hole',
      { 'Bohrung Ø': null, 'ANZAHL LÖCHER': null },
      'Bohrung Ø: e2, e1 and Lochabstand are given but no hole size.',
    ],
    ['a blank section', { Profil: null }, 'Profil: the cell is blank.'],
    ['a cell that cannot be read', { 'ANZAHL LÖCHER': '?' }, "ANZAHL LÖCHER: '?' is not a number."],
    [
      'a length that the section contradicts',
      { Profil: 'FL 100x10x600' },
      'Länge: the section says 600 mm, this cell 500 mm.',
    ],
  ])('of %s stands as it was typed', (_, more, expected) => {
    expect(told(more)).toContain(expected);
  });

  it('of a notch, corner and bend stands as it was typed', () => {
    const row = { Section: 'PL1/4X6', Grade: 'A36', Length: 12, Press: 'Bay A' };
    const note = (more: Row) => checkedRow({ ...row, ...more }, shopWith()).note;
    expect(note({ 'NOTCH WIDTH': 1, 'NOTCH DEPTH': null })).toContain(
      'NOTCH DEPTH: a notch needs its width and its depth.',
    );
    expect(note({ 'Corner Clip': null, CORNERS: 2 })).toContain(
      'Corner Clip: corners are counted but the size is blank.',
    );
    expect(note({ BENDS: 2, 'BEND LENGTH': null })).toContain(
      'BEND LENGTH: bends are counted but their length is blank.',
    );
  });

  it('is the name of the column where the list has none', () => {
    expect(
      checkedRow({ Section: 'FL 100x10', Grade: 'S235', Hole: 18, Press: 'Bay A' }, inMm).note,
    ).toContain('Length is blank, so');
  });
});
