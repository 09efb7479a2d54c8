// A plate of 300 × 100 mm.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutsOverLine } from '../../../src/core/part/cutsOverLine.js';
import type { Notch, NotchPlace } from '../../../src/core/part/outlineInput.js';
import { outlineFor } from '../../support/face.js';

const across = (atMm: number) => ({ runs: 'across', atMm }) as const;
const along = (atMm: number) => ({ runs: 'along', atMm }) as const;
const kind = 'sheared';
const notch = (place: NotchPlace, widthMm: number, depthMm: number): Notch => ({
  shape: 'rectangle',
  place,
  widthMm,
  depthMm,
  kind,
});
const inLeftEnd = (depthMm: number) => notch({ at: 'end', end: 'left', centerMm: 50 }, 20, depthMm);

describe('cutsOverLine', () => {
  it('says how far the floor of a notch lies beyond the line, and where', () => {
    const [cut] = cutsOverLine(outlineFor({ notches: [inLeftEnd(60)] }), across(50));
    expect(cut).toMatchObject({ overMm: 10, edge: { cause: { is: 'notch', number: 1 } } });
    expect(cut?.at).toEqual([
      { x: 50, y: 50 },
      { x: 60, y: 50 },
    ]);
  });

  it('takes a notch that ends on the line for one that parts it, and leaves out one that ends before it', () => {
    expect(cutsOverLine(outlineFor({ notches: [inLeftEnd(50)] }), across(50))).toMatchObject([{ overMm: 0 }]);
    expect(cutsOverLine(outlineFor({ notches: [inLeftEnd(49)] }), across(50))).toEqual([]);
  });

  it('finds each of several, from either side of the line', () => {
    const notches = [
      notch({ at: 'end', end: 'left', centerMm: 20 }, 10, 160),
      notch({ at: 'end', end: 'right', centerMm: 70 }, 10, 170),
    ];
    const found = cutsOverLine(outlineFor({ notches }), across(150));
    expect(found.map(({ overMm, edge }) => [edge.cause.number, overMm])).toEqual([
      [1, 10],
      [2, 20],
    ]);
    expect(found.map(({ at }) => at[1].x)).toEqual([160, 130]);
  });

  it('leaves out what takes only the end of the line away', () => {
    const corner = notch({ at: 'corner', end: 'left', side: 'bottom' }, 80, 40);
    expect(cutsOverLine(outlineFor({ notches: [corner] }), across(50))).toEqual([]);
    const inEdge = notch({ at: 'edge', side: 'bottom', centerMm: 50 }, 40, 30);
    expect(cutsOverLine(outlineFor({ notches: [inEdge] }), across(50))).toEqual([]);
    const clips = [{ end: 'left', side: 'top', alongMm: 60, acrossMm: 60, kind }] as const;
    expect(cutsOverLine(outlineFor({ clips }), across(30))).toEqual([]);
  });

  it('is a notch in a long edge over a line along it, by what it is deeper', () => {
    const mm = (least: number, most: number) => fc.integer({ min: least, max: most });
    const side = fc.constantFrom('bottom' as const, 'top' as const);
    fc.assert(
      fc.property(
        side,
        mm(20, 280),
        mm(2, 30),
        mm(1, 99),
        mm(1, 99),
        (edge, centerMm, widthMm, depthMm, line) => {
          const notches = [notch({ at: 'edge', side: edge, centerMm }, widthMm, depthMm)];
          const found = cutsOverLine(outlineFor({ notches }), along(edge === 'bottom' ? line : 100 - line));
          expect(found.map(({ overMm }) => overMm)).toEqual(depthMm < line ? [] : [depthMm - line]);
          expect(found.map(({ at }) => at[0].x)).toEqual(depthMm < line ? [] : [centerMm]);
        },
      ),
    );
  });
});
