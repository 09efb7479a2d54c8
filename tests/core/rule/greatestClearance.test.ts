import { describe, expect, it } from 'vitest';
import { greatestClearanceMm } from '../../../src/core/rule/greatestClearance.js';
import { jobSpecs } from '../../../src/core/rule/jobSpec.js';

describe('greatestClearanceMm', () => {
  it('is 1 mm in every class of EN 1090-2 (from memory), and not said by any other specification', () => {
    const said = jobSpecs.filter((spec) => greatestClearanceMm(spec) !== undefined);
    expect(said).toEqual(['EN 1090-2 EXC1', 'EN 1090-2 EXC2', 'EN 1090-2 EXC3', 'EN 1090-2 EXC4']);
    for (const spec of said) expect(greatestClearanceMm(spec)).toBe(1);
  });
});
