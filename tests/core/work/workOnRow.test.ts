import { expect, it } from 'vitest';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/readHeadings.js';
import { workBasis } from '../../../src/core/say/workBasis.js';
import { workOnChecked } from '../../../src/core/work/workOnRow.js';
import { shopWith } from '../../support/sampleShop.js';

const headings = readHeadings(['Section', 'Grade', 'Length', 'Hole', 'Holes', 'Press']);

it('a row with a cell that cannot be read has no time: what it says there would be left out', () => {
  const shop = shopWith();
  const cells = ['PL3/8X6', 'A36', '8', '4-13/16Ø', null, 'Bay A'];
  const work = workOnChecked(checkedPart(cells, headings, shop), shop);
  expect(work).toEqual({ is: 'not made', verdict: 'Check input' });
  expect(workBasis(work)).toBe('No time: the row is Check input.');
});
