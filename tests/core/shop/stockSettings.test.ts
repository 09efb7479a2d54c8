import { describe, expect, it } from 'vitest';
import { stockSettingRows } from '../../../src/core/shop/stockSettings.js';

const read = (name: keyof typeof stockSettingRows, cell: string | number) =>
  stockSettingRows[name].read(cell, stockSettingRows[name].name, 'in');

describe('Settings of cutting bars', () => {
  it('read lengths in the unit of the shop', () => {
    expect(read('cutKerf', 'C 1/8; L 1/4')).toEqual([
      { section: 'C', lengthMm: 3.175 },
      { section: 'L', lengthMm: 6.35 },
    ]);
    expect(read('endTrimMm', '1/2')).toBe(12.7);
    expect(read('gripMm', '100 mm')).toBe(100);
    expect(read('shortestDropMm', `2'-0`)).toBe(609.6);
  });

  it('refuse a kerf of 2 in and a trim of 10 ft, with the most that may be', () => {
    expect(() => read('cutKerf', '2')).toThrow(
      /^Cut kerf: '2' is out of range\. Write at most 1-31\/32 in\.$/,
    );
    expect(() => read('endTrimMm', '10 ft')).toThrow(/End trim.*out of range/);
    expect(() => read('gripMm', '10 ft')).toThrow(/Grip.*out of range/);
  });
});
