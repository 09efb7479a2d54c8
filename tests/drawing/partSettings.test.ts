import { describe, expect, it } from 'vitest';
import type { HoleSetting } from '../../src/drawing/part/settingMarks.js';
import { partOf, type Row } from './partSupport.js';
import type { Drawing } from '../../src/drawing/drawing.js';

/** The number in a circle; dimensions are not strong. */
function circleAt({ shapes }: Drawing, text: string) {
  const found = shapes.find((shape) => shape.kind === 'text' && shape.strong && shape.text === text);
  if (found?.kind !== 'text') throw new Error(`the drawing has no circle ${text}`);
  return found;
}

const plate: Row = { Hole: '13/16', Holes: 2, Bolt: '3/4', Edge: 2, End: 3, Pitch: 6 };
const two: HoleSetting[] = [
  { number: 1, group: 0, index: 1, turn: 'as it lies' },
  { number: 2, group: 0, index: 2, turn: 'half turn' },
];

function part(row: Row, settings: HoleSetting[], width = 480) {
  return partOf(row, { drawnSettings: settings, width });
}

describe('the numbers of gauge settings', () => {
  it('stand in circles beside their holes, and the arrow keys say them', () => {
    const drawing = part(plate, two);
    const holes = drawing.points.filter(({ label }) => label.includes('setting'));
    expect(holes.map(({ label }) => /setting (\d)\.$/.exec(label)?.[1])).toEqual(['1', '2']);
    for (const [at, hole] of holes.entries()) {
      const number = circleAt(drawing, String(at + 1));
      const others = holes.filter((each) => each !== hole);
      const away = (point: { x: number; y: number }) => Math.hypot(number.x - point.x, number.y - point.y);
      expect(away(hole)).toBeLessThan(90);
      for (const other of others) expect(away(hole)).toBeLessThan(away(other));
    }
  });

  it('stay in the drawing, and two never in one place', () => {
    const drawing = part(plate, two, 240);
    const [a, b] = [circleAt(drawing, '1'), circleAt(drawing, '2')];
    expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(18);
    for (const { x, y } of [a, b]) {
      expect(x).toBeGreaterThan(9);
      expect(x).toBeLessThan(drawing.width - 9);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(drawing.height);
    }
  });

  it('are left out, and said to be, where there are too many for them', () => {
    const holes = Array.from({ length: 61 }, (_, at) => ({ ...two[0], number: at + 1, index: at + 1 }));
    const row = { ...plate, Section: 'PL1/4X24', Length: 90, Holes: 61, Pitch: 1.4, Edge: 12 };
    const drawing = part(row, holes as HoleSetting[]);
    expect(drawing.notes).toContain(
      'The settings are told by their stop and fence; there is no room for their circles.',
    );
    expect(() => circleAt(drawing, '1')).toThrow();
  });

  it('are not there where nothing is set', () => {
    expect(part(plate, []).notes).toEqual([]);
  });
});
