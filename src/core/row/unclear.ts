import type { Finding } from '../check/finding.js';
import type { OpenCell } from '../check/rowFact.js';
import { groupFields, type GroupField, type RowField, rowFields } from './headings/heading.js';
import type { Headings } from './headings/readHeadings.js';
import type { Reading } from './job/reading.js';
import type { RowJob } from './job/rowJob.js';
import type { RowReader } from './headings/rowReader.js';

type Job = Pick<RowJob, 'unclear'>;

/** Cells that say how a part is cut; how a hole is made and in which face; how many pieces and holes there are. */
const ofCut = ['Miter', 'Miter left', 'Miter right', 'Miter leg', 'Long side', 'Cut by'];
const ofWork = {
  notch: ['Notch width', 'Notch depth', 'Notches', 'Notch at'],
  'corner clip': ['Corner clip', 'Corners', 'Clip at'],
  bend: ['Bend length', 'Bends', 'Bend at'],
};
const ofMaking = ['Hole', 'Bolt', 'Leg', 'Holes by'];
const ofCount = ['Qty', 'Hole', 'Holes', 'Bolt', 'Holes by'];

/** The cells of a row that are filled in and whose contents are not known. */
export function unclearCells(reader: RowReader, { fields, groups }: Headings): OpenCell[] {
  const ofRow = rowFields.filter(({ key }) => reader.isUnclear(fields[key as RowField]));
  return [
    ...ofRow.map(({ name }) => ({ cell: name })),
    ...groups.flatMap((columns, group) =>
      groupFields
        .filter(({ key }) => reader.isUnclear(columns[key as GroupField]))
        .map(({ name }) => ({ cell: name, group })),
    ),
  ];
}

function anyOf({ unclear = [] }: Job, cells: readonly string[], group?: number): boolean {
  return unclear.some((each) => cells.includes(each.cell) && (group === undefined || each.group === group));
}

/** Whether the cut of a part is known. */
export function isCutKnown(job: Job): boolean {
  return !anyOf(job, ofCut);
}

/** Whether notches, corner clips or bends are known. */
export function isWorkKnown(job: Job, work: keyof typeof ofWork): boolean {
  return !anyOf(job, ofWork[work]);
}

/** Whether the outline of a part and its bends are known, so that holes can be checked against them. */
export function isShapeKnown(job: Job): boolean {
  return (
    isCutKnown(job) && (['notch', 'corner clip', 'bend'] as const).every((work) => isWorkKnown(job, work))
  );
}

/** Whether all cells of a hole group are known, so that it can be laid out. */
export function isGroupKnown({ unclear = [] }: Job, group: number): boolean {
  return !unclear.some((each) => each.group === group);
}

/** Whether it is known how the holes of a group are made, and through what. */
export function isMakingKnown(job: Job, group: number): boolean {
  return !anyOf(job, ofMaking, group);
}

/** Whether the holes of all pieces can be counted. */
export function isCountKnown(job: Job): boolean {
  return !anyOf(job, ofCount);
}

/** Whether a cell of the row is filled in and not known. */
export function isUnclear({ unclear = [] }: Job, { cell, group = 0 }: OpenCell): boolean {
  return unclear.some((each) => each.cell === cell && (each.group ?? 0) === group);
}

/** Whether a finding calls a cell blank that is filled in and not known. */
export function waitsOnUnclear(job: Job, finding: Finding): boolean {
  if (job.unclear === undefined || finding.outcome !== 'open') return false;
  return cellsOf(finding).some((cell) => isUnclear(job, cell));
}

function cellsOf(finding: Finding): readonly OpenCell[] {
  switch (finding.rule) {
    case 'distance':
    case 'reach open':
      return finding.missing;
    case 'choice':
    case 'too many choices':
      return finding.cells;
    case 'blank cell':
      return [finding.cell];
    case 'not held':
      return finding.why === 'cut on a miter' ? finding.cells : [];
    default:
      return [];
  }
}

/** Whether a reading takes a cell for blank that is filled in and not known. */
export function readsUnclear(job: Job, reading: Reading): boolean {
  switch (reading.is) {
    case 'quantity assumed':
      return anyOf(job, ['Qty']);
    case 'no mass':
      return anyOf(job, ['Length']);
    case 'holes':
      return !reading.counted && anyOf(job, ['Hole', 'Holes'], reading.group);
    case 'notches':
      return anyOf(job, ofWork.notch);
    case 'corners clipped':
      return anyOf(job, ofWork['corner clip']);
    case 'bends':
      return anyOf(job, ofWork.bend);
    default:
      return false;
  }
}
