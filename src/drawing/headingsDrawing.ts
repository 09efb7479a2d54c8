import type { Drawing, Shape } from './drawing.js';

/*
 * What Edge, End, Pitch, Gage and Leg mean: a plate with two lines of holes, and an angle seen from its end and on the leg
 * with the holes.
 */

/** A size between two points, with its name beside it. */
interface Size {
  name: string;
  from: readonly [number, number];
  to: readonly [number, number];
  at: readonly [number, number];
  /** On the part it is shown on. */
  says: string;
}

// One under the other: both fit a narrow pane at their full size, so that the words stay readable.
const plate = { left: 8, top: 26, wide: 240, high: 100 };
const endOfAngle = { left: 54, top: 226, leg: 100, thick: 14 };
const angle = { left: 120, top: 226, wide: 164, high: 100 };
const bottom = plate.top + plate.high;
const columns = [38, 106] as const;
const angleColumns = [28, 84] as const;
const [low, high] = [bottom - 30, bottom - 72];
const angleRow = angle.top + 62;
const sizeLine = { plate: plate.left + 180, angle: angle.left + 116 };
const toe = angle.top + angle.high;

const sizes: readonly Size[] = [
  {
    ...{ name: 'End', from: [plate.left, bottom + 20], to: [plate.left + columns[0], bottom + 20] },
    ...{ at: [plate.left + 6, bottom + 38], says: 'on a plate: from the left end to the first hole' },
  },
  {
    ...{
      name: 'Pitch',
      from: [plate.left + columns[0], bottom + 20],
      to: [plate.left + columns[1], bottom + 20],
    },
    ...{ at: [plate.left + 56, bottom + 38], says: 'on a plate: from hole to hole along the part' },
  },
  {
    ...{ name: 'Edge', from: [sizeLine.plate, bottom], to: [sizeLine.plate, low] },
    ...{
      at: [sizeLine.plate + 10, low + 20],
      says: 'on a plate: from the bottom edge to the first line of holes',
    },
  },
  {
    ...{ name: 'Gage', from: [sizeLine.plate, low], to: [sizeLine.plate, high] },
    ...{ at: [sizeLine.plate + 10, low - 17], says: 'on a plate: from one line of holes to the other' },
  },
  {
    ...{ name: 'Gage', from: [sizeLine.angle, angle.top], to: [sizeLine.angle, angleRow] },
    ...{ at: [sizeLine.angle + 8, angle.top + 42], says: 'on an angle: from the heel to the line of holes' },
  },
  {
    ...{ name: 'Edge', from: [sizeLine.angle, angleRow], to: [sizeLine.angle, toe] },
    ...{ at: [sizeLine.angle + 8, angleRow + 25], says: 'on an angle: from the toe to the line of holes' },
  },
  {
    ...{ name: 'Leg', from: [endOfAngle.left - 14, angle.top], to: [endOfAngle.left - 14, toe] },
    ...{ at: [endOfAngle.left - 48, angle.top + 55], says: 'on an angle: the leg the holes are in' },
  },
];

/** The drawing of the distances that headings of a hole name. */
export function headingsDrawing(): Drawing {
  return {
    title: 'Edge, End, Pitch, Gage and Leg',
    summary:
      'A plate: End from its left end to the first hole, Pitch from hole to hole, Edge from its bottom edge to the first line of holes, Gage from line to line. An angle: Leg is the one the holes are in, Gage from the heel, Edge from the toe.',
    width: 292,
    height: 348,
    shapes: [
      word(plate.left, 16, 'A plate', true),
      word(plate.left, 196, 'An angle: end, and leg with holes', true),
      outline(plate),
      outline(angle),
      { kind: 'line', path: `M${angle.left} ${angle.top + endOfAngle.thick}h${angle.wide}`, line: 'hidden' },
      endShape(),
      ...[low, high].map((y) => centerLine(plate.left, y, 170)),
      centerLine(angle.left, angleRow, 100),
      ...[low, high].flatMap((y) => columns.map((x) => hole(plate.left + x, y))),
      ...angleColumns.map((x) => hole(angle.left + x, angleRow)),
      ...columns.map((x) => thin(`M${plate.left + x} ${low + 10}V${bottom + 26}`)),
      thin(`M${plate.left} ${bottom + 4}V${bottom + 26}`),
      word(angle.left + 4, angle.top - 6, 'heel'),
      word(angle.left + 4, toe + 16, 'toe'),
      ...sizes.flatMap(dimension),
    ],
    points: sizes.map(({ name, says, at: [x, y] }) => ({ x: x + 14, y: y - 5, label: `${name}, ${says}.` })),
    table: { headings: ['Heading', 'Distance'], rows: sizes.map(({ name, says }) => [name, says]) },
  };
}

const word = (x: number, y: number, text: string, strong = false): Shape => ({
  ...{ kind: 'text', x, y, text },
  ...(strong && { strong }),
});

const thin = (path: string): Shape => ({ kind: 'line', path, line: 'thin' });

const outline = ({ left, top, wide, high: tall }: typeof plate): Shape => ({
  kind: 'line',
  path: `M${left} ${top}h${wide}v${tall}h${-wide}z`,
  line: 'outline',
});

function endShape(): Shape {
  const { left, top, leg, thick } = endOfAngle;
  const path = `M${left} ${top}h${leg / 2}v${thick}h${thick - leg / 2}v${leg - thick}h${-thick}z`;
  return { kind: 'line', path, line: 'outline' };
}

const radius = 9;

const hole = (x: number, y: number): Shape => ({
  kind: 'area',
  path: `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0z`,
  fill: 'paper',
  line: 'outline',
});

const centerLine = (left: number, y: number, long: number): Shape => ({
  kind: 'line',
  path: `M${left + 14} ${y}h${long}`,
  line: 'center',
});

function dimension({ from: [x1, y1], to: [x2, y2], name, at: [x, y] }: Size): Shape[] {
  const tick = (px: number, py: number) =>
    `M${px - 4} ${py + 4}l8 -8${y1 === y2 ? `M${px} ${py - 6}v12` : `M${px - 6} ${py}h12`}`;
  return [thin(`M${x1} ${y1}L${x2} ${y2}${tick(x1, y1)}${tick(x2, y2)}`), word(x, y, name, true)];
}
