import { describe, expect, it } from 'vitest';
import { cornerHoles } from '../../../src/core/layout/cornerHoles.js';
import { expectWorking } from '../../support/working.js';

const plate = { lengthMm: 300, widthMm: 200, fromEndMm: 50, fromSideMm: 40, unit: 'mm' as const };

describe('cornerHoles', () => {
  it('has one in each corner, from the bottom left', () => {
    expect(cornerHoles(plate)).toEqual([
      { x: 50, y: 40 },
      { x: 250, y: 40 },
      { x: 50, y: 160 },
      { x: 250, y: 160 },
    ]);
  });

  it('shows its working', () => {
    expectWorking((working) => cornerHoles(plate, working).length);
  });
});
