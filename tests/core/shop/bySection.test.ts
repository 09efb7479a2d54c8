import { describe, expect, it } from 'vitest';
import { forSection, readBySection } from '../../../src/core/shop/bySection.js';

const read = (cell: string | number) =>
  readBySection(cell, { argument: 'Bar lengths', allowed: 'Write 40 ft.', read: (part) => Number(part) });

describe('Lengths by section', () => {
  it('are read with the letters a section begins with, and one for all others', () => {
    expect(read('l 40; FB 20 ;6')).toEqual([
      { section: 'L', lengthMm: 40 },
      { section: 'FB', lengthMm: 20 },
      { section: '', lengthMm: 6 },
    ]);
    expect(read(40)).toEqual([{ section: '', lengthMm: 40 }]);
  });

  it('are for a section by its letters, not by how a longer name begins', () => {
    const lengths = read('L 40; FB 20');
    expect(forSection(lengths, ' l3x3x1/4')).toBe(40);
    expect(forSection(lengths, 'FB 1/4x4')).toBe(20);
    // A flat of LL is no angle, and nothing stands for the rest.
    expect(forSection(lengths, 'LL3X3')).toBeUndefined();
    expect(forSection(read('L 40; 7'), 'LL3X3')).toBe(7);
    expect(forSection(read('7; L 40'), 'L3X3')).toBe(40);
  });

  it('refuse a part without a number, with what was read', () => {
    expect(() => read('L 40; FB')).toThrow(/^Bar lengths: 'FB' is not a length\. Write 40 ft\.$/);
    for (const cell of ['L 40;;', ';L 40', 'L 40;;FB 20', ';'])
      expect(() => read(cell)).toThrow(/^Bar lengths: .*is not a length/);
  });

  it('may end with a semicolon', () => {
    for (const cell of ['L 40; 20', 'L 40'])
      for (const end of [';', '; ', ' ;']) expect(read(`${cell}${end}`)).toEqual(read(cell));
  });
});
