import { starterNotice } from '../../shop/sheet/starter.js';
import { caution } from '../../../core/say/cautionWords.js';
import { html, type Html, styleElement } from '../../../print/html.js';
import type { ReportData } from './reportData.js';
import { reportStyle } from './reportStyle.js';
import { byVerdict, elsewhere, pressTable, reasons, rowTable } from './reportTables.js';

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
          ${definitions(data.totals)}
          <h2>By verdict</h2>
          ${byVerdict(data)}
          <h2>Failing rows</h2>
          ${many ? reasons(data, 'fails') : rowTable(data.failing, 'Failing rows', 'No row fails.')}
          ${data.unknown.length > 0 ? unknown(data, many) : []} ${elsewhere(data)}
          <h2>Assumptions</h2>
          ${definitions(data.rules)}
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

function definitions(pairs: readonly (readonly [string, string])[]): Html {
  const lines = pairs.map(
    ([name, value]) =>
      html`<dt>${name}</dt>
        <dd>${value}</dd>`,
  );
  return html`<dl>${lines}</dl>`;
}

function starters({ starters: names }: ReportData): Html[] {
  if (names.length === 0) return [];
  return [html`<p class="notice"><b>Starter values in use: ${names.join(', ')}.</b> ${starterNotice}</p>`];
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
