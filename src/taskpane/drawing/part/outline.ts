import type { HolePlace } from '../../../core/row/holePlace.js';
import type { Section } from '../../../core/section/section.js';
import type { Shape } from '../drawing.js';
import { polygon, polyline, segment } from '../path.js';
import type { Contour, Ends } from '../../../core/row/outline/contour.js';
import { polygonOf } from '../../../core/row/outline/crossing.js';
import { innerEdgeShapes } from './innerEdges.js';
import { rightOf, type View, xOf, yOf } from './partView.js';
import type { Place, Side } from '../../../core/row/outline/place.js';

const zigzag = 5;

/** The outline, with a zigzag at each side of a part left out; edges of the other leg or flanges; the centre line. */
export function outlineShapes(
  view: View,
  contour: Contour,
  ends: Ends,
  section: Section,
  element: HolePlace['element'] | undefined,
): Shape[] {
  const middle = yOf(view, view.widthMm / 2);
  return [
    ...(view.broken ? brokenOutline(view, contour, view.broken.endMm) : wholeOutline(view, contour)),
    ...innerEdgeShapes(view, ends, section, element),
    ...(section.kind === 'round'
      ? [
          {
            kind: 'line',
            path: segment(view.left - 6, middle, rightOf(view) + 6, middle),
            line: 'centre',
          } satisfies Shape,
        ]
      : []),
  ];
}

type Pixel = [number, number];

const pixel = (view: View, { alongMm, acrossMm }: Place): Pixel => [
  xOf(view, alongMm) ?? view.left,
  yOf(view, acrossMm),
];

function wholeOutline(view: View, contour: Contour): Shape[] {
  const path = polygon(polygonOf(contour).map((place) => pixel(view, place)));
  return [{ kind: 'line', path, line: 'outline' }];
}

function brokenOutline(view: View, { throat, operator }: Contour, endMm: number): Shape[] {
  const farMm = view.lengthMm - endMm;
  return [
    [upTo(throat, endMm), upTo(operator, endMm)],
    [downTo(throat, farMm), downTo(operator, farMm)],
  ].flatMap(([first = [], second = []]) => endShapes(view, first, second));
}

/** One end from its two edges, each from the end to the break. */
function endShapes(view: View, throat: readonly Place[], operator: readonly Place[]): Shape[] {
  const places = [...[...throat].reverse(), ...operator].map((place) => pixel(view, place));
  const [open, top] = places[0] ?? [0, 0];
  const [, bottom] = places.at(-1) ?? [0, 0];
  const middle = (top + bottom) / 2;
  const beyond = (side: Side) => (side === view.fence ? 3 : 6);
  return [
    { kind: 'line', path: polyline(places), line: 'outline' },
    {
      kind: 'line',
      path: polyline([
        [open, top - beyond('throat')],
        [open, middle - zigzag],
        [open - zigzag, middle - zigzag / 2],
        [open + zigzag, middle + zigzag / 2],
        [open, middle + zigzag],
        [open, bottom + beyond('operator')],
      ]),
      line: 'thin',
    },
  ];
}

/** An edge from the stop to a break. */
function upTo(edge: readonly Place[], breakMm: number): Place[] {
  const beyond = edge.findIndex(({ alongMm }) => alongMm > breakMm);
  return cutAt(edge, beyond, breakMm);
}

/** An edge from the far end back to a break. */
function downTo(edge: readonly Place[], breakMm: number): Place[] {
  const back = [...edge].reverse();
  const beyond = back.findIndex(({ alongMm }) => alongMm < breakMm);
  return cutAt(back, beyond, breakMm);
}

function cutAt(edge: readonly Place[], beyond: number, breakMm: number): Place[] {
  const [before, after] = [edge[beyond - 1], edge[beyond]];
  if (!before || !after) return [...edge];
  const share = (breakMm - before.alongMm) / (after.alongMm - before.alongMm);
  const acrossMm = before.acrossMm + share * (after.acrossMm - before.acrossMm);
  return [...edge.slice(0, beyond), { alongMm: breakMm, acrossMm }];
}
