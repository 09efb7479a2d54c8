import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import { readShop } from '../../../../src/core/shop/readShop.js';
import { readStock } from '../../../../src/core/shop/readStock.js';
import { stockJobs } from '../../../../src/core/stock/list/stockJobs.js';

function kerfOf(section: string, slug: CellValue, kerf: CellValue, grade = 'A36') {
  const shop = readShop({
    presses: [
      ['Item', 'Unit', 'Bay A'],
      ['Angle shear slug', 'mm', slug],
    ],
    settings: [
      ['Setting', 'Value'],
      ['Units', 'mm'],
      ['Cut kerf', kerf],
    ],
  });
  const headings = ['Mark', 'Qty', 'Section', 'Grade', 'Length', 'Press'];
  const rows = [['A', 1, section, grade, 1000, 'Bay A']];
  return stockJobs([{ name: 'Parts', headings, rows }], shop, readStock(undefined, shop)).jobs[0]?.kerf;
}

describe('What a cut takes', () => {
  it('is the slug of the press for angles, and nothing for flats under its single blade', () => {
    expect(kerfOf('L80X80X8', 6, null)).toEqual({ mm: 6, from: 'slug of the press', press: 'Bay A' });
    expect(kerfOf('FB 100x10', 6, null)).toEqual({ mm: 0, from: 'single blade' });
  });

  it('is 0 and told as not known where the press or the saw does not say', () => {
    expect(kerfOf('L80X80X8', null, null)).toEqual({ mm: 0, from: 'slug not known', press: 'Bay A' });
    expect(kerfOf('C8X11.5', 6, null)).toEqual({ mm: 0, from: 'saw not known' });
  });

  it('is what the setting says for the section, before all else', () => {
    expect(kerfOf('L80X80X8', 6, 'C 3; L 4')).toEqual({ mm: 4, from: 'setting' });
    expect(kerfOf('C8X11.5', 6, 'C 3; L 4')).toEqual({ mm: 3, from: 'setting' });
    expect(kerfOf('FB 100x10', 6, 'C 3; L 4')).toEqual({ mm: 0, from: 'single blade' });
    expect(kerfOf('FB 100x10', 6, 'C 3; 2')).toEqual({ mm: 2, from: 'setting' });
  });
});
