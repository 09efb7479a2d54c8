import type { Drawing } from '../drawing/drawing.js';
import { html } from './html.js';
import { svg } from './svg.js';

/** Between the margins of letter and of A4, and how much larger than in the pane a drawing is at most. */
const printedWidth = 680;
const greatestScale = 2;
const gap = 12;

/** A drawing as a page of its own to print and pin up, black, with its sentence and what has no room in it. */
export function drawingPage({ title, summary, notes = [], end, ...drawing }: Drawing): string {
  const together = drawing.width + (end ? end.width + gap : 0);
  const scale = Math.min(printedWidth / together, greatestScale);
  const ends = end ? [svg(end, `End view: ${end.words}`, scale)] : [];
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <title>${title}</title>
      </head>
      <body>
        <h1>${title}</h1>
        <p>${summary}</p>
        <div>${svg(drawing, title, scale)} ${ends}</div>
        ${notes.map((note) => html`<p>${note}</p>`)}
      </body>
    </html> `.text;
}
