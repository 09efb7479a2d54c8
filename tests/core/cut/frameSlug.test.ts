import { expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { frameSlugMm } from '../../../src/core/cut/frameSlug.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { refusal } from '../../support/refusal.js';
import { bayA, pressTable } from '../../support/sampleShop.js';

const both = { ...bayA, 'Angle shear leg position': 'both' };
const presses = (...slugs: CellValue[]) =>
  readShop({
    presses: pressTable(
      Object.fromEntries(slugs.map((slug, at) => [`Bay ${at + 1}`, { ...both, 'Angle shear slug': slug }])),
    ),
  }).presses;

it('is the slug of the presses that make both hands', () => {
  expect(frameSlugMm(presses('3/8'), 'in')).toBeCloseTo(9.525, 9);
  expect(frameSlugMm(presses('3/8', '3/8 in'), 'in')).toBeCloseTo(9.525, 9);
});

it('is none of a single blade, of a press that does not say it and without such a press', () => {
  for (const slug of ['none', null]) expect(frameSlugMm(presses(slug), 'in')).toBe(0);
  expect(frameSlugMm([], 'in')).toBe(0);
});

it('is asked for where presses differ', () => {
  const { problem } = refusal(() => frameSlugMm(presses('3/8', 'none'), 'in'));
  expect(problem).toBe('the presses lose different slugs at a cut: Bay 1 3/8 in, Bay 2 0 in.');
});
