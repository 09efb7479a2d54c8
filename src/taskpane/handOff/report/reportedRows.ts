import { type Verdict, verdicts } from '../../../core/check/verdict.js';
import { reasonOf } from '../../../core/say/reasonOf.js';
import type { Shop } from '../../../core/shop/readShop.js';
import type { Drawing } from '../../../drawing/drawing.js';
import { isBare, partDrawing } from '../../../drawing/part/partDrawing.js';
import { percentText } from '../../../core/quantity/percentText.js';
import type { ReportRow } from './lists.js';

export interface ReportedRow {
  mark: string;
  list: string;
  /** Row of the sheet, from 1. */
  row: number;
  verdict: Verdict;
  /** Share of the rating as text; blank where none could be computed. */
  use: string;
  reason: string;
  /** Pieces, section and grade in a line. */
  piece: string;
  /** As typed; blank where it is not known. */
  length: string;
  press: string;
  /** The part with the distance that decides; of one without any work its length and section say as much. */
  drawing?: Drawing;
}

/** So wide that two or three rows stand on a page; more rows than these are told without a drawing. */
const drawingWidth = 330;
const mostDrawn = 100;

/** Rows, the worst verdict first. */
export function reportedRows(rows: readonly ReportRow[], shop: Shop): ReportedRow[] {
  return [...rows]
    .sort((a, b) => verdicts.indexOf(a.result.verdict) - verdicts.indexOf(b.result.verdict))
    .map((row, at) => {
      const { mark, list, row: place, qty, section, grade, length, result } = row;
      const drawing = at < mostDrawn ? drawingOf(row, shop) : undefined;
      return {
        ...{ mark, list, row: place, verdict: result.verdict },
        use: result.use === undefined ? '' : percentText(result.use),
        reason: asSentence(reasonOf(result, shop.unit)),
        piece: [`${qty} ×`, section, grade].filter((text) => text !== '').join(' '),
        length,
        press: result.press ?? '',
        ...(drawing ? { drawing } : {}),
      };
    });
}

function drawingOf({ job, length, mark, result }: ReportRow, shop: Shop): Drawing | undefined {
  if (!job) return undefined;
  const input = { job, deciding: result.deciding, unit: shop.unit, shop, mark, length, width: drawingWidth };
  const drawn = partDrawing(input);
  return 'problem' in drawn || isBare(drawn) ? undefined : drawn;
}

/** A reason as it stands on its own. */
export function asSentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
