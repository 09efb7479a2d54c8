import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();

describe('SECTIONMASS', () => {
  it.each([
    ['L50x50x5', '3.77', 'EN 10056-1'],
    ['L80x80x8', '9.63', 'EN 10056-1'],
    ['L100x100x10', '15.0', 'EN 10056-1'],
    ['L150x150x15', '33.8', 'EN 10056-1'],
    ['RD 20', '2.47', 'EN 10060'],
    ['RD 25', '3.85', 'EN 10060'],
    ['SQ 20', '3.14', 'EN 10059'],
    ['FB 50x10', '3.93', 'EN 10058'],
    ['UPN 100', '10.6', 'EN 10365'],
    ['UPN 200', '25.3', 'EN 10365'],
  ])('%s: %s kg/m in %s (digits from memory)', (section, kgPerMeter) => {
    expectPrinted(sheet.number('SECTIONMASS', section, 1000, 'mm'), kgPerMeter);
  });

  it.each([
    ['L2X2X1/4', '3.19', 'AISC Manual, Part 1 (checked against a reprint)'],
    ['L3X3X1/4', '4.9', 'AISC Manual, Part 1 (checked against a reprint)'],
    ['L4X4X1/2', '12.8', 'AISC Manual, Part 1 (checked against a reprint)'],
    ['L6X4X1/2', '16.2', 'AISC Manual, Part 1 (checked against a reprint)'],
    ['C8X11.5', '11.5', 'AISC naming: the designation itself'],
    ['C12X20.7', '20.7', 'AISC naming: the designation itself'],
    ['RB 1', '2.67', 'common tables of bars (from memory)'],
    ['SQ 1', '3.40', 'common tables of bars (from memory)'],
    ['FB 1/2x4', '6.81', 'common tables of bars (from memory)'],
  ])('%s: %s lb/ft, %s', (section, lbPerFoot) => {
    // US tables round the density to 490 lb/ft³ and the area to three digits: one more in the last place.
    expectPrinted(sheet.number('SECTIONMASS', section, `1'-0"`), lbPerFoot, 1.5);
  });

  it('an everyday figure of the trade: 40 ft of L4×4×1/2 is 512 lb', () => {
    expectPrinted(sheet.number('SECTIONMASS', 'L4X4X1/2', `40'`), '512', 2.5);
  });

  it('aluminum of 2700 kg/m³ weighs 2700 / 7850 of steel (densities from memory)', () => {
    const steel = sheet.number('SECTIONMASS', 'FB 10x50', 1000, 'mm');
    expect(sheet.number('SECTIONMASS', 'FB 10x50', 1000, 'mm', '6061-T6')).toBeCloseTo(
      (steel * 2700) / 7850,
      10,
    );
  });
});

describe('LENGTH', () => {
  it.each([
    [`2'-6 1/2"`, `2 ft`, `6.5 in`],
    ['1-0 3/8', '1 ft', '0.375 in'],
    ['1-3/16"', '1 in', '0.1875 in'],
    ['12 mm', '12 mm', '0 mm'],
    ['1.5 m', '1.5 m', '0 mm'],
    [`40'`, '40 ft', '0 in'],
  ])('%s is %s and %s by another unit library', (text, first, second) => {
    const total = Qty(first).add(Qty(second));
    expect(sheet.number('LENGTH', text)).toBeCloseTo(total.to('in').scalar, 10);
    expect(sheet.number('LENGTH', text, 'mm')).toBeCloseTo(total.to('mm').scalar, 9);
  });

  it('NIST SP 811, Appendix B: an inch is exactly 25.4 mm, a foot 304.8 mm (from memory)', () => {
    expect(sheet.number('LENGTH', '1"', 'mm')).toBe(25.4);
    expect(sheet.number('LENGTH', `1'`, 'mm')).toBe(304.8);
    expect(sheet.number('LENGTH', '25.4 mm')).toBe(1);
  });
});
