import type { Drawing } from '../drawing/drawing.js';
import { html } from './html.js';
import { svg } from './svg.js';

/** A drawing as a page of its own to print, black, with its sentence and what has no room in it. */
export function drawingPage({ title, summary, notes = [], end, ...drawing }: Drawing): string {
  const ends = end ? [svg(end, `End view: ${end.words}`)] : [];
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <title>${title}</title>
      </head>
      <body>
        <h1>${title}</h1>
        <p>${summary}</p>
        <div>${svg(drawing, title)} ${ends}</div>
        ${notes.map((note) => html`<p>${note}</p>`)}
      </body>
    </html> `.text;
}
