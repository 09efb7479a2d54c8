import { expect, it } from 'vitest';
import { headingsDrawing } from '../../src/drawing/headingsDrawing.js';

it('the picture of the headings names each, inside its frame, with a point and a row of the table', () => {
  const { shapes, points, table, width, height } = headingsDrawing();
  const texts = shapes.flatMap((shape) => (shape.kind === 'text' ? shape : []));
  for (const name of ['Edge', 'End', 'Pitch', 'Gage', 'Leg']) {
    expect(texts.some(({ text }) => text === name)).toBe(true);
    expect(points.some(({ label }) => label.startsWith(`${name}, `))).toBe(true);
    expect(table.rows.some(([heading]) => heading === name)).toBe(true);
  }
  for (const { x, y, text } of texts) {
    expect(x).toBeGreaterThanOrEqual(0);
    expect(x + text.length * 7.5).toBeLessThanOrEqual(width);
    expect(y).toBeLessThanOrEqual(height);
  }
});
