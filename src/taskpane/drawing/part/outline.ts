import type { HolePlace } from '../../../core/row/holePlace.js';
import type { Section } from '../../../core/section/section.js';
import type { Shape } from '../drawing.js';
import { polygon, polyline, segment } from '../path.js';
import { rightOf, type View, yOf } from './partView.js';

const zigzag = 5;

/** The outline, with a zigzag at each side of a part left out; edges of the other leg or flanges; the centre line. */
export function outlineShapes(
  view: View,
  section: Section,
  element: HolePlace['element'] | undefined,
): Shape[] {
  const { left, top } = view;
  const right = rightOf(view);
  const bottom = yOf(view, view.widthMm);
  return [
    ...pieces(view).flatMap(({ from, to, openLeft, openRight }) =>
      piece(from, to, top, bottom, openLeft, openRight),
    ),
    ...innerEdges(view, section, element).flatMap(({ acrossMm, line }) =>
      pieces(view).map(
        ({ from, to }): Shape => ({
          kind: 'line',
          path: segment(from, yOf(view, acrossMm), to, yOf(view, acrossMm)),
          line,
        }),
      ),
    ),
    ...(section.kind === 'round'
      ? [
          {
            kind: 'line',
            path: segment(left - 6, (top + bottom) / 2, right + 6, (top + bottom) / 2),
            line: 'centre',
          } satisfies Shape,
        ]
      : []),
  ];
}

interface Piece {
  from: number;
  to: number;
  openLeft: boolean;
  openRight: boolean;
}

function pieces(view: View): Piece[] {
  const right = rightOf(view);
  if (!view.broken) return [{ from: view.left, to: right, openLeft: false, openRight: false }];
  const shown = view.broken.endMm * view.pixelPerMm;
  return [
    { from: view.left, to: view.left + shown, openLeft: false, openRight: true },
    { from: right - shown, to: right, openLeft: true, openRight: false },
  ];
}

function piece(
  from: number,
  to: number,
  top: number,
  bottom: number,
  openLeft: boolean,
  openRight: boolean,
): Shape[] {
  if (!openLeft && !openRight)
    return [
      {
        kind: 'line',
        path: polygon([
          [from, top],
          [to, top],
          [to, bottom],
          [from, bottom],
        ]),
        line: 'outline',
      },
    ];
  const [closed, open] = openRight ? [from, to] : [to, from];
  const middle = (top + bottom) / 2;
  return [
    {
      kind: 'line',
      path: polyline([
        [open, top],
        [closed, top],
        [closed, bottom],
        [open, bottom],
      ]),
      line: 'outline',
    },
    {
      kind: 'line',
      path: polyline([
        [open, top - 3],
        [open, middle - zigzag],
        [open - zigzag, middle - zigzag / 2],
        [open + zigzag, middle + zigzag / 2],
        [open, middle + zigzag],
        [open, bottom + 6],
      ]),
      line: 'thin',
    },
  ];
}

interface InnerEdge {
  acrossMm: number;
  line: 'outline' | 'hidden';
}

/** The heel of an angle is a double line at the operator; legs and flanges that hang down are hidden edges. */
function innerEdges(view: View, section: Section, element: HolePlace['element'] | undefined): InnerEdge[] {
  const leastMm = 4 / view.pixelPerMm;
  if (section.kind === 'angle')
    return [{ acrossMm: view.widthMm - Math.max(section.thicknessMm, leastMm), line: 'outline' }];
  if (section.kind !== 'channel') return [];
  if (element === 'flange')
    return [{ acrossMm: view.widthMm - Math.max(section.webThicknessMm, leastMm), line: 'outline' }];
  const flangeMm = Math.max(section.flangeThicknessMm, leastMm);
  return [
    { acrossMm: flangeMm, line: 'hidden' },
    { acrossMm: view.widthMm - flangeMm, line: 'hidden' },
  ];
}
