import { describe, expect, it } from 'vitest';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();

describe('HOLESCIRCLE', () => {
  it('takes both distances of the center, or neither', () => {
    expect(sheet.error('HOLESCIRCLE', 8, 4, 'in', null, 5).message).toBe(
      'Center y: the cell is blank. Give both distances of the center, or neither.',
    );
    expect(sheet.error('HOLESCIRCLE', 8, 4, 'in', null, null, 5).message).toMatch(/^Center x:/);
    expect(sheet.call('HOLESCIRCLE', 8, 2, 'in', null, 5, 6)).toEqual([
      [9, 6],
      [1, 6],
    ]);
  });
});
