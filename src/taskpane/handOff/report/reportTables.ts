import type { CellValue } from '../../../core/quantity/cellValue.js';
import { type VerdictKind, verdictKind } from '../../../core/check/verdict.js';
import { html, type Html, wholeSizes } from '../../../print/html.js';
import { svg } from '../../../print/svg.js';
import type { Assumption } from './assumptions.js';
import type { ReportData } from './reportData.js';
import type { ReportedRow } from './reportedRows.js';
import type { MassSum } from './sums.js';

const counted = (count: number) => count.toLocaleString('en');

const pieceWords = (piece: string, length: string) =>
  length === '' ? piece : html`${piece}, <span class="unbroken">${length}</span>`;

/** What the press does not do, so that it is seen: it is neither checked nor priced here. */
export function elsewhere({ elsewhere: rows }: ReportData): Html[] {
  if (rows.length === 0) return [];
  const cells = rows.map(
    ({ mark, list, row, qty, steps }) =>
      html`<tr>
        <td class="mark">${mark}</td>
        <td>${list}, ${row}</td>
        <td class="number">${counted(qty)}</td>
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
        <td class="number">${counted(count)}</td>
        <td class="number">${counted(pieces)}</td>
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
        <td class="number">${counted(rows)}</td>
        <td class="mark">${verdict}</td>
        <td>${reason}</td>
      </tr>`,
  );
  const label = kind === 'fails' ? 'Reasons' : 'Reasons for not checking';
  return scrolledTable(label, [{ text: 'Rows', number: true }, { text: 'Verdict' }, { text: 'Why' }], cells);
}

/** Rows with their reasons; the part beneath, which no page break parts from its row. */
export function rowTable(rows: readonly ReportedRow[], label: string, none = ''): Html {
  if (rows.length === 0) return html`<p>${none}</p>`;
  const bodies = rows.map(
    ({ mark, list, row, verdict, use, reason, piece, length, press, drawing }) =>
      html`<tbody>
        <tr>
          <td class="mark">${mark}</td>
          <td>${list}, ${row}</td>
          <td class="piece">${pieceWords(piece, length)}</td>
          <td>${press}</td>
          <td class="word">${verdict}</td>
          <td class="number">${use}</td>
          <td>${wholeSizes(reason)}</td>
        </tr>
        ${drawing
          ? html`<tr class="drawing">
              <td colspan="7">
                <figure>
                  ${svg(drawing, drawing.title)}
                  <figcaption>${drawing.summary}</figcaption>
                </figure>
              </td>
            </tr>`
          : []}
      </tbody>`,
  );
  const headings = [
    ...[{ text: 'Mark' }, { text: 'List, row' }, { text: 'Part' }, { text: 'Press' }, { text: 'Verdict' }],
    ...[{ text: 'Of rating', number: true }, { text: 'Why' }],
  ];
  return scrolled(label, headings, bodies);
}

/** What was taken where rows or shop do not say, each with its marks. */
export function assumptionTable(assumptions: readonly Assumption[]): Html {
  if (assumptions.length === 0) return html`<p>None.</p>`;
  const cells = assumptions.map(
    ({ text, rows, marks }) =>
      html`<tr>
        <td>${text}</td>
        <td class="number">${rows === 0 ? 'all' : rows}</td>
        <td>${marks}</td>
      </tr>`,
  );
  const headings = [{ text: 'Assumed' }, { text: 'Rows', number: true }, { text: 'Marks' }];
  return scrolledTable('Assumptions', headings, cells);
}

export function pressSums({ byPress }: ReportData): Html {
  const cells = byPress.map(
    ({ press, rows, failing, pieces, hits, mass, marks }) =>
      html`<tr>
        <td class="mark">${press}</td>
        <td class="number">${counted(rows)}</td>
        <td class="number">${counted(failing)}</td>
        <td class="number">${counted(pieces)}</td>
        <td class="number">${counted(hits)}</td>
        <td class="number">${mass}</td>
        <td>${marks}</td>
      </tr>`,
  );
  const numbers = ['Rows', 'Failing', 'Pieces', 'Punch hits', 'Mass'];
  const headings = [{ text: 'Press' }, ...numbers.map((text) => ({ text, number: true })), { text: 'Marks' }];
  return scrolledTable('Rows by press', headings, cells);
}

export function massTable(sums: readonly MassSum[], label: string): Html {
  const named = sums.some(({ section }) => section !== '');
  const cells = sums.map(
    ({ section, grade, pieces, mass }) =>
      html`<tr>
        ${named ? html`<td class="mark">${section}</td>` : []}
        <td>${grade}</td>
        <td class="number">${counted(pieces)}</td>
        <td class="number">${mass}</td>
      </tr>`,
  );
  const headings = [
    ...(named ? [{ text: 'Section' }] : []),
    ...[{ text: 'Grade' }, { text: 'Pieces', number: true }, { text: 'Mass', number: true }],
  ];
  return scrolledTable(label, headings, cells);
}

interface Heading {
  text: string;
  number?: boolean;
}

function scrolledTable(label: string, headings: readonly Heading[], rows: readonly Html[]): Html {
  return scrolled(label, headings, [
    html`<tbody>
      ${rows}
    </tbody>`,
  ]);
}

/** A table that scrolls in its own region where the page is narrow. */
function scrolled(label: string, headings: readonly Heading[], bodies: readonly Html[]): Html {
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
      ${bodies}
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
