import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { inShopUnit } from '../../../src/core/quantity/shopUnit.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { noHolesSentence, placeOfHole } from '../../../src/core/say/holesOfRowWords.js';
import { holesOfRow } from '../../../src/core/setup/holesOfRow.js';
import { settingTable, shopWith } from '../../support/sampleShop.js';

const shop = shopWith();

function holes(cells: Record<string, CellValue>, inShop = shop) {
  const found = holesOfRow(Object.values(cells), readHeadings(Object.keys(cells)), inShop);
  if (found.is !== 'holes') throw new Error(noHolesSentence(found, inShop.unit));
  return found.holes;
}

function sentence(cells: Record<string, CellValue>): string {
  const found = holesOfRow(Object.values(cells), readHeadings(Object.keys(cells)), shop);
  if (found.is === 'holes') throw new Error('the holes are laid out');
  return noHolesSentence(found, shop.unit);
}

/** x and y in inches, how they are known, and why. */
const shown = (cells: Record<string, CellValue>, inShop = shop) =>
  holes(cells, inShop).map((hole) => [
    hole.xMm === undefined ? '' : inShopUnit(hole.xMm, 'length', 'in'),
    hole.yMm === undefined ? '' : inShopUnit(hole.yMm, 'length', 'in'),
    hole.known,
    placeOfHole(hole),
  ]);

const plate = { Section: 'PL1/2X10', Length: 12 };

describe('holes of a row', () => {
  it('that it gives, are given, without a grade too', () => {
    expect(shown({ ...plate, Hole: '13/16', 'Holes at': 'x2 y3; x9 y8' })).toEqual([
      [2, 3, 'given', ''],
      [9, 8, 'given', ''],
    ]);
    expect(shown({ ...plate, Grade: 'A3x6', Hole: '13/16', 'Holes at': 'x2 y3' })).toHaveLength(1);
  });

  it('that it does not place, are read, and say how', () => {
    const corners = shown({ ...plate, Hole: '4 @ 13/16', End: 2, Edge: 2 });
    expect(corners[0]).toEqual([2, 2, 'given', '']);
    expect(corners.slice(1).map(([, , known, how]) => `${known}: ${how}`)).toEqual(
      Array(3).fill('read: read as one in each corner: Pitch and Gage are blank'),
    );
  });

  it('are given where the shop says how holes without pitch lie', () => {
    const even = shopWith({}, { settings: settingTable({ 'Holes without pitch': 'even' }) });
    const known = shown({ ...plate, Hole: '4 @ 13/16', End: 2, Edge: 2 }, even).map((row) => row[2]);
    expect(known).toEqual(Array(4).fill('given'));
  });

  it('have no distance that the row leaves to choose', () => {
    const angle = { Section: 'L4X3X1/4', Length: 24, Hole: '2 @ 9/16', End: 2, Pitch: 20, Edge: 1.5 };
    expect(shown(angle)).toEqual([
      [2, '', 'not given', 'Leg is blank'],
      [22, '', 'not given', 'Leg is blank'],
    ]);
    expect(holes(angle)[0]?.faces).toEqual(['leg A', 'leg B']);
    const brace = { ...plate, Hole: '9/16', End: 2, Edge: 5, 'Hole 2': '9/16', 'End 2': 2, 'Edge 2': 5 };
    expect(shown(brace)[1]).toEqual(['', 5, 'not given', 'End 2 may be from either end']);
  });

  it('have no distance that hangs on a length that is not given', () => {
    const endless = { Section: 'PL1/2X10', Hole: '2 @ 13/16', Edge: 2, Pitch: 3 };
    expect(shown({ ...endless, End: 2 }).map(([x, , known]) => [x, known])).toEqual([
      [2, 'given'],
      [5, 'given'],
    ]);
    expect(shown({ ...endless, End: 'right 2' })[0]).toEqual(['', 2, 'not given', 'Length is blank']);
    expect(shown({ ...endless, End: '' })[0]?.slice(0, 3)).toEqual(['', 2, 'not given']);
  });

  it('say when they are off the part, and how a slot lies', () => {
    expect(shown({ ...plate, Hole: '13/16', End: 20, Edge: 2 })[0]).toEqual([20, 2, 'given', 'off the part']);
    expect(holes({ ...plate, Hole: '13/16x1', Slot: 'across', End: 2, Edge: 2 })[0]?.direction).toBe(
      'across',
    );
  });
});

describe('a row without holes to lay out', () => {
  it.each([
    ['The row has no holes.', plate],
    [
      'The row is taken as a total: it is no part and has no holes.',
      { Mark: 'TOTAL', Section: null, Qty: 12, Hole: null },
    ],
    ['', { Section: '', Length: '', Hole: '' }],
    ['Section: the cell is blank. Fill it in.', { Section: '', Length: 12, Hole: '13/16' }],
    [
      'RB1 has no flat side to lay holes out on: take their places from the drawing.',
      { Section: 'RB 1', Length: 12, Hole: '5/16' },
    ],
    [
      'The miters meet before the part has its width: 34-41/64 in is needed, 12 in is there. Correct Length or the miters.',
      { ...plate, Hole: '13/16', 'Miter left': 60, 'Miter right': 60, 'Long side': 'bottom' },
    ],
  ])('says %j', (words, cells: Record<string, CellValue>) => {
    expect(sentence(cells)).toBe(words);
  });

  it('says what cannot be read, rather than to leave holes out', () => {
    expect(sentence({ ...plate, Hole: '13/16', End: 2, 'Hole 2': '4-13/16Ø' })).toMatch(
      /^Hole 2: .*may be one hole/,
    );
  });
});
