import { describe, expect, it } from 'vitest';
import { ramTravel } from '../../../src/core/stroke/ramTravel.js';
import { Working } from '../../../src/core/working/working.js';

describe('the travel of the ram', () => {
  it('is from where the tip stands at the top of the stroke down to each stop', () => {
    expect(ramTravel({ tipMm: 40, upperMm: 16, lowerMm: -2 })).toEqual({ upperMm: 24, lowerMm: 42 });
  });

  it('is negative where the tip stands under the upper stop', () => {
    expect(ramTravel({ tipMm: 10, upperMm: 16, lowerMm: -2 }).upperMm).toBe(-6);
  });

  it('ends its working in the travel to the lower stop', () => {
    const working = new Working();
    ramTravel({ tipMm: 40, upperMm: 16, lowerMm: -2 }, working);
    expect(working.steps.at(-1)?.result).toMatchObject({ kind: 'length', value: 42 });
  });
});
