import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../src/drawing/drawing.js';
import { labelWidth } from '../../../src/drawing/labelWidth.js';
import { barDrawing } from '../../../src/drawing/stock/barDrawing.js';
import { facedBar, facesOf } from '../../../src/drawing/stock/barFaces.js';
import { barRuns } from '../../../src/drawing/stock/barRuns.js';
import { corners, pathsOf, textAt } from '../support.js';
import { anyBar, barOf } from './support.js';

/** Room around a label that `labelWidth` counts. */
const around = 6;

function boxes({ shapes }: Drawing) {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'text') return [];
    const half = (labelWidth(shape.text) - around) / 2;
    return [
      {
        text: shape.text,
        left: shape.x - half,
        right: shape.x + half,
        top: shape.y - 10,
        bottom: shape.y + 2,
      },
    ];
  });
}

const texts = (drawing: Drawing) => boxes(drawing).map(({ text }) => text);

describe('the drawing of a bar', () => {
  it('has a sentence, points and a list of the same', () => {
    const drawing = barDrawing(
      barOf([
        { mark: 'ST1', lengthMm: 1500, pieces: 3 },
        { mark: 'CL1', lengthMm: 150 },
      ]),
    );
    expect(drawing.title).toBe('6 × 6000 mm');
    expect(drawing.summary).toBe(
      '6 bars of 6000 mm, each cut into 3 × ST1 and 1 × CL1, with 1338 mm scrap at the end.',
    );
    expect(drawing.table.rows).toEqual([
      ['A', '3', 'ST1', '1500 mm', '1503 mm, 3006 mm, 4509 mm', '1500 mm'],
      ['B', '1', 'CL1', '150 mm', '4662 mm', '150 mm'],
      ['', '', 'scrap', '1338 mm', '', ''],
    ]);
    expect(drawing.points.map(({ label }) => label)).toEqual([
      'A: 3 × ST1, 1500 mm, last cut at 4509 mm',
      'B: 1 × CL1, 150 mm, last cut at 4662 mm',
      '1338 mm scrap',
    ]);
  });

  it('is to scale along the bar', () => {
    const drawing = barDrawing(barOf([{ mark: 'A1', lengthMm: 1500, pieces: 2 }]));
    const perMm = (296 - 4) / 6000;
    expect(textAt(drawing, 'A A1').x).toBeCloseTo(2 + 750 * perMm, 1);
    const cuts = pathsOf(drawing, ({ kind }) => kind === 'line').map((path) => corners(path));
    expect(cuts.some(([top]) => Math.abs((top?.[0] ?? 0) - (2 + 1500 * perMm)) < 0.1)).toBe(true);
  });

  it('has letters outside the strip for pieces too narrow for one, runs told once', () => {
    const drawing = barDrawing(
      barOf([
        { mark: 'ST1', lengthMm: 2500 },
        { mark: 'CL1', lengthMm: 120, pieces: 12 },
      ]),
    );
    expect(texts(drawing)).toEqual(['12 × B', 'A ST1']);
  });

  it('draws nested miters as one leaning line, at their angle where there is room', () => {
    const lean = Math.PI / 6;
    const drawing = barDrawing(
      barOf([
        { mark: 'A1', lengthMm: 1500, leanRightRad: lean },
        { mark: 'B1', lengthMm: 1500, leanLeftRad: lean },
      ]),
    );
    const leaning = pathsOf(drawing, ({ kind }) => kind === 'line')
      .map((path) => corners(path))
      .filter((points) => points.length === 2 && points[0]?.[0] !== points[1]?.[0]);
    expect(leaning).toHaveLength(1);
    const [[top, bottom] = []] = leaning;
    expect((top?.[0] ?? 0) - (bottom?.[0] ?? 0)).toBeCloseTo(26 * Math.tan(lean), 1);
  });

  it('outlines a drop to keep with its length, and hatches scrap', () => {
    const cut = [{ mark: 'A1', lengthMm: 1500 }];
    const isHeavy = (drawing: Drawing) =>
      drawing.shapes.some((shape) => shape.kind === 'line' && shape.line === 'heavy');
    const isCrossed = (drawing: Drawing) =>
      drawing.shapes.some((shape) => shape.kind === 'area' && shape.fill === 'cross');
    const [kept, scrap] = [barDrawing(barOf(cut, { isKept: true })), barDrawing(barOf(cut))];
    expect([isHeavy(kept), isCrossed(kept), isHeavy(scrap), isCrossed(scrap)]).toEqual([
      true,
      false,
      false,
      true,
    ]);
    expect(texts(kept)).toContain('4497 mm');
    expect(texts(scrap)).toEqual(['A A1']);
  });

  it('shows trim solid and grip dotted, however short', () => {
    const drawing = barDrawing({ ...barOf([{ mark: 'A1', lengthMm: 1500 }]), trimMm: 1, gripMm: 1 });
    const wide = (fill: string) =>
      pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === fill).map((path) => {
        const xs = corners(path).map(([x]) => x);
        return Math.max(...xs) - Math.min(...xs);
      });
    expect(wide('solid')[0]).toBeGreaterThanOrEqual(3);
    expect(wide('stipple')[0]).toBeGreaterThanOrEqual(3);
  });

  it('says where cuts lie too near each other to be drawn', () => {
    const drawing = barDrawing(barOf([{ mark: 'CL1', lengthMm: 40, pieces: 100 }]));
    expect(drawing.summary).toContain('the cuts lie too near each other to draw each of them: see the list.');
  });

  it('has no label over another or outside, whatever is cut', () => {
    fc.assert(
      fc.property(anyBar, (input) => {
        const drawing = barDrawing(input);
        const all = boxes(drawing);
        for (const [at, box] of all.entries()) {
          expect(box.left, box.text).toBeGreaterThanOrEqual(0);
          expect(box.right, box.text).toBeLessThanOrEqual(drawing.width);
          expect(box.top, box.text).toBeGreaterThanOrEqual(0);
          expect(box.bottom, box.text).toBeLessThanOrEqual(drawing.height);
          for (const other of all.slice(at + 1)) {
            const isOver =
              box.left < other.right &&
              other.left < box.right &&
              box.top < other.bottom &&
              other.top < box.bottom;
            expect(isOver, `${box.text} over ${other.text}`).toBe(false);
          }
        }
      }),
    );
  });

  it('has no face that crosses the next one, at the top or the bottom', () => {
    fc.assert(
      fc.property(anyBar, (input) => {
        const faces = facesOf(facedBar(input, barRuns(input.bar)));
        for (const [at, face] of faces.slice(1).entries()) {
          const before = faces[at] ?? face;
          for (const end of [0.5, -0.5])
            expect(face.x + end * face.lean - before.x - end * before.lean).toBeGreaterThanOrEqual(-0.01);
        }
      }),
    );
  });

  it('tells every piece in its list once', () => {
    fc.assert(
      fc.property(anyBar, (input) => {
        const { table } = barDrawing(input);
        const told = table.rows.reduce((sum, [, pieces]) => sum + Number(pieces), 0);
        expect(told).toBe(input.bar.pieces.length);
      }),
    );
  });
});
