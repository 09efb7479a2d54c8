import type { CellValue } from '../../../core/quantity/cellValue.js';
import { starterNotice } from '../../shop/sheet/starter.js';
import { type VerdictKind, verdictKind } from '../../../core/check/verdict.js';
import { caution } from '../../../core/say/cautionWords.js';
import { html, type Html, styleElement } from '../../../print/html.js';
import type { ReportData, ReportedRow } from './reportData.js';

/** How a report looks on the screen and on paper. */
export const reportStyle = `
:root { color-scheme: light; }
body { font: 11pt/1.4 system-ui, sans-serif; color: #000; background: #fff; margin: 16px; }
h1 { font-size: 17pt; margin: 0 0 2pt; } h2 { font-size: 12.5pt; margin: 14pt 0 4pt; }
p { margin: 3pt 0; } ul { margin: 3pt 0; padding-left: 16pt; }
table { border-collapse: collapse; width: 100%; } th { white-space: nowrap; } th, td { text-align: left; vertical-align: top; padding: 2pt 8pt 2pt 0; border-bottom: 0.75pt solid #767676; overflow-wrap: anywhere; }
td.number, th.number { text-align: right; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 1pt 12pt; margin: 3pt 0; } dt { font-weight: 600; } dd { margin: 0; }
.mark { font-weight: 600; } .notice { border: 1.5pt solid #000; padding: 4pt 8pt; }
.scroll { overflow-x: auto; }
@page { margin: 1.5cm; }
@media print { body { margin: 0; } .next { break-before: page; } tr { break-inside: avoid; } thead { display: table-header-group; } h2 { break-after: avoid; } .scroll { overflow: visible; } }
`;

/** More rows that fail or are not fully checked than these are told by their reasons on the first page; the rows themselves follow behind it. */
const mostOnFirstPage = 25;

/**
 * A report that prints: what counts on the first page, the press data behind it. Without its style where the page it is
 * shown in allows no style as text.
 */
export function reportHtml(data: ReportData, style = reportStyle): string {
  const { title, lists, date, stamp, otherStamp } = data;
  const many = data.failing.length + data.unknown.length > mostOnFirstPage;
  const page = html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width" />
        <title>${title}</title>
        ${styleElement(style)}
      </head>
      <body>
        <main>
          <h1>${title}</h1>
          <p>${lists === '' ? '' : `${lists} · `}${date} · ${stamp}</p>
          ${otherStamp === undefined
            ? []
            : [
                html`<p class="notice">
                  The sheet still shows results of another shop: ${otherStamp}. This report uses the shop as
                  it is now.
                </p>`,
              ]}
          ${starters(data)}
          <h2>Total</h2>
          <dl>
            ${data.totals.map(
              ([label, value]) =>
                html`<dt>${label}</dt>
                  <dd>${value}</dd>`,
            )}
          </dl>
          <h2>By verdict</h2>
          ${byVerdict(data)}
          <h2>Failing rows</h2>
          ${many ? reasons(data, 'fails') : rowTable(data.failing, 'Failing rows', 'No row fails.')}
          ${data.unknown.length > 0 ? unknown(data, many) : []} ${elsewhere(data)}
          <h2>Assumptions</h2>
          <dl>
            ${data.rules.map(
              ([setting, value]) =>
                html`<dt>${setting}</dt>
                  <dd>${value}</dd>`,
            )}
          </dl>
          ${data.assumptions.length === 0
            ? [html`<p>None.</p>`]
            : [
                html`<ul>
                  ${data.assumptions.map((text) => html`<li>${text}</li>`)}
                </ul>`,
              ]}
          <h2>Caution</h2>
          <p>${caution}</p>
          ${many ? everyRow(data) : []}
          <h2 class="next">Press data</h2>
          <div class="scroll" tabindex="0" role="region" aria-label="Press data">
            ${pressTable(data.presses)}
          </div>
        </main>
      </body>
    </html>`;
  return page.text;
}

function starters({ starters: names }: ReportData): Html[] {
  if (names.length === 0) return [];
  return [html`<p class="notice"><b>Starter values in use: ${names.join(', ')}.</b> ${starterNotice}</p>`];
}

/** What the press does not do, so that it is seen: it is neither checked nor priced here. */
function elsewhere({ elsewhere: rows }: ReportData): Html[] {
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

const unknownTitle = 'Rows not fully checked';

function unknown(data: ReportData, many: boolean): Html[] {
  const rows = many ? reasons(data, 'unknown') : rowTable(data.unknown, unknownTitle);
  return [html`<h2>${unknownTitle}</h2>`, rows];
}

function everyRow({ failing, unknown: notKnown }: ReportData): Html[] {
  return [
    html`<h2 class="next">Every failing row</h2>`,
    rowTable(failing, 'Failing rows', 'No row fails.'),
    ...(notKnown.length > 0
      ? [html`<h2>Every row not fully checked</h2>`, rowTable(notKnown, unknownTitle)]
      : []),
  ];
}

function byVerdict({ counts }: ReportData): Html {
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

function reasons({ reasons: groups }: ReportData, kind: 'fails' | 'unknown'): Html {
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

function rowTable(rows: readonly ReportedRow[], label: string, none = ''): Html {
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

function pressTable([headings = [], ...rows]: readonly (readonly CellValue[])[]): Html {
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
