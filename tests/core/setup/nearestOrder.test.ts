import { describe, expect, it } from 'vitest';
import type { GaugeSetting } from '../../../src/core/setup/gaugeSetting.js';
import { inNearestOrder } from '../../../src/core/setup/nearestOrder.js';

const at = (stopMm: number, fenceMm: number, stop: 'left' | 'right' = 'left'): GaugeSetting => ({
  stop,
  stopMm,
  fenceMm,
  hits: [],
});
const order = (settings: GaugeSetting[]) =>
  inNearestOrder(settings).map(({ stop, stopMm, fenceMm }) => `${stop} ${stopMm}/${fenceMm}`);

describe('the order of settings', () => {
  it('goes along one fence before the fence is moved, and back along the next', () => {
    const grid = [at(300, 90), at(100, 40), at(200, 90), at(300, 40), at(100, 90), at(200, 40)];
    expect(order(grid)).toEqual([
      'left 100/40',
      'left 200/40',
      'left 300/40',
      'left 300/90',
      'left 200/90',
      'left 100/90',
    ]);
  });

  it('leaves a stop where it stands for the next fence', () => {
    expect(order([at(50, 90, 'right'), at(50, 40), at(80, 90), at(50, 90)])).toEqual([
      'left 50/40',
      'left 50/90',
      'left 80/90',
      'right 50/90',
    ]);
  });

  it('keeps every setting, and takes none for granted', () => {
    expect(order([])).toEqual([]);
    expect(order([at(1, 1)])).toEqual(['left 1/1']);
  });
});
