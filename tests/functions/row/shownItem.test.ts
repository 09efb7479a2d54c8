// The time of a row is the same whenever it is asked for: soon after its check, or when many others were checked since.
import { describe, expect, it } from 'vitest';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { workOnChecked } from '../../../src/core/work/workOnRow.js';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { rowToShow } from '../../../src/functions/row/shownItem.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith();
const headings = readHeadings(['Mark', 'Qty', 'Section', 'Grade', 'Length', 'Press']);
const cells = (at: number) => [`C${at}`, 4, 'FB3/8X4', 'A36', 6 + at / 16, 'Bay A'];

describe('the work on a row', () => {
  it('is worked out from the part that was checked, or from one that is read again', () => {
    const rows = Array.from({ length: 500 }, (_, at) => rowToShow(cells(at), headings, shop));
    for (const [at, row] of rows.entries()) {
      const expected = workOnChecked(checkedPart(cells(at), headings, shop), shop);
      expect(expected.is).not.toBe('blank');
      expect(row.work()).toEqual(expected);
      expect(row.work()).toBe(row.work());
    }
  });
});
