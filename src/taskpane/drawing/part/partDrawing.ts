import type { Finding } from '../../../core/press/finding.js';
import { formatLength } from '../../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { type HolePlace, holePlace } from '../../../core/row/holePlace.js';
import type { RowJob } from '../../../core/row/rowJob.js';
import { isSawn, type Section } from '../../../core/section/section.js';
import { describeHole } from '../../../core/tooling/hole.js';
import type { Drawn, FactTable, Point, Shape } from '../drawing.js';
import { polygon, segment } from '../path.js';
import { distanceShapes } from './distances.js';
import { governingDistance } from './governingDistance.js';
import { holeShapes } from './holeShapes.js';
import { outlineShapes } from './outline.js';
import { lyingWidthMm, rightOf, type View, viewOf, xOf, yOf } from './partView.js';
import { type PlacedGroup, placedGroup } from './placedHoles.js';

export interface PartInput {
  job: RowJob;
  /** Of the checked row, worst first. */
  findings: readonly Finding[];
  unit: LengthUnit;
  /** The mark of the row. */
  mark?: string;
  /** All distances the row gives, not only the one that decides. */
  all?: boolean;
  width?: number;
}

const left = 40;
const right = 30;
const top = 44;
/** A part whose length the row does not give is drawn this many widths long. */
const drawnWidths = 3;

/** A part as it lies on the press: operator at the bottom, fence at the far edge, stop at the left. */
export function partDrawing({ job, findings, unit, mark = '', all = false, width = 320 }: PartInput): Drawn {
  const { section } = job;
  if (!section) return { problem: 'There is no drawing: the section of this row could not be read.' };
  if (isSawn(section)) return { problem: 'There is no drawing: tubes and tees are not worked on a press.' };
  const places = job.groups.flatMap((group) => {
    const place = holePlace(section, group, unit);
    return typeof place === 'string' ? [] : [{ group, place }];
  });
  const lying = places[0]?.place;
  const widthMm = lying?.widthMm ?? lyingWidthMm(section);
  const lengthMm = job.lengthMm ?? drawnWidths * widthMm;
  const here = places.filter(
    ({ place }) => place.element === (lying?.element ?? place.element) && place.widthMm === widthMm,
  );
  const groups = here.map(({ group, place }) => placedGroup(group, place, lengthMm));
  const view = viewOf({ lengthMm, widthMm }, { left, top, width: width - left - right });
  const governs = governingDistance(findings);
  const dimensions = distanceShapes(groups, view, { governs, all, unit });
  const bottom = Math.max(yOf(view, widthMm), dimensions.bottom) + 44;
  const notes = notesOf(job, places.length - here.length, groups, view, unit);
  return {
    title: `${mark === '' ? 'The part' : mark} on the press`,
    summary: summaryOf(section, job, groups, governs, notes, unit),
    width,
    height: bottom,
    shapes: [
      ...pressShapes(view, bottom),
      ...outlineShapes(view, section, lying?.element),
      ...groups.flatMap((each) => holeShapes(each, view)),
      ...dimensions.shapes,
      ...breakNote(view, unit),
    ],
    points: groups.flatMap((each) => pointsOf(each, view, unit)),
    table: factsOf(groups, unit),
  };
}

/** The fence a heavy bar, the stop a solid triangle, the operator at the bottom. */
function pressShapes(view: View, height: number): Shape[] {
  const middle = yOf(view, view.widthMm / 2);
  const end = rightOf(view);
  const fence = view.top - 7;
  return [
    { kind: 'line', path: segment(view.left - 8, fence, end + 8, fence), line: 'heavy' },
    { kind: 'text', x: end + 8, y: fence - 8, text: 'fence', anchor: 'end' },
    {
      kind: 'area',
      path: polygon([
        [view.left - 4, middle],
        [view.left - 18, middle - 9],
        [view.left - 18, middle + 9],
      ]),
      fill: 'solid',
    },
    { kind: 'text', x: 2, y: middle - 14, text: 'stop' },
    { kind: 'text', x: (view.left + end) / 2, y: height - 8, text: 'operator', anchor: 'middle' },
  ];
}

function breakNote(view: View, unit: LengthUnit): Shape[] {
  if (!view.broken) return [];
  const outMm = view.lengthMm - 2 * view.broken.endMm;
  return [
    { kind: 'text', x: 2, y: 14, text: `ends to scale, ${formatLength(outMm, unit)} ${unit} left out` },
  ];
}

function notesOf(
  job: RowJob,
  elsewhere: number,
  groups: readonly PlacedGroup[],
  view: View,
  unit: LengthUnit,
): string[] {
  const out = groups
    .flatMap(({ holes }) => holes)
    .filter(({ alongMm }) => xOf(view, alongMm) === undefined).length;
  const undrawn = [
    job.notches ? 'notches' : '',
    job.clips ? 'corner clips' : '',
    job.bends ? 'bends' : '',
    job.miterRad > 0 ? 'the miter' : '',
  ].filter((text) => text !== '');
  return [
    ...(job.lengthMm === undefined ? ['the row gives no length'] : []),
    ...(view.broken
      ? [
          `the middle is left out, the ends are to scale${out > 0 ? `, ${out} holes lie in what is left out` : ''}`,
        ]
      : []),
    ...new Set(groups.flatMap(({ assumed }) => assumed)),
    ...(elsewhere > 0 ? ['holes in another leg or flange are not drawn'] : []),
    ...(undrawn.length > 0 ? [`${undrawn.join(', ')} not drawn`] : []),
    ...(job.lengthMm === undefined ? [] : [`length ${formatLength(job.lengthMm, unit)} ${unit}`]),
  ];
}

function summaryOf(
  section: Section,
  { groups: all }: RowJob,
  groups: readonly PlacedGroup[],
  governs: ReturnType<typeof governingDistance>,
  notes: readonly string[],
  unit: LengthUnit,
): string {
  const holes = groups.map(({ group }) => `${group.count} × ${describeHole(group.hole, unit)}`).join(', ');
  const which = all.length === 0 ? 'no holes' : holes === '' ? 'holes that no press punches' : holes;
  const decides = governs
    ? `; ${governs.group}: ${governs.kind} ${governs.given} ${unit}, must be ${governs.least} ${unit}`
    : '';
  return `${section.designation} with ${which}${decides}; ${notes.join('; ')}.`;
}

function pointsOf({ holes, place }: PlacedGroup, view: View, unit: LengthUnit): Point[] {
  return holes.flatMap(({ group, number, alongMm, acrossMm }) => {
    const x = xOf(view, alongMm);
    if (x === undefined) return [];
    const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
    const label = `${group.title}, ${number} of ${group.count}, ${describeHole(group.hole, unit)}: ${size(alongMm)} from the stop, ${size(acrossMm)} from the ${fenceSide(place)}.`;
    return [{ x, y: yOf(view, acrossMm), label }];
  });
}

/** What lies at the fence. */
function fenceSide({ element }: HolePlace): string {
  return element === 'leg' || element === 'flange' ? 'toe at the fence' : 'edge at the fence';
}

function factsOf(groups: readonly PlacedGroup[], unit: LengthUnit): FactTable {
  const size = (mm: number | undefined) => (mm === undefined ? 'not given' : formatLength(mm, unit));
  return {
    headings: [
      'Holes',
      'Size',
      'Count',
      `End, ${unit}`,
      `Edge, ${unit}`,
      `Pitch, ${unit}`,
      `Gage, ${unit}`,
      'Drawn as',
    ],
    rows: groups.map(({ group, place, assumed }) => [
      group.title,
      describeHole(group.hole, unit),
      String(group.count),
      size(group.endMm),
      size(place.edgeMm),
      size(group.pitchMm),
      size(place.gageMm),
      assumed.length === 0 ? 'given' : assumed.join('; '),
    ]),
  };
}
