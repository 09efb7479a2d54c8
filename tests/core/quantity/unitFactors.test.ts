import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { unitFactorsSource } from '../../../scripts/units/source.mjs';

it('The committed unit factors are those of the unit library: `npm run units` would change nothing', () => {
  expect(readFileSync('src/core/quantity/unitFactors.ts', 'utf8')).toBe(unitFactorsSource());
});
