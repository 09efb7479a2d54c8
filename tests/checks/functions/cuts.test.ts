import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readShop } from '../../../src/core/shop/readShop.js';
import { inchText } from '../../support/inches.js';
import { pressTable, shopTables } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';
import { expectFrameCloses } from './frameReferee.js';

const { Line, Point, Vector } = Flatten;
const sheet = new SheetRuntime();
const runs = { numRuns: 300, seed: 11 };
const radian = (degrees: number) => (degrees * Math.PI) / 180;
const degrees = fc.integer({ min: 1, max: 45 });
const width = fc.integer({ min: 8, max: 96 }).map((parts) => parts / 16);
const length = fc.integer({ min: 200, max: 2000 }).map((parts) => parts / 16);
const flat = (inches: number) => `FB 1/8"x${inchText(inches * 16)}"`;

/** The line of a cut through a point of an edge, leaning by degrees from square, by the geometry library. */
function cutThrough(x: number, y: number, lean: number): Flatten.Line {
  const square = new Vector(0, 1).rotate(radian(lean));
  return new Line(new Point(x, y), square.rotate90CW());
}

/** Where a line crosses the edge at a height. */
function crossing(line: Flatten.Line, y: number): number {
  const edge = new Line(new Point(0, y), new Vector(0, 1));
  const [point] = line.intersect(edge);
  if (!point) throw new Error('the lines do not meet');
  return point.x;
}

describe('MITERKERF', () => {
  it('is the distance, along an edge, of two parallel lines a kerf apart (geometry library)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 32 }), degrees, (parts, miter) => {
        const kerf = parts / 32;
        const near = cutThrough(0, 0, miter);
        const far = near.translate(new Vector(1, 0).rotate(radian(miter)).multiply(kerf));
        const apart = crossing(far, 0) - crossing(near, 0);
        expect(sheet.number('MITERKERF', kerf, miter)).toBeCloseTo(apart, 9);
      }),
      runs,
    );
  });

  it('a kerf of 1 across 60° takes 2 along the bar (half of an equilateral triangle)', () => {
    expect(sheet.number('MITERKERF', 1, 60)).toBeCloseTo(2, 12);
  });
});

/** Both edges of a piece from 0 to `long`, its left long point at the bottom; `right` below 0 has its own at the top. */
function edgesByLibrary(long: number, wide: number, left: number, right: number) {
  const leftCut = cutThrough(0, 0, -left);
  const rightCut = right < 0 ? cutThrough(long, wide, right) : cutThrough(long, 0, right);
  const edge = (y: number) => crossing(rightCut, y) - crossing(leftCut, y);
  return { bottom: edge(0), top: edge(wide), rightCut };
}

const rights = fc.integer({ min: -45, max: 45 });

describe('MITERSHORT', () => {
  it('is the shorter edge between the lines of the two cuts (geometry library)', () => {
    fc.assert(
      fc.property(length, width, degrees, rights, (long, wide, left, right) => {
        const { bottom, top } = edgesByLibrary(long, wide, left, right);
        const short = sheet.number('MITERSHORT', long, flat(wide), left, 'in', right);
        expect(short).toBeCloseTo(Math.min(bottom, top), 9);
      }),
      runs,
    );
  });

  it('of a 12 in piece of 3 in at 45° and 45° is 6 in (by hand: a square is cut off in each corner)', () => {
    expect(sheet.number('MITERSHORT', 12, 'L3X3X1/4', 45, 'in', 45)).toBeCloseTo(6, 12);
  });

  it('takes the leg of an angle that is written first (by hand: 20 − 4, 20 − 3)', () => {
    expect(sheet.number('MITERSHORT', 20, 'L4X3X1/4', 45)).toBeCloseTo(16, 12);
    expect(sheet.number('MITERSHORT', 20, 'L3X4X1/4', 45)).toBeCloseTo(17, 12);
  });
});

describe('CUTLENGTH', () => {
  it('is how far the far side of the cut is from the stop, where the long point touches (geometry library)', () => {
    fc.assert(
      fc.property(
        length,
        width,
        degrees,
        rights,
        fc.integer({ min: 1, max: 16 }),
        (long, wide, left, right, parts) => {
          const kerf = parts / 32;
          const { rightCut } = edgesByLibrary(long, wide, left, right);
          const away = new Vector(1, 0).rotate(radian(right));
          const far = rightCut.translate(away.multiply(kerf));
          const pushed = sheet.number('CUTLENGTH', long, flat(wide), left, 'in', right, kerf);
          expect(pushed).toBeCloseTo(crossing(far, 0), 9);
        },
      ),
      runs,
    );
  });

  it('of a square piece is its length and the kerf (by hand)', () => {
    expect(sheet.number('CUTLENGTH', 10, 'FB 1/4x2', null, 'in', null, 0.125)).toBeCloseTo(10.125, 12);
  });
});

describe('FRAMECUTS', () => {
  const legs = fc.tuple(fc.integer({ min: 16, max: 64 }), fc.integer({ min: 16, max: 64 }));
  const outside = fc.integer({ min: 136, max: 1600 }).map((parts) => parts / 16);

  const sizes = fc.oneof(
    fc.tuple(outside, outside),
    outside.map((side) => [side, side] as const),
  );

  it('its pieces close to the outside and the clear size, toes in or out, unequal legs, kerf or none (geometry library)', () => {
    fc.assert(
      fc.property(
        sizes,
        legs,
        fc.constantFrom('flat', 'in', 'out'),
        fc.option(fc.integer({ min: 2, max: 16 })),
        ([wide, high], [inPlane, standing], toes, kerf) => {
          const bar = inPlane / 16;
          const angle = `L${inchText(inPlane)}X${inchText(standing)}X1/4`;
          const section = toes === 'flat' ? flat(bar) : angle;
          const kerfCell = kerf === null ? null : kerf / 32;
          const cells = sheet.call(
            'FRAMECUTS',
            wide,
            high,
            section,
            'in',
            toes === 'flat' ? null : toes,
            kerfCell,
          );
          expectFrameCloses(cells as unknown[][], { wide, high, bar, toes, kerf: kerfCell ?? 0 });
        },
      ),
      runs,
    );
  });

  it('every cut is of a hand the press named can make, or the frame is refused', () => {
    const position = fc.constantFrom('down', 'up', 'both');
    const station = fc.constantFrom('yes', 'no');
    const press = fc.tuple(station, position).map(([has, leg]) => ({
      'Angle shear': has,
      'Angle shear legs mitered': 'both',
      'Angle shear leg position': leg,
    }));
    fc.assert(
      fc.property(
        fc.array(press, { minLength: 1, maxLength: 4 }),
        fc.constantFrom('in', 'out'),
        (each, toes) => {
          const named = Object.fromEntries(each.map((cells, at) => [`Bay ${at}`, cells]));
          const shop = readShop({ presses: pressTable(named) });
          const call = ['FRAMECUTS', 48, 30, 'L3X3X1/4', shop.stamp, toes] as const;
          const makes = (leg: string) => (cells: (typeof each)[number]) =>
            cells['Angle shear'] === 'yes' && ['both', leg].includes(cells['Angle shear leg position']);
          const isPossible = each.some((cells) => makes('up')(cells) && makes('down')(cells));
          if (!isPossible) {
            expect(new SheetRuntime(shop).error(...call).message).toContain('no press makes both');
            return;
          }
          const [titles = [], ...rows] = new SheetRuntime(shop).call(...call) as string[][];
          for (const row of rows) {
            const legs = row[titles.indexOf('Leg')]?.match(/up|down/g) ?? [];
            expect(legs).toHaveLength(2);
            for (const name of row[titles.indexOf('Press')]?.split(/, | or /) ?? []) {
              for (const leg of legs)
                expect([named[name]].filter((cells) => cells && makes(leg)(cells))).toHaveLength(1);
            }
          }
        },
      ),
      runs,
    );
  });
});

describe('the items long, short and hand of a row', () => {
  const titles = [
    'Section',
    'Grade',
    'Length',
    'Miter left',
    'Miter right',
    'Long side',
    'Miter leg',
    'Press',
  ];
  const shop = readShop(shopTables());
  const rowSheet = new SheetRuntime(shop);
  const item = (row: readonly (string | number | null)[], name: string) =>
    (rowSheet.call('ROWCHECK', [titles], [row], shop.stamp, name) as unknown[][])[0]?.[0];
  const side = fc.constantFrom('heel', 'toe');
  const miter = fc.constantFrom(0, 15, 22.5, 30, 45);

  it('are those of the two cuts drawn with the heel at the bottom and the standing leg up (geometry library)', () => {
    fc.assert(
      fc.property(
        miter,
        miter,
        side,
        side,
        fc.constantFrom('long', 'short'),
        (left, right, atLeft, atRight, leg) => {
          fc.pre(left > 0 || right > 0);
          const [long, wide] = [30, leg === 'long' ? 4 : 3];
          const sides = [left > 0 ? `left ${atLeft}` : '', right > 0 ? `right ${atRight}` : ''];
          const longSide = sides.filter((text) => text !== '').join(', ');
          const row = ['L4X3X1/4', 'A36', long, left, right, longSide, leg, 'Bay A'];
          const y = { heel: 0, toe: wide };
          const cuts = [
            cutThrough(0, y[atLeft], atLeft === 'heel' ? -left : left),
            cutThrough(long, y[atRight], atRight === 'heel' ? right : -right),
          ] as const;
          const edge = (height: number) => crossing(cuts[1], height) - crossing(cuts[0], height);
          expect(item(row, 'long')).toBe(long);
          expect(item(row, 'short')).toBeCloseTo(Math.min(edge(0), edge(wide)), 9);
          // A line like \\ is a right-hand cut, one like / a left-hand one.
          const leans = cuts.map((cut) => crossing(cut, wide) - crossing(cut, 0));
          const hands = new Set(
            leans.filter((lean) => Math.abs(lean) > 1e-9).map((lean) => (lean < 0 ? 'right' : 'left')),
          );
          expect(item(row, 'hand')).toBe(hands.size === 2 ? 'both' : [...hands][0]);
        },
      ),
      runs,
    );
  });

  it('of a piece without a miter are its length twice, and no hand (by hand)', () => {
    const row = ['L4X3X1/4', 'A36', 30, null, null, null, null, 'Bay A'];
    expect(['long', 'short', 'hand'].map((name) => item(row, name))).toEqual([30, 30, '']);
  });
});
