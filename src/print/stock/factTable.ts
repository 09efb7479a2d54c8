import type { FactTable } from '../../drawing/drawing.js';
import { html, type Html, wholeSizes } from '../html.js';

/** Facts as a plain table. */
export function factTable({ headings, rows }: FactTable): Html {
  return html`<div class="scroll">
    <table>
      <thead>
        <tr>
          ${headings.map((heading) => html`<th scope="col">${heading}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) =>
            html`<tr>
              ${row.map((cell) => html`<td>${wholeSizes(cell)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
