import { describe, expect, it } from 'vitest';
import { holeLadder, punchesOnHandMm } from '../../src/drawing/capacity/holeLadder.js';
import { wedge } from '../../src/drawing/capacity/wedge.js';
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
      'Ø13/16 through A36 3/8 in thick is within the 80 % the shop uses on Bay A.',
    );
    expect(of(1.1, 1 / 2)).toContain('is above the 80 % the shop uses');
    expect(of(1.3, 1 / 2)).toContain('is over the largest hole');
    expect(of(1 / 4, 1 / 2)).toContain('is under the least hole');
  });

  it('tells every rung as a point and as a row of the table', () => {
    const { points, table } = ladder();
    expect(table.rows).toHaveLength(9);
    expect(points).toHaveLength(10);
    expect(table.rows[5]).toEqual(['A36', '1/2', '1/2', '1', '1-1/4', '9/16, 13/16']);
    expect(points[5]?.label).toBe(
      "1/2 in: holes from 1/2 to 1 in within the shop's share, to 1-1/4 at the rating. Punches on hand in that range: 2.",
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

/** Values of the two logarithmic scales, from the marks that are written. */
function scales(drawing: Drawing) {
  const log = (from: number, to: number, low: number, high: number) => (at: number) =>
    low * (high / low) ** ((at - from) / (to - from));
  const marks = drawing.shapes.filter((shape) => shape.kind === 'text');
  const along = (text: string) =>
    marks.find((mark) => mark.text === text && mark.anchor === 'middle')?.x ?? NaN;
  const up = (text: string) =>
    (marks.find((mark) => mark.text === text && mark.anchor === 'end')?.y ?? NaN) - 4;
  return {
    thickness: log(along('1/8'), along('1'), 1 / 8, 1),
    hole: log(up('1/8'), up('1'), 1 / 8, 1),
  };
}

const wide = (more: object = {}) => drawn(wedge({ press, grades: [grade('A36')], shop, selected, ...more }));

describe('hole against thickness', () => {
  it('has limits of equal force that fall straight: hole times thickness stays the same', () => {
    const drawing = wide();
    const { thickness, hole } = scales(drawing);
    const outlines = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'outline');
    const rating = corners(outlines[1] ?? '').map(([x, y]) => [thickness(x), hole(y)] as const);
    const falling = rating.filter(([, d]) => d < 1.49);
    expect(falling.length).toBeGreaterThan(20);
    const ratingKip = Math.PI * 1.5 * 0.5 * 50;
    for (const [t, d] of falling) expect((Math.PI * d * t * 60) / ratingKip).toBeCloseTo(1, 2);
    for (const [, d] of rating.filter(([t]) => t < 0.4)) expect(d).toBeCloseTo(1.5, 1);
  });

  it('has a least hole that rises straight: hole over thickness stays the same', () => {
    const drawing = wide();
    const { thickness, hole } = scales(drawing);
    const [least = ''] = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'outline');
    for (const [x, y] of corners(least)) expect(hole(y) / thickness(x)).toBeCloseTo(1, 1);
  });

  it('puts the diamond at the thickness and the hole of the row', () => {
    const drawing = wide();
    const { thickness, hole } = scales(drawing);
    const point = drawing.points.at(-1);
    expect(point?.label).toBe('Selected: Ø13/16 through 3/8 in.');
    expect(thickness(point?.x ?? 0)).toBeCloseTo(3 / 8, 2);
    expect(hole(point?.y ?? 0)).toBeCloseTo(13 / 16, 2);
  });

  it('tells at most three grades apart, by dash and by name', () => {
    const drawing = wide({ grades: ['A36', 'S355', '6061-T6', 'A514'].map(grade) });
    for (const name of ['A36', 'S355', '6061-T6']) expect(textAt(drawing, name).strong).toBe(true);
    const dashes = new Set(drawing.shapes.map((shape) => (shape.kind === 'line' ? shape.dash : undefined)));
    expect([...dashes].filter((dash) => dash !== undefined)).toHaveLength(2);
    expect(JSON.stringify(drawing)).not.toContain('A514');
    expect(drawing.table.rows).toHaveLength(27);
  });

  it('keeps the name of a grade inside its frame where the line ends near it', () => {
    for (const width of [460, 540]) {
      const drawing = wide({ grades: ['A36', 'A572-50'].map(grade), width, height: 0.7 * width });
      const name = textAt(drawing, 'A572-50');
      // Bold letters of 13 px are about 7.5 px wide.
      expect(name.x + 7 * 7.5).toBeLessThan(width - 8);
      expect(name.x).toBeGreaterThan(textAt(drawing, 'A36').x);
    }
  });

  it('hatches the outside, stipples from the share to the rating and leaves the wedge bare', () => {
    const fills = wide().shapes.flatMap((shape) => (shape.kind === 'area' ? shape.fill : []));
    expect(fills.slice(0, 3)).toEqual(['hatch', 'paper', 'stipple']);
  });

  it('is drawn as before', () => {
    expect(wide().shapes).toMatchSnapshot();
  });
});
