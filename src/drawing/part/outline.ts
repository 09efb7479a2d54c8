import type { Shape } from '../drawing.js';
import { polygon, polyline, segment } from '../path.js';
import { innerEdgeShapes } from './innerEdges.js';
import { type Run, runsBetween } from './outlineRuns.js';
import { spanAcross } from './outlineSpan.js';
import type { PartPlan } from './partPlan.js';
import { isReadEdge } from './readWork.js';
import { pixelOf, rightOf, type View, xOf, yOf } from './partView.js';

const zigzag = 5;

/** The outline, with a zigzag at each side of a part left out; edges of the other leg or flanges; the center line. */
export function outlineShapes(view: View, plan: PartPlan): Shape[] {
  const { face, choices, section } = plan;
  const { edges } = face.outline;
  const isRead = isReadEdge(choices);
  const runs = shownStretches(view).flatMap((stretch) => runsBetween(edges, stretch, isRead));
  const middle = yOf(view, view.widthMm / 2);
  return [
    ...runs.map((run) => runShape(view, run)),
    ...breakShapes(view, plan),
    ...innerEdgeShapes(view, plan),
    ...(section.kind === 'round'
      ? [
          {
            kind: 'line',
            path: segment(view.left - 6, middle, rightOf(view) + 6, middle),
            line: 'center',
          } satisfies Shape,
        ]
      : []),
  ];
}

/** What is shown along the part, in mm: all of it, or its two ends. */
function shownStretches({ broken, lengthMm }: View): [number, number][] {
  if (!broken) return [[-Infinity, Infinity]];
  return [
    [-Infinity, broken.endMm],
    [lengthMm - broken.endMm, Infinity],
  ];
}

function runShape(view: View, { points, read, closed }: Run): Shape {
  const pixels = points.map((point) => pixelOf(view, point));
  return {
    kind: 'line',
    path: closed ? polygon(pixels) : polyline(pixels),
    line: read ? 'hidden' : 'outline',
  };
}

function breakShapes(view: View, { face }: PartPlan): Shape[] {
  if (!view.broken) return [];
  const { endMm } = view.broken;
  return [endMm, view.lengthMm - endMm].flatMap((breakMm): Shape[] => {
    const span = spanAcross(face.outline.edges, breakMm);
    const x = xOf(view, breakMm);
    return span && x !== undefined ? [breakLine(view, x, yOf(view, span[1]), yOf(view, span[0]))] : [];
  });
}

function breakLine(view: View, x: number, top: number, bottom: number): Shape {
  const middle = (top + bottom) / 2;
  const beyond = (side: View['fence']) => (side === view.fence ? 3 : 6);
  return {
    kind: 'line',
    path: polyline([
      [x, top - beyond('throat')],
      [x, middle - zigzag],
      [x - zigzag, middle - zigzag / 2],
      [x + zigzag, middle + zigzag / 2],
      [x, middle + zigzag],
      [x, bottom + beyond('operator')],
    ]),
    line: 'thin',
  };
}
