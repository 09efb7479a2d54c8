import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { freeLevel } from '../../src/drawing/part/freeLevel.js';
import { corners, pathsOf } from './support.js';
import { partOf, type Row } from './partSupport.js';

interface Box {
  text: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** A text of 12 px letters, and the frame around it where there is one. */
function textBoxes({ shapes }: Drawing): (Box & { boxed: boolean })[] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'text') return [];
    const { text, x, y, anchor = 'start', behind, turned } = shape;
    const width = text.length * 6.9;
    if (turned) return [{ text, boxed: false, left: x - 9, right: x, top: y, bottom: y + width }];
    const left = anchor === 'start' ? x : anchor === 'middle' ? x - width / 2 : x - width;
    const boxed = behind === 'box';
    const frame = boxed ? { side: 4, above: 14, below: 5 } : { side: 0, above: 9, below: 0 };
    const [top, bottom] = [y - frame.above, y + frame.below];
    return [{ text, boxed, left: left - frame.side, right: left + width + frame.side, top, bottom }];
  });
}

/** The squares around round holes. */
function holeBoxes(drawing: Drawing): Box[] {
  return pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'paper').map((path) => {
    const [left = 0, y = 0, radius = 0] = (/M([\d.]+) ([\d.]+)a([\d.]+)/.exec(path) ?? [])
      .slice(1)
      .map(Number);
    return { text: 'hole', left, right: left + 2 * radius, top: y - radius, bottom: y + radius };
  });
}

/** The fence and the stop. */
function pressBoxes({ shapes }: Drawing): Box[] {
  const bar = shapes.find((shape) => shape.kind === 'line' && shape.line === 'heavy');
  const stop = shapes.find((shape) => shape.kind === 'area' && shape.fill === 'solid');
  return [
    { text: 'fence bar', shape: bar, half: 2 },
    { text: 'stop triangle', shape: stop, half: 0 },
  ].map(({ text, shape, half }) => {
    const places = shape && shape.kind !== 'text' ? corners(shape.path) : [];
    const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
    const [top, bottom] = [Math.min(...ys) - half, Math.max(...ys) + half];
    return { text, left: Math.min(...xs), right: Math.max(...xs), top, bottom };
  });
}

/** The arrow heads of dimensions. */
function headBoxes(drawing: Drawing): Box[] {
  return pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'solid')
    .slice(1)
    .map(corners)
    .map((places) => ({
      text: 'arrow head',
      left: Math.min(...places.map(([x]) => x)),
      right: Math.max(...places.map(([x]) => x)),
      top: Math.min(...places.map(([, y]) => y)),
      bottom: Math.max(...places.map(([, y]) => y)),
    }));
}

const over = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

function overlaps(drawing: Drawing): string[] {
  const boxes = textBoxes(drawing);
  const labels = boxes.flatMap((box, at) =>
    boxes.slice(at + 1).flatMap((other) => (over(box, other) ? `${box.text} | ${other.text}` : [])),
  );
  const covered = boxes
    .filter(({ boxed }) => boxed)
    .flatMap((box) => holeBoxes(drawing).flatMap((hole) => (over(box, hole) ? `${box.text} | hole` : [])));
  const onPress = pressBoxes(drawing).flatMap((box) =>
    [...boxes, ...headBoxes(drawing)].flatMap((other) =>
      over(box, other) ? `${other.text} | ${box.text}` : [],
    ),
  );
  const outside = boxes
    .filter(
      ({ left, right, top, bottom }) =>
        left < 0 || right > drawing.width || top < 0 || bottom > drawing.height,
    )
    .map(({ text }) => `${text} outside`);
  return [...labels, ...covered, ...onPress, ...outside];
}

const four = { Hole: '13/16', Holes: 4, Bolt: '3/4' };
const rows: [string, Row][] = [
  [
    'an edge too short at the fence',
    { ...four, Edge: '3/4', End: 2, Pitch: 2.5, 'Miter left': 45, 'Miter right': 30 },
  ],
  [
    'an edge too short in the end of a broken part',
    {
      ...four,
      Length: 60,
      Edge: '3/4',
      End: 2,
      Pitch: 2.5,
      Bends: 2,
      'Bend length': 4,
      'Bend at': 'left end 4; right end 3',
    },
  ],
  [
    'an edge too short at the operator',
    { Section: 'PL3/8X8', Length: 10, ...four, Edge: 2, End: 2, Pitch: 6, Gage: 5.25 },
  ],
  [
    'holes too close',
    {
      ...four,
      Edge: 2,
      End: 2,
      Pitch: 1.5,
      Bends: 3,
      'Bend length': 4,
      'Bend at': 'left end 6; left end 7; left end 9',
      'Miter right': 20,
    },
  ],
  [
    'an end too short',
    {
      Section: 'L3x3x1/4',
      Length: 72,
      ...four,
      End: 1,
      Pitch: 20,
      Gage: '1-3/4',
      Leg: 'long',
      'Miter right': 45,
      'Miter leg': 'both',
      'Long side': 'heel',
      'End kind': 'sheared',
    },
  ],
  [
    'an edge of a leg too short',
    { Section: 'L3x3x1/4', Length: 10, ...four, End: 2, Pitch: 2, Gage: '2-1/4', 'Miter left': 30 },
  ],
  [
    'two groups',
    {
      ...four,
      Holes: 2,
      Edge: 1,
      End: 1,
      Pitch: 10,
      'Hole 2': '9/16',
      'Holes 2': 2,
      'Edge 2': 2.5,
      'End 2': 5,
      'Pitch 2': 2,
    },
  ],
  [
    'work on a long angle',
    {
      Section: 'L3x3x1/4',
      Length: 72,
      'Miter left': 45,
      'Miter right': 22.5,
      'Corner clip': 1,
      Corners: 2,
      Hole: '13/16',
      Holes: 6,
      End: 4,
      Pitch: 3,
      Gage: '1-3/4',
    },
  ],
  [
    'holes near the end of a flange',
    {
      Section: 'C6x8.2',
      Length: 10,
      Hole: '9/16',
      Holes: 3,
      Bolt: '1/2',
      Leg: 'flange',
      End: '3/4',
      Pitch: 2,
      Gage: '1-1/8',
    },
  ],
  [
    'a narrow flange, much of whose ends is shown',
    {
      Section: 'C3x4.1',
      Length: 30,
      Leg: 'flange',
      Hole: '9/16',
      Holes: 2,
      End: 2.8,
      Pitch: 24,
      Gage: '3/4',
    },
  ],
  [
    'much work',
    {
      Length: 24,
      'Corner clip': 1,
      Corners: 4,
      'Notch width': 1,
      'Notch depth': 1,
      Notches: 4,
      'Notch at': 'bottom edge 3; bottom edge 9; top edge 9; top edge 20',
      Bends: 9,
      'Bend length': 4,
      'Bend at': Array.from({ length: 9 }, (_, at) => `left end ${2 * at + 4}`).join('; '),
    },
  ],
  [
    'a hole too near to a miter',
    {
      Section: 'PL3/8X6',
      Length: 10,
      ...four,
      Holes: 1,
      Edge: 2,
      End: 5,
      'Miter left': 45,
      'Long side': 'top',
    },
  ],
  [
    'holes aslant of each other',
    { Section: 'PL3/8X6', Length: 10, ...four, Holes: 3, 'Holes at': 'x2 y2; x3 y3; x7 y4' },
  ],
  [
    'a hole over a notch',
    {
      Section: 'PL3/8X6',
      Length: 10,
      ...four,
      Holes: 1,
      Edge: 2,
      End: 5,
      'Notch width': 2,
      'Notch depth': 2.5,
      'Notch at': 'bottom edge 5',
    },
  ],
  [
    'a hole out of reach',
    { Section: 'PL1/4X28', Length: 14, ...four, Holes: 1, Edge: 13, End: 7, 'Cut by': 'saw' },
  ],
];

describe('the labels of a part', () => {
  const looks = [240, 300, 540].map((width) => ({ width }));

  it.each(rows)('lie over no other and no hole, within the drawing: %s', (_, row) => {
    for (const look of looks) expect(overlaps(partOf(row, look)), JSON.stringify(look)).toEqual([]);
  });

  it.each(rows.slice(0, 6))('have one box, at the distance that decides: %s', (_, row) => {
    expect(textBoxes(partOf(row)).filter(({ boxed }) => boxed)).toHaveLength(1);
  });

  it('are told apart by this test when one is moved over another', () => {
    const drawing = partOf({});
    const [first] = drawing.shapes.filter((shape) => shape.kind === 'text');
    if (!first) throw new Error('no text');
    expect(overlaps({ ...drawing, shapes: [...drawing.shapes, first] })).not.toEqual([]);
    const [bar] = pressBoxes(drawing);
    const onBar = { ...first, text: '1', x: (bar?.left ?? 0) + 9, y: (bar?.bottom ?? 0) + 1 };
    expect(overlaps({ ...drawing, shapes: [...drawing.shapes, onBar] })).toEqual(['1 | fence bar']);
  });

  it('leave no empty band under the part: one row of dimensions stands between it and the operator', () => {
    const { shapes, height } = partOf({});
    const bottoms = shapes.flatMap((shape) =>
      shape.kind === 'line' && shape.line === 'outline'
        ? [...shape.path.matchAll(/ ([\d.]+)/g)].map(([, y]) => Number(y))
        : [],
    );
    expect(height - Math.max(...bottoms)).toBeCloseTo(58, 1);
  });
});

describe('the place of an arrow across the part', () => {
  const room = [{ from: 0, to: 200 }];

  it('is beside its hole, 18 px away', () => {
    expect(freeLevel(50, [{ x: 50, half: 8 }], room)).toBe(68);
  });

  it('is on the other side where a hole is in the way: 17 px of it are too near, 18 are enough', () => {
    const hole = { x: 50, half: 8 };
    expect(freeLevel(50, [hole, { x: 84, half: 8 }], room)).toBe(32);
    expect(freeLevel(50, [hole, { x: 85, half: 8 }], room)).toBe(68);
  });

  it('stays on the part', () => {
    expect(freeLevel(185, [{ x: 185, half: 8 }], room)).toBe(167);
  });
});
