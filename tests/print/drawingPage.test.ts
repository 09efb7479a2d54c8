import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { drawingPage } from '../../src/print/drawingPage.js';

const drawing = (width: number, more: Partial<Drawing> = {}): Drawing => ({
  title: 'BP1 on the press',
  summary: 'PL1/2X10, 10 in long.',
  width,
  height: 200,
  shapes: [{ kind: 'text', x: 5, y: 20, text: 'fence' }],
  points: [],
  table: { headings: ['Work'], rows: [['Piece']] },
  ...more,
});

/** Widths and heights of the drawings of a page, in pixels. */
const sizesOf = (page: string) =>
  [...page.matchAll(/width="(\d+)"\s+height="(\d+)"/g)].map(([, width, height]) => [
    Number(width),
    Number(height),
  ]);

describe('a drawing on a page of its own', () => {
  it('has the letters that its labels are placed for, without any style', () => {
    expect(drawingPage(drawing(340))).toMatch(/<svg[^>]+font-size="12"/);
    expect(drawingPage(drawing(340))).not.toContain('<style');
  });

  it('fills the paper, at most twice as large as in the pane', () => {
    expect(sizesOf(drawingPage(drawing(400)))).toEqual([[680, 340]]);
    expect(sizesOf(drawingPage(drawing(200)))).toEqual([[400, 400]]);
    expect(sizesOf(drawingPage(drawing(900)))).toEqual([[680, 152]]);
  });

  it('has its end view beside it, in the same scale, and its notes', () => {
    const end = { width: 88, height: 100, shapes: [], words: 'leg 3 down' };
    const page = drawingPage(drawing(400, { end, notes: ['Ends to scale, 4 in left out.'] }));
    const [[width = 0] = [], [endWidth = 0, endHeight = 0] = []] = sizesOf(page);
    expect(width + endWidth).toBeLessThanOrEqual(680);
    expect(endHeight / 100).toBeCloseTo(width / 400, 1);
    expect(page).toContain('End view: leg 3 down');
    expect(page).toContain('Ends to scale, 4 in left out.');
    expect(endWidth).toBeGreaterThan(0);
  });
});
