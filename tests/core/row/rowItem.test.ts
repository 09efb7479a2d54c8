import { describe, expect, it } from 'vitest';
import { defaultRowItems, readRowItems, rowItems } from '../../../src/core/row/rowItem.js';
import { refusalText } from '../../support/refusal.js';

const names = rowItems.map(({ item }) => item);

describe('readRowItems', () => {
  it('reads one item or several, in their order, without regard to case and spaces', () => {
    for (const item of names) expect(readRowItems(` ${item.toUpperCase()} `, 'Item')).toEqual([item]);
    expect(readRowItems('note; Verdict,use', 'Items')).toEqual(['note', 'verdict', 'use']);
    expect(readRowItems('use, use', 'Items')).toEqual(['use', 'use']);
  });

  it.each(['color', 'verdict, color', 'verdict,', ',', 'constructor'])(
    'refuses %j, with the items there are',
    (text) => {
      const said = refusalText(() => readRowItems(text, 'Items'));
      expect(said).toMatch(/^Items: .* is not an item\. Write verdict, /);
      for (const name of names) expect(said).toContain(name);
    },
  );

  it('quotes the word that is none, shortened and on one line', () => {
    expect(refusalText(() => readRowItems(`use, ${'x'.repeat(99)}\n`, 'Items'))).toContain(
      `'${'x'.repeat(40)}…'`,
    );
  });
});

describe('the items of a row', () => {
  it('have different names and headings, and a meaning each', () => {
    expect(new Set(names).size).toBe(names.length);
    expect(new Set(rowItems.map(({ heading }) => heading)).size).toBe(names.length);
    for (const { meaning } of rowItems) expect(meaning.length).toBeGreaterThan(5);
    for (const item of defaultRowItems) expect(names).toContain(item);
  });
});
