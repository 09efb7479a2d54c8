import { expect, it } from 'vitest';
import { legRootMm } from '../../../src/core/section/legRoot.js';
import { readSection } from '../../../src/core/section/readSection.js';

it('the flat of a leg begins behind the fillet, or at twice the thickness', () => {
  const { section } = readSection('L80x80x8', 'Section', 'mm');
  if (section.kind !== 'angle') throw new Error('no angle');
  expect(legRootMm({ ...section, rootRadiusMm: 10 })).toBe(18);
  expect(legRootMm({ ...section, rootRadiusMm: 0 })).toBe(16);
});
