// What a row shows is the same whenever it is asked for: soon after its check, or when its part was let go.
import { describe, expect, it } from 'vitest';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { rowItems } from '../../../src/core/row/rowItem.js';
import { ShownRow } from '../../../src/functions/row/shownRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith();
const headings = readHeadings(['Mark', 'Qty', 'Section', 'Grade', 'Length', 'Hole', 'Edge', 'Press']);
const rows = [
  ['C1', 4, 'FB3/8X4', 'A36', 6, '13/16', 1.5, 'Bay A'],
  ['C2', 4, 'L3x3x1/4', 'A36', 60, '13/16', 1, 'Bay B'],
  ['C3', 4, 'FB3/8X4', 'A36', 'six', '13/16', 1.5, 'Bay A'],
  ['see below', '', '', '', '', '', '', ''],
];

describe('a row that is remembered', () => {
  it.each(rows)('%s shows the same items before and after its part is let go', (...cells) => {
    for (const unit of ['in', 'mm'] as const) {
      const of = { cells, headings, shop, unit };
      const [fresh, early, late] = [new ShownRow(of), new ShownRow(of), new ShownRow(of)];
      late.letGo();
      for (const { item } of rowItems) {
        const expected = fresh.quantity(item);
        expect(late.quantity(item), item).toEqual(expected);
        if (item === 'minutes') early.letGo();
        expect(early.quantity(item), item).toEqual(expected);
      }
      expect(late.work()).toEqual(fresh.work());
    }
  });
});
