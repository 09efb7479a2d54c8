import { describe, expect, it } from 'vitest';
import { inventedHandling } from '../../../src/core/press/item/inventedTimes.js';
import { handlingSeconds, readHandlingClasses } from '../../../src/core/shop/handlingClasses.js';

const classes = readHandlingClasses(inventedHandling, 'Handling classes', 'mm');

describe('the seconds of a lift', () => {
  it.each([
    [20, 3000, 8],
    [20, 3001, 25],
    [20.1, 100, 25],
    [250, 6000, 60],
    [1, 12000, 180],
    [251, 100, 180],
  ])('%f kg, %f mm: %f s', (massKg, lengthMm, seconds) => {
    expect(handlingSeconds(classes, { massKg, lengthMm })).toBe(seconds);
  });
});
