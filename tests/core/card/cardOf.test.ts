import { describe, expect, it } from 'vitest';
import { cardOf } from '../../../src/core/card/cardOf.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import type { OperatorSteps } from '../../../src/core/work/operatorSteps.js';
import { operatorSteps } from '../../../src/core/work/operatorSteps.js';
import { shopWith } from '../../support/sampleShop.js';

const headings = [
  'Mark',
  'Dwg',
  'Rev',
  'Qty',
  'Section',
  'Grade',
  'Length',
  'Hole',
  'Holes',
  'Bolt',
  'Edge',
  'End',
];
const row: CellValue[] = ['P1', 'GT-1', 'B', 4, 'PL3/8X8', 'A36', 12, '13/16', 1, '3/4', 4, 6];
const shop = shopWith({});

const changed = <Cell>(cells: readonly Cell[], at: number, to: Cell): Cell[] =>
  cells.map((cell, own) => (own === at ? to : cell));

function cardWith(
  cells: readonly CellValue[],
  steps?: OperatorSteps,
  names: readonly CellValue[] = headings,
) {
  const read = readHeadings(names);
  const checked = checkedPart(cells, read, shop);
  return cardOf(cells, read, checked, steps ?? operatorSteps(checked, shop), 'in');
}

describe('what is on a card', () => {
  it('is the head as typed, a bare length with the unit of the shop', () => {
    expect(cardWith(row)?.head).toEqual({
      mark: 'P1',
      drawing: 'GT-1',
      revision: 'B',
      qty: '4',
      section: 'PL3/8X8',
      grade: 'A36',
      length: '12 in',
    });
    expect(cardWith(changed(row, 6, "1'-0"))?.head.length).toBe("1'-0");
    expect(cardWith(changed(row, 6, '300 mm'))?.head.length).toBe('300 mm');
    expect(cardWith(changed(row, 3, null))?.head.qty).toBe('1');
  });

  it('has the unit that the heading states', () => {
    const names = changed(headings, 6, 'Length (ft)');
    expect(cardWith(changed(row, 6, 2), undefined, names)?.head.length).toBe('2 ft');
  });

  it('has the length of the section where it has no cell', () => {
    expect(cardWith(changed(changed(row, 4, "PL3/8X8X1'-0"), 6, null))?.head.length).toBe('12 in');
  });

  it('takes the bars and the next operation from the steps', () => {
    const card = cardWith(row, {
      is: 'steps',
      press: 'Bay A',
      steps: [
        {
          action: 'pull stock',
          notes: [{ is: 'bars', count: 2, designation: 'PL3/8X8', grade: 'A36', lengthMm: 6096 }],
        },
        { action: 'elsewhere', notes: [{ is: 'next', route: 'drill' }] },
      ],
    });
    expect(card).toMatchObject({ bars: { count: 2, lengthMm: 6096 }, next: 'drill', cautions: [] });
  });

  it('has reasons instead of steps where there are none', () => {
    expect(cardWith(row, { is: 'reasons' })?.body).toEqual({ is: 'reasons' });
    const notGiven = { is: 'places not given', groups: [1], columns: [] } as const;
    expect(cardWith(row, notGiven)?.body).toEqual(notGiven);
    expect(cardWith(changed(row, 4, 'PL5X8'))?.body).toEqual({ is: 'reasons' });
    expect(cardWith(changed(row, 4, 'nonsense'))?.part).toBeUndefined();
  });

  it('names the faces with holes, the first where none has any', () => {
    expect(cardWith(row)?.part?.faces).toEqual(['plate']);
    expect(cardWith([...row.slice(0, 7), null, null, null, null, null])?.part?.faces).toEqual(['plate']);
  });

  it('is none for a blank row', () => {
    expect(cardWith(row.map(() => null))).toBeUndefined();
  });
});
