import { describe, expect, it } from 'vitest';
import { bestTool } from '../../../src/core/shop/bestTool.js';
import type { Tool } from '../../../src/core/shop/readTools.js';
import { toolText } from '../../../src/core/shop/toolText.js';

const tool = (diameterMm: number, more: Partial<Tool> = {}): Tool => ({
  kind: 'punch',
  size: { shape: 'round', diameterMm },
  count: 1,
  ...more,
});
const off = ({ size }: Tool) => [size.shape === 'round' ? Math.abs(size.diameterMm - 20) : 99];

describe('the best tool', () => {
  it('has the least first merit, then the least second', () => {
    const [near, far] = [tool(20.1), tool(22)];
    expect(bestTool([far, near], off)).toBe(near);
    expect(bestTool([far, near], () => [0])).toBe(bestTool([near, far], () => [0]));
    expect(bestTool([near, far], (each) => [1, each === far ? 0 : 1])).toBe(far);
    expect(bestTool([], off)).toBeUndefined();
  });

  it('is the press’s own of two that are alike, and the same one whatever their order', () => {
    const own = tool(20, { press: 'Bay A' });
    const any = [tool(20), tool(20, { holder: 'B' }), tool(20, { count: 3 })];
    expect(bestTool([...any, own], off)).toBe(own);
    expect(bestTool(any, off)).toEqual(bestTool([...any].reverse(), off));
  });

  it('takes differences of rounding for none', () => {
    const own = tool(20 + 1e-9, { press: 'Bay A' });
    expect(bestTool([tool(20), own], off)).toBe(own);
  });
});

describe('the text of a tool', () => {
  it('is what stands in the table, a bare number as a size of the shop', () => {
    expect(toolText(tool(20.6, { written: 'Ø20.6 mm' }), 'in')).toBe('Ø20.6 mm');
    expect(toolText(tool(20.6375), 'in')).toBe('Ø13/16');
    expect(toolText(tool(18), 'mm')).toBe('Ø18');
  });
});
