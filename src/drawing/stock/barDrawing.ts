import type { Drawing, Point } from '../drawing.js';
import { facedBar, type FacedBar } from './barFaces.js';
import { barFacts, barSummary, restName } from './barFacts.js';
import type { BarInput } from './barInput.js';
import { barLabels, outsideHeight, outsideShapes } from './barLabels.js';
import { barLength } from '../../core/say/barLength.js';
import { type BarRun, barRuns } from './barRuns.js';
import { barShapes, hasCrowdedCuts } from './barShapes.js';

/** Around the strip, for its outline. */
const margin = 3;

/** A bar as it is cut, from its front end at the left: to scale along the bar. */
export function barDrawing(input: BarInput): Drawing {
  const { bar, unit, room } = input;
  const runs = barRuns(bar);
  const faced = facedBar(input, runs);
  const drop = bar.isKept ? barLength(bar.restMm, unit) : undefined;
  const { inside, above, below, left } = barLabels(faced, runs, drop, room.width);
  const top = margin + (above.length > 0 ? outsideHeight : 0);
  const bottom = top + room.height;
  return {
    title: `${bar.bars} × ${barLength(bar.stock.lengthMm, unit)}`,
    summary: barSummary(input, runs, { cuts: hasCrowdedCuts(faced), labels: left }),
    width: room.width,
    height: bottom + margin + (below.length > 0 ? outsideHeight : 0),
    shapes: [
      ...barShapes(input, faced, top),
      ...outsideShapes(above, top, -1, room.width),
      ...outsideShapes(below, bottom, 1, room.width),
      ...inside((top + bottom) / 2),
    ],
    points: pointsOf(input, faced, runs, (top + bottom) / 2),
    table: barFacts(input, runs),
  };
}

/** A point for each run, and one for what is left. */
function pointsOf({ bar, unit }: BarInput, faced: FacedBar, runs: readonly BarRun[], y: number): Point[] {
  const points = runs.map((run): Point => {
    const own = faced.pieces.filter((piece) => piece.run === run);
    const [first, last] = [own[0]?.left.x ?? 0, own.at(-1)?.right.x ?? 0];
    const { letter, name, lengthMm, pieces } = run;
    const cut = barLength(pieces.at(-1)?.runMm ?? 0, unit);
    return {
      x: (first + last) / 2,
      y,
      label: `${letter}: ${pieces.length} × ${name}, ${barLength(lengthMm, unit)}, last cut at ${cut}`,
    };
  });
  if (bar.restMm <= 0) return points;
  const last = faced.pieces.at(-1)?.right ?? faced.trim;
  const label = `${barLength(bar.restMm, unit)} ${restName(bar.isKept)}`;
  return [...points, { x: (last.x + faced.end.x) / 2, y, label }];
}
