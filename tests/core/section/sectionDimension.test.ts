import { describe, expect, it } from 'vitest';
import { readAnySection } from '../../../src/core/section/readAnySection.js';
import {
  type SectionDimension,
  sectionDimensionMm,
  sectionDimensions,
} from '../../../src/core/section/sectionDimension.js';
import { refusal, refusalText } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const section = (text: string) => readAnySection(text, 'Section', 'mm').section;
const has: [string, Partial<Record<SectionDimension, number>>][] = [
  ['FB10x50', { width: 50, thickness: 10 }],
  ['L80x60x8', { 'long leg': 80, 'short leg': 60, thickness: 8, 'root radius': 8 }],
  ['L81x60x8', { 'long leg': 81, 'short leg': 60, thickness: 8 }],
  ['UPN100', { depth: 100, width: 50, 'web thickness': 6, 'flange thickness': 8.5 }],
  ['RD20', { diameter: 20 }],
  ['SQ20', { side: 20 }],
  ['RHS100x50x5', { depth: 100, width: 50, thickness: 5 }],
  ['CHS60.3x3.2', { diameter: 60.3, thickness: 3.2 }],
  ['T60x50x6', { depth: 50, width: 60, thickness: 6 }],
];

describe('sectionDimensionMm', () => {
  it.each(has)('%s has its dimensions and refuses the others with those it has', (text, sizes) => {
    for (const { item } of sectionDimensions) {
      const call = () => sectionDimensionMm({ section: section(text), item });
      if (sizes[item] !== undefined) expect(call()).toBe(sizes[item]);
      else expect(refusal(call)).toMatchObject({ code: 'unknown', argument: 'Item' });
    }
  });

  it('names the dimensions it has', () => {
    const call = () => sectionDimensionMm({ section: section('RD20'), item: 'web thickness' });
    expect(refusalText(call)).toBe('Item: RB20 has no web thickness here. It has: diameter.');
  });

  it.each(has)('shows its working for %s', (text, sizes) => {
    for (const item of Object.keys(sizes) as SectionDimension[]) {
      expectWorking((working) => sectionDimensionMm({ section: section(text), item }, working));
    }
  });
});
