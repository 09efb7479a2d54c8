import type { LengthUnit } from '../../core/quantity/units.js';
import type { CutBar } from '../../core/stock/list/jobPlan.js';
import type { CuttingLosses, StockJob } from '../../core/stock/list/stockJob.js';
import { barDrawing } from '../../drawing/stock/barDrawing.js';
import { html, type Html } from '../html.js';
import { svg } from '../svg.js';
import { factTable } from './factTable.js';

const pixelsPerMm = 96 / 25.4;
const stripMm = 12;
/** Between the margins of letter and of A4. */
const printedWidth = 710;

export interface PrintedBars {
  job: StockJob;
  losses: CuttingLosses;
  unit: LengthUnit;
  longestMm: number;
}

/** A bar and its list, which are never on two pages. */
export function barFigure(bar: CutBar, { job, losses, unit, longestMm }: PrintedBars): Html {
  const drawing = barDrawing({
    bar,
    widthMm: job.widthMm,
    trimMm: losses.trimMm ?? 0,
    gripMm: losses.gripMm ?? 0,
    unit,
    everyCut: true,
    room: { width: printedWidth, height: stripMm * pixelsPerMm, longestMm },
  });
  return html`<div class="bar">
    <h3>${drawing.title}</h3>
    <figure>${svg(drawing, drawing.summary)}</figure>
    ${factTable(drawing.table)}
  </div>`;
}
