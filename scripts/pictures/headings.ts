// The picture of Edge, End, Pitch, Gage and Leg in docs/headings.md: the drawing that the pane shows.
import { headingsDrawing } from '../../src/drawing/headingsDrawing.js';
import { svg } from '../../src/print/svg.js';

/** The drawing as a file of its own, on white. */
export function headingPicture(): string {
  const { width, height, shapes, summary } = headingsDrawing();
  const paper = { kind: 'area', path: `M0 0H${width}V${height}H0z`, fill: 'paper' } as const;
  const { text } = svg({ width, height, shapes: [paper, ...shapes] }, summary);
  return `${text.replace('<svg', '<svg font-family="sans-serif" font-size="14"')}\n`;
}
