import type { CapacitySheet } from '../../drawing/capacity/sheet/capacitySheet.js';
import type { Greatest } from '../../drawing/capacity/sheet/greatest.js';
import type { HoleRange } from '../../drawing/capacity/sheet/punchTable.js';
import type { GradeTable } from '../../drawing/capacity/sheet/shearTables.js';
import type { VeeCell } from '../../drawing/capacity/sheet/veeTable.js';
import { listWords } from '../../core/say/listWords.js';
import { formatLength, formatNumber } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { html, type Html, styleElement } from '../html.js';
import { capacityStyle } from './capacityStyle.js';

interface Head {
  unit: LengthUnit;
  stamp: string;
  date: string;
}

const unknown = '?';

/** What a press can do, on a page to pin up. Without its style where the page it is shown in allows no style as text. */
export function capacityPage(sheet: CapacitySheet, head: Head, style = capacityStyle): string {
  const { unit } = head;
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width" />
        <title>Capacity of ${sheet.press}</title>
        ${styleElement(style)}
      </head>
      <body>
        <main>
          <h1>${sheet.press}: what it can do</h1>
          <p>${head.date} · ${head.stamp} · sizes in ${unit === 'in' ? 'inches' : 'millimeters'}</p>
          ${sheet.isInvented
            ? [html`<p class="notice">INVENTED PRESS: do not quote or work from this page.</p>`]
            : []}
          <p>
            Each cell gives the most within ${formatNumber(sheet.share * 100, 1)}% of the rating, as the shop
            works, and in parentheses the most the rating allows. ${unknown} means not known: fill in the
            press. A dash means none.
          </p>
          <dl>
            ${sheet.facts.map(
              ({ name, value }) =>
                html`<div>
                  <dt>${name}</dt>
                  <dd>${value ?? `${unknown} not known`}</dd>
                </div>`,
            )}
          </dl>
          ${punchHtml(sheet, unit)} ${sheet.shears.map((table) => gradeHtml(table, unit))}
          ${veeHtml(sheet, unit)} ${stationsHtml(sheet)}
          <p class="foot">
            Planning estimates from the press data of the shop. The plate on the press, its manual and the
            tool maker's limits govern. Common sizes; a size between two counts as the larger one.
          </p>
        </main>
      </body>
    </html>`.text;
}

function punchHtml({ punch }: CapacitySheet, unit: LengthUnit): Html[] {
  if (!punch) return [];
  return [
    html`<table>
      <caption>
        Punch: round holes, smallest to largest, by thickness
      </caption>
      <thead>
        <tr>
          <th scope="col">Thickness</th>
          ${punch.grades.map((grade) => html`<th scope="col">${grade}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${punch.rows.map(
          ({ thicknessMm, cells }) =>
            html`<tr>
              <th scope="row">${formatLength(thicknessMm, unit)}</th>
              ${cells.map((cell) => html`<td>${holeText(cell, unit)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>`,
  ];
}

function gradeHtml({ title, told, columns, rows }: GradeTable, unit: LengthUnit): Html {
  return html`<table>
    <caption>
      ${title}: greatest ${told} by grade
    </caption>
    <thead>
      <tr>
        <th scope="col">Grade</th>
        ${columns.map((column) => html`<th scope="col">${column}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        ({ grade, cells }) =>
          html`<tr>
            <th scope="row">${grade}</th>
            ${cells.map((cell) => html`<td>${greatestText(cell, unit)}</td>`)}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

function veeHtml({ vees, grades }: CapacitySheet, unit: LengthUnit): Html[] {
  if (vees.length === 0) return [];
  return [
    html`<table>
      <caption>
        Bend: greatest thickness of each V opening, and the longest bend of it
      </caption>
      <thead>
        <tr>
          <th scope="col">V opening</th>
          ${grades.map((grade) => html`<th scope="col">${grade}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${vees.map(
          ({ veeMm, cells }) =>
            html`<tr>
              <th scope="row">${formatLength(veeMm, unit)}</th>
              ${cells.map((cell) => html`<td>${veeText(cell, unit)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>`,
  ];
}

function stationsHtml({ missing, unknownStations }: CapacitySheet): Html[] {
  return [
    ...(missing.length > 0 ? [html`<p>Not on this press: ${listWords(missing)}.</p>`] : []),
    ...(unknownStations.length > 0
      ? [html`<p><b>${unknown} Not said whether it is on this press: ${listWords(unknownStations)}.</b></p>`]
      : []),
  ];
}

const size = (mm: number, unit: LengthUnit) => (Number.isFinite(mm) ? formatLength(mm, unit) : 'no limit');

/** `1/2 to 1 (1-1/4)`. */
export function holeText(cell: HoleRange, unit: LengthUnit): string {
  if (cell.is !== 'holes') return cell.is === 'none' ? '–' : unknown;
  const { leastMm, shareMm, ratingMm } = cell;
  const share = shareMm === undefined ? '–' : `${size(leastMm, unit)} to ${size(shareMm, unit)}`;
  return shareMm === ratingMm ? share : `${share} (${size(ratingMm, unit)})`;
}

/** `3/8 (1/2)`. */
export function greatestText(cell: Greatest, unit: LengthUnit): string {
  if (cell.is !== 'size') return cell.is === 'none' ? '–' : unknown;
  const { shareMm, ratingMm } = cell;
  const share = shareMm === undefined ? '–' : size(shareMm, unit);
  return shareMm === ratingMm ? share : `${share} (${size(ratingMm, unit)})`;
}

/** `1/4, 18 long`; a length that is not the press's own ends at a whole unit. */
export function veeText(cell: VeeCell, unit: LengthUnit): string {
  if (cell.is !== 'bend') return cell.is === 'none' ? '–' : unknown;
  const inUnit = unit === 'in' ? cell.lengthMm / 25.4 : cell.lengthMm;
  const whole = Number.isFinite(inUnit) ? `${Math.floor(inUnit + 1e-6)} long` : 'any length';
  return `${size(cell.thicknessMm, unit)}, ${whole}`;
}
