// A text beside a part that gives a size of its own keeps the row from OK; the part's own sizes may be repeated.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { givesOtherCount, givesOtherSize } from '../../../src/core/row/sizesInText.js';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith();
const plate: Row = {
  Mark: 'S4',
  Qty: 2,
  Section: 'FB3/8X6',
  Grade: 'A36',
  Length: 12,
  Press: 'Bay A',
  Hole: '13/16',
  Holes: 2,
  Edge: 3,
  End: 3,
  Pitch: 6,
};
const verdict = (row: Row) => checkedRow(row, shop).verdict;

describe('a size in a text', () => {
  it.each([
    ...[
      "6'-0 long",
      '1/2 PL',
      'Ø1-1/4 for pin',
      'GOL 2 1/2',
      '100x50',
      'bundle of 2x4',
      '22 mm plate',
      '9" c-c',
    ],
    ...[
      'change to 1/2 PL',
      'revise to 3/8x4',
      'toe plate 4" high',
      '1/16 shim',
      't=10',
      'L = 250 mm',
      '1,500 mm',
      '6 1/3" wide',
    ],
    ...['plate 5/8', "make 11'-6", '7/8 pin', 'ø 22', '3 1/4" from end', '1½" slot for pin'],
  ])('keeps its row from OK where no cell gives it: %s', (text) => {
    expect(verdict(plate)).toBe('OK');
    expect(verdict({ ...plate, Remark: text })).toBe('OK so far');
  });

  it.each([
    ...[
      'FB 3/8x6',
      '12" long',
      "1'-0",
      'use 13/16',
      '3/4 A325 bolts',
      '(2) 3/4 x 2-1/2 A325 bolts',
      '304.8 mm long',
    ],
    ...[
      '1/4 fillet weld',
      'weld 1/4 both sides',
      '3/16 FW',
      '1/4" gap',
      'paint 3 mils',
      "from 20'-0 stock",
      'seal weld 1/4',
      '1/4 seal weld',
    ],
    ...[
      'shop weld to W12x26',
      'bolts to col HSS 6x6x3/8',
      'weld to 1/2 gusset',
      'bearing plate for 3/4 anchor bolts',
    ],
    ...["EL 112'-6", `T.O.S. +98'-3 1/2"`, 'Level 2', 'grid B/3', 'see 3/S-201', 'sheet 1/2', 'load 3/4'],
    ...[
      'ship 3/15/26',
      'rev 2 11/30/26',
      '1/2026',
      'lot 14',
      'price $12.50',
      '12.50 lb',
      '3 of 4',
      'P.O. 4500012345',
    ],
  ])('changes nothing where it is the part’s own, or of something else: %s', (text) => {
    expect(verdict({ ...plate, Remark: text })).toBe('OK');
  });

  it('is no size of the part below a heading of places and days', () => {
    for (const Heading of ['Location', 'Elev.', 'Ship date', 'Grid', 'Load'])
      expect(verdict({ ...plate, [Heading]: `12'-6 1/2"` })).toBe('OK');
  });

  it('may be any size that the row gives, in inches or in mm', () => {
    const sixteenths = fc.integer({ min: 1, max: 4000 });
    fc.assert(
      fc.property(sixteenths, sixteenths, fc.boolean(), (own, other, inMm) => {
        const mm = (parts: number) => (parts * 25.4) / 16;
        const text = inMm
          ? `${mm(own).toFixed(1)} mm`
          : `${Math.floor(own / 16)} ${own % 16}/16"`.replace(/ 0\/16/, '');
        const written = own % 16 === 0 || own > 16 || inMm ? text : `${own}/16"`;
        expect(givesOtherSize(written, () => [mm(own), 1e6], 'in')).toBe(false);
        expect(givesOtherSize(written, () => [mm(other)], 'in')).toBe(Math.abs(mm(own) - mm(other)) > 0.45);
      }),
    );
  });

  it('takes time by the length of the text', () => {
    expect(verdict({ ...plate, Remark: `${'paint '.repeat(60)} 1/2` })).toBe('OK so far');
    const long = "1 1/2 x 3'- ".repeat(5_000);
    expect(givesOtherSize(long, () => [], 'in')).toBe(true);
  });
});

describe('a bolt in a text', () => {
  it('is another than the row has where no hole of it is for that bolt', () => {
    expect(verdict({ ...plate, Remark: 'M20 bolts' })).toBe('OK so far');
    const metric = { ...plate, Hole: '22 mm', Remark: 'M20 bolts' };
    expect(checkedRow(metric, shop).open).not.toContain('M20');
    expect(checkedRow({ ...metric, Remark: 'M24 x 60 bolts' }, shop).open).toContain('M24');
    expect(verdict({ ...plate, Remark: 'ship with M20' })).toBe('OK');
  });
});

describe('a count in a text', () => {
  it.each(['qty 8', "8 req'd", '8 REQUIRED', '(8) pcs', 'make 8', '8 thus', '12 assys'])(
    'keeps its row from OK where the quantity is another: %s',
    (text) => {
      expect(verdict({ ...plate, Remark: text })).toBe('OK so far');
      expect(givesOtherCount(text, Number(/\d+/.exec(text)?.[0]))).toBe(false);
    },
  );

  it.each(["2 req'd", 'qty 2', '3 of 4 pcs', 'EL 104 8 req', 'stair 2', 'pcs'])(
    'changes nothing: %s',
    (text) => {
      expect(verdict({ ...plate, Remark: text })).toBe('OK');
    },
  );
});

describe('a column of sizes that is not read', () => {
  it.each([
    ...[
      ['Length c-c', 9] as const,
      ['Overall length', 12.5] as const,
      ['LG', 4] as const,
      ['Feet', 6] as const,
    ],
    ...[['Ship length', '14'] as const, ['Depth', 2] as const, ['Height (mm)', 500] as const],
  ])('keeps its row from OK where it differs from what the row gives: %s %s', (heading, cell) => {
    expect(verdict({ ...plate, [heading]: cell })).toBe('OK so far');
  });

  it.each([
    ...[
      ['Length O-O', 12] as const,
      ['Length ft-in', `1'-0`] as const,
      ['Feet', 1] as const,
      ['Depth', 6] as const,
    ],
    ...[['Total length', 120] as const, ['Weld length', 5] as const, ['Stock length', 240] as const],
  ])('changes nothing where it is the same, or of something else: %s %s', (heading, cell) => {
    expect(verdict({ ...plate, [heading]: cell })).toBe('OK');
  });
});

describe('a column of counts that is not read', () => {
  it('keeps its row from OK where the part is made more often than its quantity says', () => {
    for (const heading of ['Multiplier', 'No. of assemblies', 'Assy qty', 'Sets', 'Times'])
      for (const count of [2, '4']) expect(verdict({ ...plate, [heading]: count })).toBe('OK so far');
    expect(verdict({ ...plate, 'Total qty': 8 })).toBe('OK so far');
  });

  it.each([
    "REQ'D",
    "QTY REQ'D",
    'Quan',
    'No. Pcs',
    'EA',
    "No. Req'd",
    'Qty ea',
    'Qty/Flight',
    'NO.',
    '#',
    'Count',
  ])('is no quantity of 1 where the list has no other: %s', (heading) => {
    const uncounted = Object.fromEntries(Object.entries(plate).filter(([name]) => name !== 'Qty'));
    expect(verdict(uncounted)).toBe('OK');
    for (const count of [2, '12']) expect(verdict({ ...uncounted, [heading]: count })).toBe('OK so far');
    expect(verdict({ ...uncounted, [heading]: 1 })).toBe('OK');
    expect(verdict({ ...uncounted, [heading]: null })).toBe('OK');
  });

  it('is the number of the item beside a quantity', () => {
    for (const heading of ['NO.', '#', 'Count', 'No'])
      expect(verdict({ ...plate, [heading]: 12 })).toBe('OK');
    for (const heading of ["REQ'D", 'Quan']) expect(verdict({ ...plate, [heading]: 2 })).toBe('OK');
    for (const heading of ["REQ'D", 'Assys', 'Flights'])
      expect(verdict({ ...plate, [heading]: 12 })).toBe('OK so far');
  });

  it('changes nothing where it is 1, or repeats the quantity', () => {
    expect(verdict({ ...plate, Multiplier: 1 })).toBe('OK');
    expect(verdict({ ...plate, 'Total qty': 2 })).toBe('OK');
    expect(verdict({ ...plate, Assembly: 'A101' })).toBe('OK');
  });
});
