import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { listToolOrder } from '../../../src/core/work/listToolOrder.js';
import { refusal } from '../../support/refusal.js';
import { shopWith } from '../../support/sampleShop.js';

const tools: CellValue[][] = [
  ['Press', 'Kind', 'Size', 'Holder'],
  ['any', 'punch', '13/16', 'Sleeve 1'],
  ['any', 'punch', '11/16', ' sleeve  1'],
  ['any', 'punch', '9/16', null],
  ['any', 'die', '27/32', null],
  ['any', 'die', '23/32', null],
  ['any', 'die', '19/32', null],
];
const shop = shopWith({}, { tools });
const [press] = shop.presses;
const titles = ['Mark', 'Section', 'Grade', 'Length', 'Hole', 'Holes', 'Edge', 'End', 'Press'];
const row = (mark: CellValue, hole: CellValue, bay: CellValue = null, section = 'FB 3/8x6'): CellValue[] => [
  ...[mark, section, 'A36', 12],
  ...(hole === null ? [null, null, null, null] : [hole, 1, 3, 4]),
  bay,
];

function order(...rows: CellValue[][]) {
  if (!press) throw new Error('the sample has no press');
  return listToolOrder([titles, ...rows], press, shop);
}

describe('the marks of a list by their tools', () => {
  it('are those of the press, and those that name none: a 0 is a blank cell', () => {
    const { marks, elsewhere } = order(
      row('A', '13/16', ' bay a'),
      row('B', '13/16', 0),
      row('C', '13/16', 'Bay B'),
    );
    expect(marks).toEqual(['A', 'B']);
    expect(elsewhere).toBe(1);
  });

  it('are named by their row where Mark is blank; blank rows and subtotals are none', () => {
    const { marks, left } = order(
      titles.map(() => null),
      row(null, '13/16'),
      ['Subtotal', ...titles.slice(1).map(() => null)],
    );
    expect(marks).toEqual(['row 2']);
    expect(left).toEqual([]);
  });

  it('have one holder where its name is written in other ways, and one of its own where it is blank', () => {
    const { order: found, withoutHolder } = order(row('A', '13/16'), row('B', '9/16'), row('C', '11/16'));
    expect(found.byMark.operations.map(({ mark }) => mark)).toEqual([0, 2, 1]);
    expect(found.byMark.changes).toEqual({ holders: 1, tools: 2 });
    expect(withoutHolder.map(({ written }) => written)).toEqual(['Ø9/16']);
  });

  it('are left out with the reason where the press does not make them; those without holes are counted', () => {
    const thick = row('D', null, null, 'FB 1x6');
    const { left, notPunched } = order(
      row('A', '1/4', null, 'FB 1/2x6'),
      row('B', '13/16', null, 'FB 0x0'),
      row('C', null),
      thick,
    );
    expect(left.map(({ mark, verdict }) => `${mark}: ${verdict}`)).toEqual([
      'A: Hole too small',
      'B: Check input',
    ]);
    // D is too thick to be cut, which is not asked here.
    expect(notPunched).toBe(2);
  });

  it('refuse a list without a Section column', () => {
    if (!press) throw new Error('the sample has no press');
    expect(refusal(() => listToolOrder([['Mark'], ['A']], press, shop)).argument).toBe('Headings');
  });
});
