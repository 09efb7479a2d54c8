import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import { readShop } from '../../../../src/core/shop/readShop.js';
import { readStock } from '../../../../src/core/shop/readStock.js';
import { gaugePush } from '../../../../src/core/stock/list/gaugePush.js';
import type { JobPart, StockJob } from '../../../../src/core/stock/list/stockJob.js';
import { stockJobs } from '../../../../src/core/stock/list/stockJobs.js';
import type { PlannedPiece } from '../../../../src/core/stock/stockPlan.js';

/** A job of one part of 1000 mm, cut by a press with these values. */
function jobOf(section: string, values: [string, string, CellValue][], kerf: CellValue, cells: CellValue[]) {
  const shop = readShop({
    presses: [['Item', 'Unit', 'Bay A'], ...values],
    settings: [
      ['Setting', 'Value'],
      ['Units', 'mm'],
      ['Cut kerf', kerf],
    ],
  });
  const headings = ['Mark', 'Section', 'Grade', 'Length', 'Press', 'Miter left', 'Miter right', 'Long side'];
  const rows = [['A', section, 'S235', 1000, 'Bay A', ...cells]];
  const { jobs } = stockJobs([{ name: 'Parts', headings, rows }], shop, readStock(undefined, shop));
  const [job] = jobs;
  const [part] = job?.parts ?? [];
  if (!job || !part) throw new Error('the row is not planned');
  return { job, part };
}

const lies = (leanLeftRad: number, leanRightRad: number): PlannedPiece => ({
  ...{ part: 0, startMm: 0, endMm: 1000, isTurnedOver: false, isTurnedRound: false },
  leanLeftRad,
  leanRightRad,
});
const reach = (mm: CellValue): [string, string, CellValue] => ['Back gauge reach', 'mm', mm];
const slug = (mm: CellValue): [string, string, CellValue] => ['Angle shear slug', 'mm', mm];
const push = ({ job, part }: { job: StockJob; part: JobPart }, piece = lies(0, 0)) =>
  gaugePush(job, part, piece);

describe('What is pushed to the stop for a piece in its bar', () => {
  it('is its length under a single blade, and the slug more for an angle', () => {
    expect(push(jobOf('FB 100x10', [reach(1500)], null, []))).toEqual({ mm: 1000, reach: 'within' });
    expect(push(jobOf('L80X80X8', [reach(1500), slug(6)], null, []))).toEqual({ mm: 1006, reach: 'within' });
    expect(push(jobOf('L80X80X8', [reach(1500), slug(6)], 'L 4', []))).toEqual({ mm: 1004, reach: 'within' });
  });

  it('says what is not known: the slug, the reach, which edge is the longer, how a piece without a nest lies', () => {
    expect(push(jobOf('L80X80X8', [reach(1500)], null, []))).toEqual({ open: 'Angle shear slug' });
    expect(push(jobOf('FB 100x10', [], null, []))).toEqual({ mm: 1000, reach: 'unknown' });
    expect(push(jobOf('FB 100x10', [reach(999)], null, []))).toEqual({ mm: 1000, reach: 'over' });
    expect(push(jobOf('FB 100x10', [reach('none')], null, []))).toEqual({ mm: 1000, reach: 'within' });
    expect(push(jobOf('FB 100x10', [reach(1500)], null, [45, 45, null]))).toEqual({ open: 'Long side' });
    // One square end: the stop touches the longer edge, whichever it is.
    const oneEnd = jobOf('L80X80X8', [reach(1500), slug(6)], null, [null, 60, null]);
    expect(push(oneEnd)).toMatchObject({ mm: expect.closeTo(1000 + 6 / Math.cos(Math.PI / 3), 9) as number });
  });

  it('is no push where no shear of the press cuts it', () => {
    expect(push(jobOf('C8X11.5', [reach(1500)], 3, []))).toEqual({ none: true });
  });

  it('is the way along the edge that touches, for every lie of a piece', () => {
    const { job, part } = jobOf('FB 100x10', [reach('none')], 3, [22, 22, 'left top, right bottom']);
    const nested = { ...part };
    delete nested.notNested;
    const angle = fc.integer({ min: -45, max: 45 }).map((degrees) => (degrees * Math.PI) / 180);
    fc.assert(
      fc.property(angle, angle, fc.constantFrom(0, 3, 6), (left, right, kerfMm) => {
        const mitered = { ...job, widthMm: 100, kerf: { mm: kerfMm, from: 'setting' as const } };
        // The four corners of the piece, its foremost at 0; a face lies farther along the bar at the far edge where it leans above 0.
        const [far, near] = [100, 0];
        const front = (y: number) => (y - (left > 0 ? near : far)) * Math.tan(left);
        const back = (y: number) => 1000 + (y - (right > 0 ? far : near)) * Math.tan(right);
        const touching = left === 0 ? (right > 0 ? far : near) : left > 0 ? near : far;
        const given = gaugePush(mitered, nested, lies(left, right));
        expect('mm' in given && given.mm).toBeCloseTo(
          back(touching) - front(touching) + kerfMm / Math.cos(right),
          6,
        );
      }),
    );
  });
});
