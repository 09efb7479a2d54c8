import { describe, expect, it } from 'vitest';
import { recalculatedQuote, shown } from '../../golden/quote.js';
import { cell as at, openExample } from '../support/openExample.js';

const opened = openExample();
const { book } = opened;

describe('the example quote in the grid', () => {
  it('has the verdict of every row that the headless command gives', async () => {
    const { rows } = await recalculatedQuote();
    const table = book.tables.find('Parts');
    expect(table?.columns).toContain('Verdict');
    const seen = new Map<string, string>();
    for (let row = 5; row < 54; row++) {
      const mark = book.value(at(book, 'Quote', `B${row + 1}`));
      seen.set(String(mark ?? ''), String(book.value(at(book, 'Quote', `A${row + 1}`)) ?? ''));
    }
    expect(Object.fromEntries(seen)).toEqual(
      Object.fromEntries([...rows].map(([mark, row]) => [mark, shown(row['Verdict'])])),
    );
  });

  it('spills a list check as far as the list goes', () => {
    const { sheetId } = at(book, 'List check', 'B5');
    expect(book.getters.getSpreadZone({ sheetId, row: 4, col: 1 })).toMatchObject({
      top: 4,
      bottom: 53,
      left: 1,
    });
    expect(book.value(at(book, 'List check', 'B6'))).toBe(book.value(at(book, 'Quote', 'A6')));
  });

  it('shows the formulas as people write them', () => {
    expect(book.formula(at(book, 'Quote', 'A6'))).toBe(
      '=TONROW.ROWCHECK(Parts[[#Headers],[Mark]:[Press]],Parts[[#This Row],[Mark]:[Press]],ShopStamp,"verdict")',
    );
  });

  it('keeps text that looks like a number, a fraction or a date as text', () => {
    expect(book.value(at(book, 'Quote', 'F6'))).toBeTypeOf('string');
    expect(book.value(at(book, 'Quote', 'G6'))).toBeTypeOf('string');
  });

  it('evaluates every formula of it', () => {
    const kept = opened.formulas.filter((formula) => formula.kept !== undefined);
    expect(kept.map(({ display, kept: why }) => `${display}: ${why}`)).toEqual([]);
  });
});
