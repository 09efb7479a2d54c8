import type { Finding } from '../check/finding.js';
import type { OpenCell } from '../check/rowFact.js';
import type { OutlineProblem } from '../part/outlineInput.js';
import type { FaceId, PlacedHole } from '../part/part.js';
import { toleranceMm } from '../part/tolerance.js';
import type { CellValue } from '../quantity/cellValue.js';
import type { Choice } from '../row/layout/alternatives.js';
import { facesOf } from '../row/job/faces.js';
import type { LaidGroup } from '../row/layout/layGroup.js';
import type { PlaceReading } from '../row/job/placeReading.js';
import { type Layout, type Layouts, layoutsOf } from '../row/layout/layoutOf.js';
import type { Headings } from '../row/headings/readHeadings.js';
import { readRow } from '../row/readRow.js';
import { type OtherRow, rowKindOf } from '../row/rowKind.js';
import type { RowWithSection } from '../row/job/readyRow.js';
import type { RowJob } from '../row/job/rowJob.js';
import type { AnySection } from '../section/section.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Hole } from '../tooling/hole.js';

/** How the place of a hole is known: the row gives it, it was read where the row says nothing, or it has none. */
export type Known = 'given' | 'read' | 'not given';

/** A hole of a row as laid out; a distance that is not known is not there. */
export interface HoleInRow {
  group: number;
  hole: Hole;
  /** Several where the row leaves the leg to choose. */
  faces: readonly FaceId[];
  xMm?: number;
  yMm?: number;
  known: Known;
  /** How its place was read. */
  readings: readonly PlaceReading[];
  /** The blank cells that would give it. */
  missing: readonly OpenCell[];
  /** End may be from the left end or the right. */
  eitherEnd?: true;
  /** How the length of a slot or rectangle lies, where the row says so. */
  direction?: 'along' | 'across';
  /** The center is not on the part. */
  off?: true;
}

export type HolesOfRow =
  | { is: 'blank' }
  | { is: 'no part'; kind: OtherRow }
  | { is: 'no holes' }
  | { is: 'problems'; findings: readonly Finding[] }
  | { is: 'outline'; problem: OutlineProblem }
  | { is: 'no flat side'; designation: string }
  | { is: 'holes'; section: AnySection; holes: readonly HoleInRow[] };

/**
 * Every hole of a row of a parts list, where it lies or is read to lie.
 * @param cells the cells of the row, in the order of the headings
 * @param headings where each input stands
 * @param shop the shop's settings
 * @returns the holes in mm, from the left end and from the bottom edge, the heel or the back of the web; or why there
 *   are none
 * Valid for plates, bars, angles and channels. Throws nothing for what a cell holds.
 * @example holesOfRow(['PL1/2X6', 12, '13/16', 2, 3], readHeadings(['Section', 'Length', 'Hole', 'End', 'Edge']), shop)
 * Source: plane geometry; readings of what a row does not say are common practice, no source.
 */
export function holesOfRow(cells: readonly CellValue[], headings: Headings, shop: Shop): HolesOfRow {
  const kind = rowKindOf(cells, headings);
  if (kind !== 'part') return kind === 'blank' ? { is: 'blank' } : { is: 'no part', kind };
  const job = readRow(cells, headings, shop);
  const findings = job.problems.filter((each) => !(each.rule === 'refusal' && each.about === 'Grade'));
  if (findings.length > 0 || !hasSection(job)) return { is: 'problems', findings };
  if (job.groups.length === 0) return { is: 'no holes' };
  const { section } = job;
  if (facesOf(section).length === 0) return { is: 'no flat side', designation: section.designation };
  const layouts = layoutsOf(job, shop.unit, setting(shop, 'holesWithoutPitch') === 'even');
  const problem = layouts.layouts.find((layout) => layout.problem)?.problem;
  if (problem) return { is: 'outline', problem };
  const holes = job.groups.flatMap(({ number }) => holesOfGroup(number, layouts));
  return { is: 'holes', section, holes };
}

function hasSection(job: RowJob): job is RowWithSection {
  return job.section !== undefined;
}

function holesOfGroup(group: number, layouts: Layouts): HoleInRow[] {
  const laid = layouts.layouts.flatMap((layout) => {
    const own = layout.groups.find(({ index }) => index === group);
    return own ? [{ layout, own }] : [];
  });
  const [first] = laid;
  return (first?.own.holes ?? []).map((_, at) => holeInRow(at, laid, layouts));
}

type Laid = readonly { layout: Layout; own: LaidGroup }[];

function holeInRow(at: number, laid: Laid, { choices }: Layouts): HoleInRow {
  const [first] = laid;
  if (!first) throw new Error('a hole that no layout has');
  const { own, layout } = first;
  const all = laid.flatMap(({ own: { holes } }) => holes[at] ?? []);
  const group = own.index;
  const isOpen = (cell: Choice['cell']) =>
    choices.some((choice) => choice.group === group && choice.cell === cell);
  const [legIsOpen, endIsOpen] = [isOpen('Leg'), isOpen('End')];
  const x = layout.endless ? fromLeftEnd(all, layout) : same(all, 'x');
  const y = same(all, 'y');
  const isFree = all.some(({ free }) => free !== undefined);
  const known =
    x === undefined || y === undefined || legIsOpen || endIsOpen ? 'not given' : isFree ? 'read' : 'given';
  const missing: OpenCell[] = [
    ...(legIsOpen ? [{ cell: 'Leg', group }] : []),
    ...own.missing.map((cell) => (cell === 'Length' ? { cell } : { cell, group })),
    ...(x === undefined && layout.endless ? [{ cell: 'Length' }] : []),
  ];
  return {
    group,
    hole: own.group.hole,
    faces: [...new Set(all.map(({ face }) => face))],
    ...(x === undefined ? {} : { xMm: x }),
    ...(y === undefined ? {} : { yMm: y }),
    known,
    readings: known === 'given' ? [] : own.readings,
    missing: known === 'given' ? [] : missing,
    ...(endIsOpen ? { eitherEnd: true } : {}),
    ...(own.group.slot ? { direction: own.group.slot } : {}),
    ...(all.some((hole) => isOff(hole, layout)) ? { off: true } : {}),
  };
}

function isOff({ center: { x, y }, face, free }: PlacedHole, { lengthMm, faces }: Layout): boolean {
  const widthMm = faces.find(({ id }) => id === face)?.widthMm ?? Infinity;
  return free === undefined && (x <= 0 || x >= lengthMm || y <= 0 || y >= widthMm);
}

/** The distance that a hole has in all layouts. */
function same(holes: readonly PlacedHole[], axis: 'x' | 'y'): number | undefined {
  const [first] = holes;
  if (!first) return undefined;
  const value = first.center[axis];
  return holes.every(({ center }) => Math.abs(center[axis] - value) <= toleranceMm) ? value : undefined;
}

/** Of a part whose length is not given, only what is measured from the left end is known. */
function fromLeftEnd(holes: readonly PlacedHole[], { lengthMm }: Layout): number | undefined {
  const mm = same(holes, 'x');
  const isFree = holes.some(({ free }) => free !== undefined && free.x0 !== free.x1);
  return mm === undefined || isFree || mm > lengthMm / 2 ? undefined : mm;
}
