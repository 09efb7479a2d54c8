// The picture of Edge, End, Pitch, Gage and Leg in docs/headings.md: a plate and an angle seen from the end and the face.

/** A size between two points, with what it is called. */
interface Size {
  from: readonly [number, number];
  to: readonly [number, number];
  name: string;
  /** Where the name stands. */
  at: readonly [number, number];
}

const plate = { left: 60, top: 60, wide: 240, high: 120 };
const angle = { left: 470, top: 60, wide: 240, high: 120 };
const heel = { left: 380, top: 60, leg: 120, thick: 16 };
const holeLines = { end: 45, pitch: 80, edge: 35, gage: 50 };

/** Where the holes of the plate and of the angle lie on the page. */
const columns = [holeLines.end, holeLines.end + holeLines.pitch] as const;
const plateRows = [
  plate.top + plate.high - holeLines.edge,
  plate.top + plate.high - holeLines.edge - holeLines.gage,
] as const;
const angleRow = angle.top + 75;

/** A plate with two lines of holes, and an angle with one in a leg. */
export function headingPicture(): string {
  const [low, high] = plateRows;
  const bottom = plate.top + plate.high;
  const [first, second] = columns;
  const sizes: readonly Size[] = [
    {
      from: [plate.left, bottom + 24],
      to: [plate.left + first, bottom + 24],
      name: 'End',
      at: [70, bottom + 42],
    },
    {
      ...{ from: [plate.left + first, bottom + 24], to: [plate.left + second, bottom + 24] },
      ...{ name: 'Pitch', at: [128, bottom + 42] },
    },
    {
      from: [plate.left + 180, bottom],
      to: [plate.left + 180, low],
      name: 'Edge',
      at: [plate.left + 186, low + 22],
    },
    {
      from: [plate.left + 180, low],
      to: [plate.left + 180, high],
      name: 'Gage',
      at: [plate.left + 186, low - 20],
    },
    {
      from: [angle.left + 180, angle.top],
      to: [angle.left + 180, angleRow],
      name: 'Gage',
      at: [angle.left + 186, 102],
    },
    {
      ...{ from: [angle.left + 180, angleRow], to: [angle.left + 180, angle.top + angle.high] },
      ...{ name: 'Edge', at: [angle.left + 186, angleRow + 28] },
    },
    {
      from: [heel.left - 14, heel.top],
      to: [heel.left - 14, heel.top + heel.leg],
      name: 'Leg',
      at: [336, 124],
    },
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 760 240" role="img" font-family="sans-serif" font-size="14">`,
    `<title>A plate: End from its left end to the first hole, Pitch from hole to hole, Edge from its bottom edge to the first line of holes, Gage from line to line. An angle: Leg is the one the holes are in, Gage from the heel, Edge from the toe.</title>`,
    `<rect width="100%" height="100%" fill="white"/>`,
    `<g fill="black" stroke="none">`,
    `<text x="${plate.left}" y="36" font-weight="bold">A plate</text>`,
    `<text x="${heel.left}" y="36" font-weight="bold">An angle: its end, and the leg the holes are in</text>`,
    outline(plate),
    outline(angle),
    `<path d="M${angle.left} ${angle.top + heel.thick}h${angle.wide}" fill="none" stroke="black" stroke-width="1.5" stroke-dasharray="7 4"/>`,
    endOfAngle(),
    ...plateRows.flatMap((y) => columns.map((x) => hole(plate.left + x, y))),
    ...columns.map((x) => hole(angle.left + x, angleRow)),
    ...plateRows.map((y) => centerLine(plate.left, y)),
    centerLine(angle.left, angleRow),
    ...columns.map((x) => extension(plate.left + x, low + 10, bottom + 30)),
    extension(plate.left, bottom + 4, bottom + 30),
    `<text x="${angle.left + 4}" y="${angle.top - 6}">heel</text>`,
    `<text x="${angle.left + 4}" y="${angle.top + angle.high + 18}">toe</text>`,
    ...sizes.map(dimension),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

const outline = ({ left, top, wide, high }: typeof plate) =>
  `<rect x="${left}" y="${top}" width="${wide}" height="${high}" fill="none" stroke="black" stroke-width="2.5"/>`;

function endOfAngle(): string {
  const { left, top, leg, thick } = heel;
  return `<path d="M${left} ${top}h${leg / 2}v${thick}h${thick - leg / 2}v${leg - thick}h${-thick}z" fill="none" stroke="black" stroke-width="2.5"/>`;
}

const hole = (x: number, y: number) =>
  `<circle cx="${x}" cy="${y}" r="9" fill="white" stroke="black" stroke-width="2"/>`;

const centerLine = (left: number, y: number) =>
  `<path d="M${left + 20} ${y}h170" fill="none" stroke="black" stroke-width="1" stroke-dasharray="14 3 3 3"/>`;

const extension = (x: number, from: number, to: number) =>
  `<path d="M${x} ${from}V${to}" fill="none" stroke="black" stroke-width="1"/>`;

function dimension({ from: [x1, y1], to: [x2, y2], name, at: [x, y] }: Size): string {
  const isLevel = y1 === y2;
  const tick = (px: number, py: number) =>
    `M${px - 4} ${py + 4}l8 -8${isLevel ? `M${px} ${py - 6}v12` : `M${px - 6} ${py}h12`}`;
  return [
    `<path d="M${x1} ${y1}L${x2} ${y2}${tick(x1, y1)}${tick(x2, y2)}" fill="none" stroke="black" stroke-width="1.5"/>`,
    `<text x="${x}" y="${y}" font-weight="bold">${name}</text>`,
  ].join('');
}
