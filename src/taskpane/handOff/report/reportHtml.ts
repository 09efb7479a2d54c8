import { starterNotice } from '../../shop/sheet/starter.js';
import { caution } from '../../../core/say/cautionWords.js';
import { html, type Html, styleElement } from '../../../print/html.js';
import type { ReportData } from './reportData.js';
import { reportStyle } from './reportStyle.js';
import {
  assumptionTable,
  byVerdict,
  elsewhere,
  massTable,
  pressSums,
  pressTable,
  reasons,
  rowTable,
} from './reportTables.js';

/** More rows that fail or are not fully checked than these are told by their reasons first; the rows follow. */
const mostWithReasons = 25;

/**
 * A report that prints: what counts on the first page, the rows and the press data behind it. Without its style where
 * the page it is shown in allows no style as text.
 */
export function reportHtml(data: ReportData, style = reportStyle(data, data.stamp)): string {
  const { title } = data;
  const many = data.failing.length + data.unknown.length > mostWithReasons;
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
          ${firstPage(data)}
          <h2 class="next">Failing rows</h2>
          ${many ? reasons(data, 'fails') : rowTable(data.failing, 'Failing rows', 'No row fails.')}
          ${data.unknown.length > 0 ? unknown(data, many) : []}
          <h2>Rows near a limit</h2>
          ${rowTable(data.near, 'Rows near a limit', 'No row is near a limit.')} ${many ? everyRow(data) : []}
          <h2>Rows by press</h2>
          ${pressSums(data)}
          <h2>Mass by section and grade</h2>
          ${massTable(data.bySection, 'Mass by section and grade')}
          <h2>Mass by grade</h2>
          ${massTable(data.byGrade, 'Mass by grade')} ${elsewhere(data)}
          <h2 class="next">Press data</h2>
          <div class="scroll" tabindex="0" role="region" aria-label="Press data">
            ${pressTable(data.presses)}
          </div>
        </main>
      </body>
    </html>`;
  return page.text;
}

/** Total, verdicts, cautions, and what was assumed. */
function firstPage(data: ReportData): Html {
  return html`<h1>${data.title}</h1>
    ${head(data)} ${otherStamp(data)} ${starters(data)}
    <div class="beside">
      <section>
        <h2>Total</h2>
        ${definitions(data.totals)}
      </section>
      <section>
        <h2>By verdict</h2>
        ${byVerdict(data)}
      </section>
    </div>
    ${rowsTold(data)}
    <h2>Caution</h2>
    <p>${caution}</p>
    <h2>Rules</h2>
    ${definitions(data.rules, 'head')}
    <h2>Assumptions</h2>
    ${assumptionTable(data.assumptions)}`;
}

function rowsTold({ told }: ReportData): Html[] {
  if (told.length === 0) return [];
  return [
    html`<h2>Notes on rows</h2>
      <ul>
        ${told.map((sentence) => html`<li>${sentence}</li>`)}
      </ul>`,
  ];
}

function head({ job, customer, file, lists, date, stamp }: ReportData): Html {
  const facts: [string, string][] = [
    ...([
      ['Job', job],
      ['Customer', customer],
      ['File', file],
    ] satisfies [string, string][]),
    ...([
      ['List', lists],
      ['Date', date],
      ['Stamp', stamp],
    ] satisfies [string, string][]),
  ];
  return definitions(
    facts.filter(([, value]) => value !== ''),
    'head',
  );
}

function otherStamp({ otherStamp: other }: ReportData): Html[] {
  if (other === undefined) return [];
  return [
    html`<p class="notice">
      The sheet still shows results of another shop: ${other}. This report uses the shop as it is now.
    </p>`,
  ];
}

function definitions(pairs: readonly (readonly [string, string])[], kind = 'facts'): Html {
  const lines = pairs.map(
    ([name, value]) =>
      html`<dt>${name}</dt>
        <dd>${value}</dd>`,
  );
  return html`<dl class="${kind}">${lines}</dl>`;
}

function starters({ starters: names }: ReportData): Html[] {
  if (names.length === 0) return [];
  return [html`<p class="notice"><b>Invented values in use: ${names.join(', ')}.</b> ${starterNotice}</p>`];
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
