import { describe, expect, it } from 'vitest';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { groupFields, rowFields } from '../../../src/core/row/headings/heading.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { noteOf } from '../../../src/core/say/noteOf.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { shopTables } from '../../support/sampleShop.js';

const shop = readShop(shopTables());
const blanks: CellValue[] = [null, '', '  ', 0, -0];
const names = [...rowFields, ...groupFields].map(({ name }) => name);
const columns = [...names, 'Hole 2', 'Edge 2'];
const filled: Record<string, CellValue> = {
  Mark: 'C1',
  Qty: 4,
  Section: 'FB 3/8x4',
  Grade: 'A36',
  Length: 12,
  Hole: '13/16',
  Holes: 2,
  Bolt: '3/4',
  Edge: 2,
  End: 2,
  Pitch: 6,
  Press: 'Bay A',
};

const headings = readHeadings(columns);

/** The row with one column, and all that are not filled, blank in one form. */
function checked(column: string, blank: CellValue, more = filled) {
  return checkRow(
    columns.map((name) => (name === column ? blank : (more[name] ?? blank))),
    headings,
    shop,
  );
}

describe('a blank cell of a parts list', () => {
  it.each(columns)('in the column %s reads the same in every form', (column) => {
    const [first, ...others] = blanks.map((blank) => checked(column, blank));
    expect(first).toBeDefined();
    for (const other of others) expect(other).toEqual(first);
  });

  it('leaves the row that has nothing else blank, and a subtotal a subtotal', () => {
    for (const blank of blanks) {
      expect(checked('', blank, {})).toEqual({ blank: true });
      expect(checked('', blank, { Mark: 'Subtotal', Qty: 12 })).toEqual({ blank: true, is: 'total' });
    }
  });

  it('is one piece under Qty, and the note says so', () => {
    for (const blank of blanks) {
      const result = checked('Qty', blank);
      expect(result.blank ? '' : noteOf(result, 'in')).toContain('quantity 1 assumed');
    }
  });
});
