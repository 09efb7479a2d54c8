// Lists in one cell: common practice, no source.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listItems } from '../../../../src/core/row/read/listItems.js';

const item = fc.integer({ min: 1, max: 999 }).map(String);

describe('a list in one cell', () => {
  it('is parted at each of the signs', () => {
    fc.assert(
      fc.property(
        fc.array(item, { minLength: 2, maxLength: 6 }),
        fc.constantFrom('; ', '+', ' & ', ' and ', ', '),
        (items, sign) => {
          expect(listItems(items.join(sign)).items).toEqual(items);
        },
      ),
    );
  });

  it('is left whole where something is missing before or behind a sign, so that nothing reads it', () => {
    fc.assert(
      fc.property(
        fc.array(item, { minLength: 1, maxLength: 4 }),
        fc.constantFrom('+', ' +', ' & ', ' and ', ','),
        fc.boolean(),
        (items, sign, isBefore) => {
          const list = items.join('; ');
          const text = isBefore ? `${sign}${list}` : `${list}${sign}`;
          expect(listItems(text).items).toEqual([text.trim()]);
        },
      ),
    );
  });

  it('may end with a line or a semicolon', () => {
    expect(listItems('70; 80;').items).toEqual(['70', '80']);
    expect(listItems('70\n80\n').items).toEqual(['70', '80']);
  });
});
