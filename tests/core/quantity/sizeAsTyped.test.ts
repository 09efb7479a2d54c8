import { describe, expect, it } from 'vitest';
import { sizeAsTyped } from '../../../src/core/quantity/sizeAsTyped.js';

describe('a size as it is typed', () => {
  it('is in the unit of the shop where the cells have none', () => {
    expect(sizeAsTyped(50.8, ['2', undefined], 'in')).toBe('2');
    expect(sizeAsTyped(50, ['50'], 'mm')).toBe('50');
    expect(sizeAsTyped(50.8, ['2"'], 'in')).toBe('2');
  });

  it('is in the unit that a cell has', () => {
    expect(sizeAsTyped(50, ['50 mm'], 'in')).toBe('50 mm');
    expect(sizeAsTyped(150, [undefined, '100mm'], 'in')).toBe('150 mm');
    expect(sizeAsTyped(38.1, ['1-1/2"'], 'mm')).toBe('1-1/2 in');
    expect(sizeAsTyped(38.1, ['1-1/2 in'], 'mm')).toBe('1-1/2 in');
  });

  it('is in the unit of the shop where it is computed and not round in the other', () => {
    expect(sizeAsTyped(773.0061, ['100 mm'], 'in')).toBe('30.433');
    expect(sizeAsTyped(250 - 31.2345, ['1-1/4"'], 'mm')).toBe('218.77');
  });
});
