import type { CellValue } from '../../../core/quantity/cellValue.js';
import { type VerdictKind, verdictKind } from '../../../core/check/verdict.js';
import { html, type Html } from '../../../print/html.js';
import type { ReportData, ReportedRow } from './reportData.js';

/** What the press does not do, so that it is seen: it is neither checked nor priced here. */
export function elsewhere({ elsewhere: rows }: ReportData): Html[] {
  if (rows.length === 0) return [];
  const cells = rows.map(
    ({ mark, list, row, qty, steps }) =>
      html`<tr>
        <td class="mark">${mark}</td>
        <td>${list}, ${row}</td>
        <td class="number">${qty}</td>
        <td>${steps}</td>
      </tr>`,
  );
  const headings = [
    { text: 'Mark' },
    { text: 'List, row' },
    { text: 'Pieces', number: true },
    { text: 'Steps' },
  ];
  return [html`<h2>Done elsewhere</h2>`, scrolledTable('Done elsewhere', headings, cells)];
}

export function byVerdict({ counts }: ReportData): Html {
  const rows = counts.map(
    ({ verdict, rows: count, pieces }) =>
      html`<tr>
        <td class="mark">${verdict}</td>
        <td class="number">${count}</td>
        <td class="number">${pieces}</td>
      </tr>`,
  );
  const headings = [{ text: 'Verdict' }, { text: 'Rows', number: true }, { text: 'Pieces', number: true }];
  return scrolledTable('By verdict', headings, rows);
}

export function reasons({ reasons: groups }: ReportData, kind: 'fails' | 'unknown'): Html {
  const kinds: readonly VerdictKind[] = kind === 'fails' ? ['fails'] : ['unknown', 'open'];
  const own = groups.filter(({ verdict }) => kinds.includes(verdictKind(verdict)));
  if (own.length === 0) return html`<p>No row fails.</p>`;
  const cells = own.map(
    ({ verdict, rows, reason }) =>
      html`<tr>
        <td class="number">${rows}</td>
        <td class="mark">${verdict}</td>
        <td>${reason}</td>
      </tr>`,
  );
  const label = kind === 'fails' ? 'Reasons' : 'Reasons for not checking';
  return scrolledTable(label, [{ text: 'Rows', number: true }, { text: 'Verdict' }, { text: 'Why' }], cells);
}

export function rowTable(rows: readonly ReportedRow[], label: string, none = ''): Html {
  if (rows.length === 0) return html`<p>${none}</p>`;
  const cells = rows.map(
    ({ mark, list, row, verdict, use, reason }) =>
      html`<tr>
        <td class="mark">${mark}</td>
        <td>${list}, ${row}</td>
        <td>${verdict}</td>
        <td class="number">${use}</td>
        <td>${reason}</td>
      </tr>`,
  );
  const headings = [
    ...[{ text: 'Mark' }, { text: 'List, row' }, { text: 'Verdict' }],
    ...[{ text: 'Of rating', number: true }, { text: 'Why' }],
  ];
  return scrolledTable(label, headings, cells);
}

interface Heading {
  text: string;
  number?: boolean;
}

/** A table that scrolls in its own region where the page is narrow. */
function scrolledTable(label: string, headings: readonly Heading[], rows: readonly Html[]): Html {
  const heads = headings.map(({ text, number }) =>
    number ? html`<th scope="col" class="number">${text}</th>` : html`<th scope="col">${text}</th>`,
  );
  return html`<div class="scroll" tabindex="0" role="region" aria-label="${label}">
    <table>
      <thead>
        <tr>
          ${heads}
        </tr>
      </thead>
      <tbody>
        ${rows}
      </tbody>
    </table>
  </div>`;
}

export function pressTable([headings = [], ...rows]: readonly (readonly CellValue[])[]): Html {
  const text = (cell: CellValue) => (cell === null ? '' : String(cell));
  const filled = rows.filter((row) => row.some((cell, at) => at > 1 && text(cell) !== ''));
  return html`<table>
    <thead>
      <tr>
        ${headings.map((cell) => html`<th scope="col">${text(cell)}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${filled.map(
        (row) =>
          html`<tr>
            ${row.map((cell) => html`<td>${text(cell)}</td>`)}
          </tr>`,
      )}
    </tbody>
  </table>`;
}
