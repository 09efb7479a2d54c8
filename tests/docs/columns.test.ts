import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { readHeadings } from '../../src/core/row/headings/readHeadings.js';
import { readRow } from '../../src/core/row/readRow.js';
import type { HoleGroup, RowJob } from '../../src/core/row/job/rowJob.js';
import { inInches } from '../core/row/read/support.js';
import { shopWith } from '../support/sampleShop.js';

/** The columns and cells that the page for the estimator shows. */
const shown = (
  readFileSync(path.join(root, 'docs/estimator.md'), 'utf8').split('## More columns of a list')[1] ?? ''
)
  .split('\n## ')[0]
  ?.split('\n')
  .flatMap((line) => {
    const [, column = '', cell = ''] = /^\| ([A-Z][a-z]*(?: [a-z]+)?) +\| `([^`]+)`/.exec(line) ?? [];
    return column === '' ? [] : [`${column}: ${cell}`];
  });

const plate = { Section: 'PL1/4X6', Grade: 'A36', Length: 24 };
const holes = { ...plate, Hole: '13/16', Holes: 4, Edge: 2, End: 2 };
const group = (job: RowJob): Partial<HoleGroup> => job.groups[0] ?? {};
const corner = (side: string, end: string) => ({ at: 'corner', end, side });

/** Each cell in a row that can have it, and what it is read as, in inches. */
const read: Record<string, [row: object, of: (job: RowJob) => unknown, expected: unknown]> = {
  'Holes: 2 each end': [holes, (job) => [group(job).count, group(job).eachEnd], [4, true]],
  'Edge: top 1-1/2': [
    holes,
    (job) => [inInches({ atMm: group(job).edgeMm }), group(job).edgeFrom],
    [{ at: 1.5 }, 'top'],
  ],
  'End: right 2': [
    holes,
    (job) => [inInches({ atMm: group(job).endMm }), group(job).endFrom],
    [{ at: 2 }, 'right'],
  ],
  'Pitch: 3, 3-1/2, 3': [holes, (job) => inInches({ ofMm: group(job).pitchesMm }), { of: [3, 3.5, 3] }],
  'Pitch: 2@3, 3-1/2 = 9-1/2': [
    holes,
    (job) => inInches({ ofMm: group(job).pitchesMm }),
    { of: [3, 3, 3.5] },
  ],
  'Holes at: x2 y2; x8 y2': [
    { ...plate, Hole: '13/16' },
    (job) => inInches(group(job).holesAt),
    [
      { x: 2, y: 2 },
      { x: 8, y: 2 },
    ],
  ],
  'Slot: along': [{ ...holes, Hole: '13/16x1-7/8' }, (job) => group(job).slot, 'along'],
  'Edge kind: sawn': [holes, (job) => group(job).edgeKind, 'machine cut'],
  'End kind: sheared connection end': [holes, (job) => group(job).endKind, 'sheared connection end'],
  'Holes by: drill': [holes, (job) => group(job).by, 'drill'],
  'Cut by: saw': [plate, ({ cutBy }) => cutBy, 'saw'],
  'Notch at: bottom left': [
    { ...plate, 'Notch width': 1, 'Notch depth': 1 },
    ({ notches }) => notches?.at,
    [corner('bottom', 'left')],
  ],
  'Clip at: top left, top right': [
    { ...plate, 'Corner clip': 1 },
    ({ clips }) => clips?.at,
    [corner('top', 'left'), corner('top', 'right')],
  ],
  'Bend at: left end 4': [
    { ...plate, 'Bend length': 6 },
    ({ bends }) => inInches(bends?.at),
    [{ at: 'end', end: 'left', from: 4 }],
  ],
  'Long side: left top, right bottom': [
    { ...plate, 'Miter left': 45, 'Miter right': 45 },
    ({ longSide }) => longSide,
    { left: 'top', right: 'bottom' },
  ],
  'Miter leg: long': [
    { ...plate, Section: 'L4X3X1/4', 'Miter left': 45 },
    ({ miterLeg }) => miterLeg,
    'long',
  ],
  'Finish: HDG': [plate, ({ galvanized }) => galvanized, true],
  'Hole: 13/16 CSK': [holes, (job) => group(job).finishing, ['countersink']],
  'Hole: Ø27/64 tapped': [holes, (job) => group(job).finishing, ['tap']],
  'Qty: 2R 2L': [plate, ({ qty, hands }) => [qty, hands], [4, { right: 2, left: 2 }]],
};

describe('the columns on the page for the estimator', () => {
  it('are all tried here', () => {
    expect(shown).toEqual(Object.keys(read));
  });

  it.each(Object.entries(read))('%s is read as it says', (text, [row, of, expected]) => {
    const [column = '', cell = ''] = text.split(/: (.*)/);
    const cells = { ...row, [column]: cell };
    const job = readRow(Object.values(cells), readHeadings(Object.keys(cells)), shopWith());
    expect(job.problems).toEqual([]);
    expect(of(job)).toEqual(expected);
  });
});
