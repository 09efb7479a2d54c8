import { describe, expect, it } from 'vitest';
import { holeLadder, punchesOnHandMm } from '../../src/drawing/capacity/holeLadder.js';
import { ladderLegend } from '../../src/drawing/capacity/ladderLegend.js';
import type { Drawing } from '../../src/drawing/drawing.js';
import { shopWith } from '../support/sampleShop.js';
import { corners, drawn, grade, inch, linear, pathsOf, textAt } from './support.js';

const tools = [
  ['Press', 'Kind', 'Shape', 'Size', 'Count'],
  ['any', 'punch', 'round', '9/16', 1],
  ['Bay A', 'punch', 'round', '13/16', 2],
  ['Bay B', 'punch', 'round', '7/8', 2],
  ['any', 'punch', 'round', '15/16', 'none'],
  ['any', 'die', 'round', '27/32', 1],
];
const shop = shopWith({}, { tools });
const press = shop.presses[0] ?? fail();
const selected = {
  hole: { shape: 'round', diameterMm: (13 / 16) * inch },
  thicknessMm: (3 / 8) * inch,
} as const;

function fail(): never {
  throw new Error('the sample shop has no press');
}

const ladder = (more: object = {}) =>
  drawn(holeLadder({ press, grade: grade('A36'), shop, selected, ...more }));
const holeAt = (drawing: Drawing) => linear(drawing, ['0', 0], ['1-1/2', 1.5]);

describe('the hole ladder', () => {
  it('draws the bar of 1/2 in from 1/2 to 1 in thick, and to 1-1/4 in thin', () => {
    const drawing = ladder();
    const rung = drawing.shapes.find(
      (shape) => shape.kind === 'text' && shape.text === '1/2' && shape.anchor === 'end',
    );
    const y = rung?.kind === 'text' ? rung.y : NaN;
    const onRung = (path: string) => corners(path).every(([, at]) => Math.abs(at - (y - 4)) < 8);
    const bar = pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'solid').find(onRung);
    const [, x = '', width = ''] = /^M([\d.]+) [\d.]+h([\d.]+)/.exec(bar ?? '') ?? [];
    const hole = holeAt(drawing);
    expect(hole(Number(x))).toBeCloseTo(0.5, 2);
    expect(hole(Number(x) + Number(width))).toBeCloseTo(1, 2);
    const thin = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'thin').filter(
      (path) => onRung(path) && new Set(corners(path).map(([, at]) => at)).size === 1,
    );
    expect(thin.map((path) => corners(path).map(([at]) => Number(hole(at).toFixed(2))))).toContainEqual([
      0.5, 1.25,
    ]);
  });

  it('puts the diamond of the selected hole at its size, on the rung of its thickness', () => {
    const drawing = ladder();
    const [outline] = pathsOf(drawing, (shape) => shape.kind === 'area' && shape.line === 'outline');
    const places = corners(outline ?? '');
    const middle = places.reduce(([x, y], [px, py]) => [x + px / 4, y + py / 4] as [number, number], [0, 0]);
    expect(holeAt(drawing)(middle[0])).toBeCloseTo(13 / 16, 2);
    expect(middle[1]).toBeCloseTo(textAt(drawing, '3/8').y - 4, 1);
  });

  it('ticks the punches on hand for the press: its own and those of any, none of which there are none, no dies', () => {
    expect(punchesOnHandMm(press, shop).map((mm) => mm / inch)).toEqual([9 / 16, 13 / 16]);
  });

  it('gives a thickness that is not common a rung of its own', () => {
    const drawing = ladder({ selected: { ...selected, thicknessMm: 11 } });
    expect(drawing.points.filter(({ label }) => label.startsWith('0.433 in:'))).toHaveLength(1);
  });

  it('places a slot where the round hole of the same cut is', () => {
    // π · 10 + 2 · 20 over π
    const slot = { shape: 'slot', widthMm: 10, lengthMm: 30 } as const;
    const drawing = ladder({ selected: { ...selected, hole: slot } });
    expect(drawing.summary).toContain('takes the force of Ø0.895');
    expect((10 + 40 / Math.PI) / inch).toBeCloseTo(0.895, 3);
  });

  it('says in one sentence where the selected hole stands', () => {
    const of = (diameterIn: number, thicknessIn: number) =>
      ladder({
        selected: {
          hole: { shape: 'round', diameterMm: diameterIn * inch },
          thicknessMm: thicknessIn * inch,
        },
      }).summary;
    expect(of(13 / 16, 3 / 8)).toBe(
      'Ø13/16 through A36 3/8 in thick is within the 80% the shop uses on Bay A.',
    );
    expect(of(1.1, 1 / 2)).toContain('is above the 80% the shop uses');
    expect(of(1.3, 1 / 2)).toContain('is over the largest hole');
    expect(of(1 / 4, 1 / 2)).toContain('is under the smallest hole');
  });

  it('tells every rung as a point and as a row of the table', () => {
    const { points, table } = ladder();
    expect(table.rows).toHaveLength(9);
    expect(points).toHaveLength(10);
    expect(table.rows[5]).toEqual(['A36', '1/2', '1/2', '1', '1-1/4', '9/16, 13/16']);
    expect(points[5]?.label).toBe(
      "1/2 in: holes from 1/2 to 1 in within the shop's share, to 1-1/4 at the rating. Punches on hand in that range: 2, the largest Ø13/16.",
    );
    expect(points[8]?.label).toContain('none');
  });

  it('is a sentence where the press has no punch', () => {
    const none = shopWith({ Punch: 'no' });
    expect(holeLadder({ press: none.presses[0] ?? fail(), grade: grade('A36'), shop: none })).toEqual({
      problem: 'Bay A has no punch.',
    });
  });

  it('keeps inside its width at 240 and 560 pixels', () => {
    for (const width of [240, 560]) {
      const drawing = ladder({ width });
      const places = pathsOf(drawing, () => true).flatMap(corners);
      expect(Math.max(...places.map(([x]) => x))).toBeLessThanOrEqual(width);
      expect(Math.min(...places.map(([x]) => x))).toBeGreaterThanOrEqual(0);
    }
  });

  it('is drawn as before', () => {
    expect(ladder().shapes).toMatchSnapshot();
  });
});

describe('the largest punch on hand', () => {
  it('of each thickness stands at its rung, by name; none where no punch fits', () => {
    const onHand = ladder().shapes.flatMap((shape) =>
      shape.kind === 'text' && shape.anchor === 'end' && /Ø|none/.test(shape.text) ? shape.text : [],
    );
    // Smallest holes 1/8 … 5/8 leave 13/16; in 3/4 it would take more than the rating, and 1 in takes no hole.
    expect(onHand).toEqual([...Array<string>(7).fill('Ø13/16'), 'Ø13/16', 'none']);
  });

  it('has no column where no punches are known', () => {
    const bare = shopWith();
    const drawing = drawn(holeLadder({ press: bare.presses[0] ?? fail(), grade: grade('A36'), shop: bare }));
    expect(drawing.shapes.some((shape) => shape.kind === 'text' && shape.text === 'on hand')).toBe(false);
  });
});

describe('the legend of the ladder', () => {
  it('says in words what bar, line, ticks and diamond are, with the share of the press', () => {
    expect(ladder({ selected }).notes).toEqual([
      'Thick bar: up to the 80% of the rating that the shop uses. Thin line: up to the rating. Ticks: punches on hand, with the largest named at the right. Diamond: the selected hole.',
    ]);
    const bare = shopWith();
    expect(ladderLegend({ press: bare.presses[0] ?? fail(), punches: [] })).not.toMatch(/Ticks|Diamond/);
  });
});
