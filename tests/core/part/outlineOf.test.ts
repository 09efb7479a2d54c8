import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Notch, OutlineInput } from '../../../src/core/part/outlineInput.js';
import { outlineOf } from '../../../src/core/part/outlineOf.js';
import { checkOutline } from '../../checks/part/checkOutline.js';
import { Random } from '../../checks/part/random.js';
import { randomPart } from '../../checks/part/randomPart.js';
import { outlineFor, plateInput } from '../../support/face.js';

const miter = (degrees: number, long: 'bottom' | 'top') =>
  ({ kind: 'sheared', miter: { rad: (degrees * Math.PI) / 180, long } }) as const;
const clip = (
  alongMm: number,
  acrossMm: number,
  end: 'left' | 'right' = 'left',
  side: 'bottom' | 'top' = 'bottom',
) => ({ end, side, alongMm, acrossMm, kind: 'sheared' }) as const;
const notch = (
  place: Notch['place'],
  widthMm = 40,
  depthMm = 30,
  shape: Notch['shape'] = 'rectangle',
): Notch => ({ shape, place, widthMm, depthMm, kind: 'sheared' });
const corners = (changes: Partial<OutlineInput>) =>
  outlineFor(changes).edges.map(({ from }) => [
    Math.round(from.x * 1e6) / 1e6,
    Math.round(from.y * 1e6) / 1e6,
  ]);
const causes = (changes: Partial<OutlineInput>) =>
  outlineFor(changes).edges.map(({ cause }) => (cause.number ? `${cause.is} ${cause.number}` : cause.is));
const problem = (changes: Partial<OutlineInput>) => {
  const outline = outlineOf(plateInput(changes));
  return 'problem' in outline ? outline : undefined;
};

describe('the outline of a face', () => {
  it('is the rectangle, each edge with its cause and kind', () => {
    expect(outlineFor().edges).toEqual([
      { from: { x: 0, y: 0 }, to: { x: 300, y: 0 }, cause: { is: 'bottom edge' }, kind: 'rolled' },
      { from: { x: 300, y: 0 }, to: { x: 300, y: 100 }, cause: { is: 'right end' }, kind: 'sheared' },
      { from: { x: 300, y: 100 }, to: { x: 0, y: 100 }, cause: { is: 'top edge' }, kind: 'rolled' },
      { from: { x: 0, y: 100 }, to: { x: 0, y: 0 }, cause: { is: 'left end' }, kind: 'sheared' },
    ]);
  });

  it('names heel and toe of a leg, and gives the heel no free edge', () => {
    const { edges } = outlineFor({
      bottom: { is: 'heel', kind: 'none' },
      top: { is: 'toe', kind: 'rolled' },
    });
    expect(edges.map(({ cause, kind }) => `${cause.is}: ${kind}`)).toEqual([
      'heel: none',
      'right end: sheared',
      'toe: rolled',
      'left end: sheared',
    ]);
  });

  it('keeps the length at the long point of a miter', () => {
    expect(corners({ left: miter(45, 'bottom'), right: miter(45, 'top') })).toEqual([
      [0, 0],
      [200, 0],
      [300, 100],
      [100, 100],
    ]);
    expect(causes({ left: miter(45, 'bottom'), right: miter(0, 'top') })).toEqual([
      'bottom edge',
      'right end',
      'top edge',
      'miter left',
    ]);
  });

  it('lets two miters meet in a point: a triangle is a part with three sides', () => {
    const triangle = { lengthMm: 200, left: miter(45, 'bottom'), right: miter(45, 'bottom') };
    expect(corners(triangle)).toEqual([
      [0, 0],
      [200, 0],
      [100, 100],
    ]);
    expect(causes(triangle)).toEqual(['bottom edge', 'miter right', 'miter left']);
  });

  it('cuts a corner off from edge to end', () => {
    expect(corners({ clips: [clip(20, 30)] })).toEqual([
      [0, 30],
      [20, 0],
      [300, 0],
      [300, 100],
      [0, 100],
    ]);
    expect(causes({ clips: [clip(20, 30, 'right', 'top'), clip(20, 30)] })).toEqual([
      'clip 2',
      'bottom edge',
      'right end',
      'clip 1',
      'top edge',
      'left end',
    ]);
  });

  it('measures a clip on a miter along the long edge and across the face', () => {
    expect(corners({ left: miter(45, 'bottom'), clips: [clip(20, 30)] })[0]).toEqual([30, 30]);
    expect(corners({ left: miter(45, 'bottom'), clips: [clip(20, 30, 'left', 'top')] }).slice(-2)).toEqual([
      [120, 100],
      [70, 70],
    ]);
  });

  it('cuts notches at corners, in edges and in ends, rectangles and vees', () => {
    expect(corners({ notches: [notch({ at: 'corner', end: 'right', side: 'bottom' })] }).slice(1, 4)).toEqual(
      [
        [260, 0],
        [260, 30],
        [300, 30],
      ],
    );
    expect(corners({ notches: [notch({ at: 'edge', side: 'top', centerMm: 100 })] }).slice(3, 7)).toEqual([
      [120, 100],
      [120, 70],
      [80, 70],
      [80, 100],
    ]);
    expect(
      corners({ notches: [notch({ at: 'edge', side: 'bottom', centerMm: 100 }, 40, 30, 'vee')] }).slice(1, 4),
    ).toEqual([
      [80, 0],
      [100, 30],
      [120, 0],
    ]);
    expect(corners({ notches: [notch({ at: 'end', end: 'left', centerMm: 50 })] }).slice(4)).toEqual([
      [0, 70],
      [30, 70],
      [30, 30],
      [0, 30],
    ]);
    expect(
      corners({ notches: [notch({ at: 'corner', end: 'left', side: 'bottom' }, 20, 30, 'vee')] }),
    ).toEqual(corners({ clips: [clip(20, 30)] }));
  });

  it('measures a notch in a miter from the end at its middle', () => {
    const inMiter = corners({
      left: miter(45, 'bottom'),
      notches: [notch({ at: 'end', end: 'left', centerMm: 50 }, 20, 30)],
    });
    expect(inMiter.slice(4)).toEqual([
      [60, 60],
      [80, 60],
      [80, 40],
      [40, 40],
    ]);
  });

  it('cuts vees and rectangles in a right end too, in their order along it', () => {
    const inEnd = [70, 30].map((centerMm, at) =>
      notch({ at: 'end', end: 'right', centerMm }, 20, 30, at === 0 ? 'vee' : 'rectangle'),
    );
    expect(corners({ notches: inEnd }).slice(2, 9)).toEqual([
      [300, 20],
      [270, 20],
      [270, 40],
      [300, 40],
      [300, 60],
      [270, 70],
      [300, 80],
    ]);
  });

  it('leaves a triangle with a notch its three sides', () => {
    const triangle = { lengthMm: 200, left: miter(45, 'bottom'), right: miter(45, 'bottom') };
    const notches = [notch({ at: 'edge', side: 'bottom', centerMm: 100 })];
    expect(causes({ ...triangle, notches })).toEqual([
      'bottom edge',
      'notch 1',
      'notch 1',
      'notch 1',
      'bottom edge',
      'miter right',
      'miter left',
    ]);
  });

  it.each([
    ['left', 'bottom', 20, 15],
    ['right', 'bottom', 280, 15],
    ['left', 'top', 20, 85],
    ['right', 'top', 280, 85],
  ] as const)(
    'reads a rectangle that begins at the end of its edge as a notch at the corner: %s %s',
    (end, side, x, y) => {
      const atCorner = corners({ notches: [notch({ at: 'corner', end, side })] });
      expect(corners({ notches: [notch({ at: 'edge', side, centerMm: x })] })).toEqual(atCorner);
      expect(corners({ notches: [notch({ at: 'end', end, centerMm: y }, 30, 40)] })).toEqual(atCorner);
    },
  );
});

describe('a rectangle that begins where its edge does', () => {
  const left = miter(45, 'bottom');

  it('is a notch at the corner of a miter too', () => {
    expect(corners({ left, notches: [notch({ at: 'edge', side: 'top', centerMm: 120 })] })).toEqual(
      corners({ left, notches: [notch({ at: 'corner', end: 'left', side: 'top' })] }),
    );
  });

  it('may be off by less than the tolerance, and no more', () => {
    const at = (centerMm: number) => ({ notches: [notch({ at: 'edge', side: 'bottom', centerMm })] });
    for (const offMm of [5e-7, -5e-7]) expect(causes(at(20 + offMm))).toEqual(causes(at(20)));
    expect(problem(at(20 - 1e-5))).toMatchObject({ problem: 'cut off the edge' });
    // So little steel is left as part of the face.
    expect(causes(at(20 + 1e-5))).toHaveLength(causes(at(20)).length + 2);
  });

  it.each<[string, Partial<OutlineInput>]>([
    ['a vee', { notches: [notch({ at: 'edge', side: 'bottom', centerMm: 20 }, 40, 30, 'vee')] }],
    [
      'a vee at the other end',
      { notches: [notch({ at: 'edge', side: 'bottom', centerMm: 280 }, 40, 30, 'vee')] },
    ],
    ['one in a mitered end', { left, notches: [notch({ at: 'end', end: 'left', centerMm: 85 }, 30, 40)] }],
  ])('is refused as %s', (_name, changes) => {
    expect(problem(changes)).toMatchObject({
      problem: 'cut off the edge',
      cause: { is: 'notch', number: 1 },
    });
  });
});

describe('cuts that leave no part', () => {
  it.each<[string, Partial<OutlineInput>, object | undefined]>([
    [
      'miters on one side that need more than the length',
      { lengthMm: 150, left: miter(45, 'top'), right: miter(45, 'top') },
      { problem: 'miters meet', cause: { is: 'miter left' }, otherCause: { is: 'miter right' } },
    ],
    [
      'parallel miters need the length only once',
      { lengthMm: 150, left: miter(45, 'bottom'), right: miter(45, 'top') },
      undefined,
    ],
    [
      'parallel miters longer than the part',
      { lengthMm: 99, left: miter(45, 'bottom'), right: miter(45, 'top') },
      { problem: 'miters meet' },
    ],
    [
      'one miter longer than the part',
      { lengthMm: 99, left: miter(45, 'bottom') },
      { problem: 'miters meet', otherCause: { is: 'right end' } },
    ],
    [
      'two parallel miters as long as the part leave a line',
      { lengthMm: 100, left: miter(45, 'bottom'), right: miter(45, 'top') },
      { problem: 'miters meet' },
    ],
    [
      'a notch as deep as the part is wide',
      { notches: [notch({ at: 'edge', side: 'top', centerMm: 100 }, 40, 100)] },
      { problem: 'cut too deep', cause: { is: 'notch', number: 1 }, neededMm: 100, availableMm: 100 },
    ],
    [
      'a notch almost as deep',
      { notches: [notch({ at: 'edge', side: 'top', centerMm: 100 }, 40, 99.99)] },
      undefined,
    ],
    [
      'a corner notch as deep as the part is wide',
      { notches: [notch({ at: 'corner', end: 'left', side: 'top' }, 40, 100)] },
      { problem: 'cut too deep', neededMm: 100, availableMm: 100 },
    ],
    [
      'a notch in an end longer than the part',
      { notches: [notch({ at: 'end', end: 'left', centerMm: 50 }, 40, 301)] },
      { problem: 'cut too deep', neededMm: 301, availableMm: 300 },
    ],
    [
      'a clip as long as the part',
      { clips: [clip(300, 20)] },
      { problem: 'cut off the edge', cause: { is: 'clip', number: 1 }, neededMm: 300, availableMm: 300 },
    ],
    [
      'a clip as deep as the part',
      { clips: [clip(30, 100)] },
      { problem: 'cut too deep', cause: { is: 'clip', number: 1 } },
    ],
    [
      'two clips that meet on an edge',
      { clips: [clip(150, 20), clip(150, 20, 'right')] },
      { problem: 'cuts meet', neededMm: 300, availableMm: 300 },
    ],
    ['two clips that leave a little', { clips: [clip(150, 20), clip(149.99, 20, 'right')] }, undefined],
    [
      'two clips that meet on an end',
      { clips: [clip(20, 50), clip(20, 50, 'left', 'top')] },
      { problem: 'cuts meet', cause: { is: 'clip', number: 2 }, otherCause: { is: 'clip', number: 1 } },
    ],
    [
      'two cuts at one corner',
      { clips: [clip(20, 20)], notches: [notch({ at: 'corner', end: 'left', side: 'bottom' })] },
      { problem: 'cuts meet', cause: { is: 'clip', number: 1 }, otherCause: { is: 'notch', number: 1 } },
    ],
    [
      'notches at opposite corners through each other',
      {
        lengthMm: 100,
        notches: [
          notch({ at: 'corner', end: 'left', side: 'bottom' }, 60, 60),
          notch({ at: 'corner', end: 'right', side: 'top' }, 60, 60),
        ],
      },
      { problem: 'cuts meet', cause: { is: 'notch', number: 1 }, otherCause: { is: 'notch', number: 2 } },
    ],
    [
      'a notch beyond the end of its edge',
      { notches: [notch({ at: 'edge', side: 'bottom', centerMm: 290 })] },
      { problem: 'cut off the edge', neededMm: 310, availableMm: 300 },
    ],
    [
      'a notch before the beginning of its edge',
      { notches: [notch({ at: 'edge', side: 'bottom', centerMm: 10 })] },
      { problem: 'cut off the edge', neededMm: 310, availableMm: 300 },
    ],
    [
      'two notches in a right end that meet',
      { notches: [30, 50].map((centerMm) => notch({ at: 'end', end: 'right', centerMm }, 24, 30)) },
      { problem: 'cuts meet', neededMm: 48, availableMm: 44 },
    ],
    [
      'a notch beyond the edge of a right end',
      { notches: [notch({ at: 'end', end: 'right', centerMm: 95 }, 24, 30)] },
      { problem: 'cut off the edge', neededMm: 107, availableMm: 100 },
    ],
    [
      'a rectangle in a miter whose floor would lie off the steel',
      { left: miter(60, 'bottom'), notches: [notch({ at: 'end', end: 'left', centerMm: 50 }, 40, 30)] },
      { problem: 'cut off the edge', cause: { is: 'notch', number: 1 }, availableMm: 30 },
    ],
    [
      'the same, deep enough',
      { left: miter(60, 'bottom'), notches: [notch({ at: 'end', end: 'left', centerMm: 50 }, 40, 35)] },
      undefined,
    ],
    [
      'the same as a vee, whose floor is one point',
      {
        left: miter(60, 'bottom'),
        notches: [notch({ at: 'end', end: 'left', centerMm: 50 }, 40, 30, 'vee')],
      },
      undefined,
    ],
    [
      'a notch beside the part, with one side at its end',
      { notches: [notch({ at: 'edge', side: 'bottom', centerMm: -20 })] },
      { problem: 'cut off the edge' },
    ],
    [
      'a notch into a clip',
      { clips: [clip(90, 20)], notches: [notch({ at: 'edge', side: 'bottom', centerMm: 100 })] },
      { problem: 'cuts meet', cause: { is: 'clip', number: 1 }, otherCause: { is: 'notch', number: 1 } },
    ],
    [
      'two notches side by side',
      { notches: [100, 140].map((centerMm) => notch({ at: 'edge', side: 'bottom', centerMm })) },
      { problem: 'cuts meet', neededMm: 80, availableMm: 80 },
    ],
    [
      'notches from both edges that meet in the middle',
      {
        notches: (['bottom', 'top'] as const).map((side) =>
          notch({ at: 'edge', side, centerMm: 100 }, 40, 50),
        ),
      },
      { problem: 'cuts meet', cause: { is: 'notch', number: 1 }, otherCause: { is: 'notch', number: 2 } },
    ],
    [
      'notches from both edges beside each other',
      {
        notches: (['bottom', 'top'] as const).map((side, at) =>
          notch({ at: 'edge', side, centerMm: 100 + 41 * at }, 40, 60),
        ),
      },
      undefined,
    ],
    [
      'a notch that runs into a miter',
      { left: miter(45, 'bottom'), notches: [notch({ at: 'edge', side: 'bottom', centerMm: 30 }, 20, 40)] },
      { problem: 'cuts meet', cause: { is: 'notch', number: 1 }, otherCause: { is: 'miter left' } },
    ],
    [
      'a notch that runs into a miter which comes before it around the face',
      { right: miter(45, 'top'), notches: [notch({ at: 'edge', side: 'top', centerMm: 270 }, 20, 40)] },
      { problem: 'cuts meet', cause: { is: 'notch', number: 1 }, otherCause: { is: 'miter right' } },
    ],
    [
      'a corner notch that cuts the long point off',
      { left: miter(45, 'bottom'), notches: [notch({ at: 'corner', end: 'left', side: 'bottom' }, 30, 30)] },
      { problem: 'cut off the edge', cause: { is: 'notch', number: 1 }, availableMm: 30 },
    ],
    ['a length of 0', { lengthMm: 0 }, { problem: 'no size' }],
    ['a width that is not a number', { widthMm: NaN }, { problem: 'no size' }],
    ['a miter of 90°', { right: miter(90, 'top') }, { problem: 'no size', cause: { is: 'miter right' } }],
    [
      'a clip without a size',
      { clips: [clip(20, 20), clip(0, 20, 'right')] },
      { problem: 'no size', cause: { is: 'clip', number: 2 } },
    ],
    [
      'a notch without a place',
      { notches: [notch({ at: 'edge', side: 'top', centerMm: Infinity })] },
      { problem: 'no size', cause: { is: 'notch', number: 1 } },
    ],
  ])('%s', (_name, changes, expected) => {
    if (expected) expect(problem(changes)).toMatchObject(expected);
    else expect(problem(changes)).toBeUndefined();
  });

  it.each([
    ['left', 'bottom'],
    ['right', 'bottom'],
    ['left', 'top'],
    ['right', 'top'],
  ] as const)(
    'tells how wide a notch at a long point must be, and how deep one in a miter: %s, %s',
    (end, long) => {
      const mitered = { [end]: miter(60, long) };
      const atCorner = problem({ ...mitered, notches: [notch({ at: 'corner', end, side: long }, 40, 30)] });
      expect(atCorner).toMatchObject({ problem: 'cut off the edge', availableMm: 40 });
      expect(atCorner?.neededMm).toBeCloseTo(30 * Math.tan(Math.PI / 3), 9);
      const inEnd = problem({ ...mitered, notches: [notch({ at: 'end', end, centerMm: 50 }, 40, 30)] });
      expect(inEnd?.neededMm).toBeCloseTo(20 * Math.tan(Math.PI / 3), 9);
    },
  );

  it('tells how long a part its miters need', () => {
    const { neededMm, availableMm } =
      problem({ lengthMm: 150, left: miter(45, 'top'), right: miter(45, 'top') }) ?? {};
    expect(neededMm).toBeCloseTo(200, 9);
    expect(availableMm).toBe(150);
  });
});

describe('the outline of a random face', () => {
  it('is what a polygon clipper leaves of it, each edge with its cause and kind', () => {
    const counts = { fit: 0, refused: 0 };
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        for (const face of randomPart(new Random(seed)).faces)
          counts[checkOutline(face) ? 'fit' : 'refused']++;
      }),
    );
    expect(counts.fit).toBeGreaterThan(10);
    expect(counts.refused).toBeGreaterThan(10);
  });
});
