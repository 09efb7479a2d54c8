// A row that says work and has no part is never passed over: it has a word of its own, whatever the column.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { rowKindOf } from '../../../src/core/row/rowKind.js';
import { wordOf } from '../../../src/core/row/rowResult.js';
import { rowItemQuantity } from '../../../src/core/say/rowItemQuantity.js';
import { shopWith } from '../../support/sampleShop.js';

const names = [
  'Mark',
  'Drawing',
  'Qty',
  'Section',
  'Description',
  '',
  'Grade',
  'Length',
  'Hole',
  'Notch at',
  'Press',
];
const headings = readHeadings(names);
const shop = shopWith();
const lines = [
  ...[
    'w/ cope both ends',
    'notch 2x1 one end',
    'miter 45 LH end',
    '+ 2 slots 13/16 x 1-3/4',
    'csk 4 holes far side',
  ],
  ...[
    'bend 90 at 12"',
    'see detail 4 for holes',
    'drill only',
    '(2) 13/16 HOLES THIS END',
    'field drill 9/16',
  ],
  ...['galv. vent hole each end', 'both flanges', 'Langlöcher beidseitig'],
];
const titles = [
  'PUNCHED PLATES',
  'Bent angles',
  'HANDRAIL w/ KICKPLATE',
  'Notched beams, level 2',
  'MITERED FRAMES',
];
const rowWith = (cells: Readonly<Record<number, string | number>>) => names.map((_, at) => cells[at] ?? null);

describe('a row that says work and has no part', () => {
  it.each(names.map((name, at) => [name || 'no heading', at] as const))('is told below %s', (_, at) => {
    for (const line of lines) {
      const { result, part } = checkedPart(rowWith({ [at]: line }), headings, shop);
      expect(wordOf(result), line).toBe('No part');
      expect(part).toBeUndefined();
      const note = rowItemQuantity(result, 'note', 'in').value;
      expect(note).toContain(line.replace(/"$/, ''));
      expect(note).toContain('no part stands in this row');
    }
  });

  it('is told where its words are split over cells, or a column of work is all that is filled', () => {
    for (const cells of [
      { 0: 'w/', 3: 'cope both ends' },
      { 2: 2, 3: 'slots 13/16 x 1-3/4' },
      { 8: '13/16' },
      { 9: 'left end' },
    ])
      expect(wordOf(checkedPart(rowWith(cells), headings, shop).result)).toBe('No part');
  });

  it('has no number that could be added up', () => {
    const { result } = checkedPart(rowWith({ 2: 2, 3: 'slots 13/16 x 1-3/4' }), headings, shop);
    for (const item of ['use', 'force', 'hits', 'mass', 'long', 'short'] as const)
      expect(rowItemQuantity(result, item, 'in').value).toBe('');
  });

  it('is no title, and a title is not told as work', () => {
    for (const title of titles)
      for (const at of [0, 3]) expect(rowKindOf(rowWith({ [at]: title }), headings), title).toBe('title');
  });

  it('is never a part with a section that can be read, whatever stands beside it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('FB 3/8x4', 'L3X3X1/4', 'PL 3/8 x 6', 'RB 1'),
        fc.constantFrom(...lines, ...titles),
        fc.constantFrom(0, 1, 4, 6, 7, 8, 9),
        (section, text, at) => {
          expect(rowKindOf(rowWith({ 3: section, [at]: text }), headings)).toBe('part');
        },
      ),
    );
  });
});
