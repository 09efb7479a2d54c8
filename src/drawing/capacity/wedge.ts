import type { Grade } from '../../core/material/grade.js';
import type { Press } from '../../core/press/press.js';
import { formatLength } from '../../core/quantity/formatLength.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { Drawn, Point, Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import { polygon, polyline, rectangle } from '../path.js';
import { capacityLabel, capacityTable, capacityTitle } from './capacityText.js';
import { commonThicknessesMm } from './commonSizes.js';
import { punchesOnHandMm } from './holeLadder.js';
import { punchCapacity, type PunchCapacity } from './punchCapacity.js';
import { axes, clamp, plateauLabel, type Plot, plotOf } from './wedgePlot.js';
import { equalRoundMm, type SelectedHole, selectedMark, selectedText } from './selectedHole.js';

export interface WedgeInput {
  press: Press;
  /** At most three; the first is the one whose fields are filled. */
  grades: readonly Grade[];
  shop: Shop;
  selected?: SelectedHole | undefined;
  width?: number;
  height?: number;
}

/** Thicknesses tried along each line; the lines bend only where another limit takes over. */
const samples = 97;
const mostGrades = 3;
const dashes = ['', '10 5', '2 5'];
/** Where along its falling line the name of each grade stands, so that names keep apart. */
const labelPlaces = [0.1, 0.8, 0.35];
const fallingShare = 0.999;

type Track = { grade: Grade; line: PunchCapacity[]; rungs: PunchCapacity[] };

/**
 * Hole against thickness on two logarithmic scales, for wide panes: limits of equal force fall straight, the
 * least hole rises straight, and what can be punched is the wedge between.
 */
export function wedge(input: WedgeInput): Drawn {
  const { press, shop, selected, width = 560, height = 400 } = input;
  const grades = input.grades.slice(0, mostGrades);
  const common = commonThicknessesMm(shop.unit, selected?.thicknessMm);
  const fromMm = (common[0] ?? 1) * 0.9;
  const toMm = (common.at(-1) ?? 1) * 1.15;
  const tracks: Track[] = [];
  for (const grade of grades) {
    const line = capacities(press, grade, shop, logSteps(fromMm, toMm));
    const rungs = capacities(press, grade, shop, common);
    if ('problem' in line) return line;
    if ('problem' in rungs) return rungs;
    tracks.push({ grade, line, rungs });
  }
  const [first] = tracks;
  if (!first) return { problem: 'No grade is chosen.' };
  const plot = plotOf(tracks, selected, { fromMm, toMm, width, height });
  const punches = punchesOnHandMm(press, shop);
  const points: Point[] = first.rungs.map((rung) => ({
    x: plot.x(rung.thicknessMm),
    y: plot.y(clamp(Math.max(rung.leastMm, rung.shareMm), plot)),
    label: capacityLabel(rung, punches, shop.unit),
  }));
  const chosen = selected ? chosenShape(selected, plot, shop.unit) : undefined;
  return {
    ...capacityTitle({ press, grades, shop, rungs: first.rungs, selected }),
    width,
    height,
    shapes: [
      ...fields(first.line, plot),
      ...tracks.flatMap((track, at) => trackShapes(track, at, plot)),
      ...axes(common, plot, shop.unit, { width, height }),
      ...plateauLabel(first.line, plot),
      ...(chosen?.shapes ?? []),
    ],
    points: [...points, ...(chosen?.points ?? [])],
    table: capacityTable(tracks, punches, shop.unit),
  };
}

function capacities(press: Press, grade: Grade, shop: Shop, thicknesses: readonly number[]) {
  const found: PunchCapacity[] = [];
  for (const thicknessMm of thicknesses) {
    const capacity = punchCapacity(press, grade, shop, thicknessMm);
    if ('problem' in capacity) return capacity;
    found.push(capacity);
  }
  return found;
}

function logSteps(fromMm: number, toMm: number): number[] {
  return Array.from({ length: samples }, (_, at) => fromMm * (toMm / fromMm) ** (at / (samples - 1)));
}

/** Outside hatched; the wedge bare; between the shop's share and the rating stippled. */
function fields(line: readonly PunchCapacity[], plot: Plot): Shape[] {
  const inside = line.filter((each) => each.stopped === undefined && each.ratingMm >= each.leastMm);
  const edge = (of: (each: PunchCapacity) => number) =>
    inside.map((each): [number, number] => [plot.x(each.thicknessMm), plot.y(clamp(of(each), plot))]);
  const least = edge(({ leastMm }) => leastMm).reverse();
  const share = edge(({ leastMm, shareMm }) => Math.max(leastMm, shareMm)).reverse();
  const rating = edge(({ ratingMm }) => ratingMm);
  const { fromMm, toMm, lowMm, highMm } = plot;
  const whole = rectangle(
    plot.x(fromMm),
    plot.y(highMm),
    plot.x(toMm) - plot.x(fromMm),
    plot.y(lowMm) - plot.y(highMm),
  );
  const wedgeArea: Shape[] = [
    { kind: 'area', path: polygon([...rating, ...least]), fill: 'paper' },
    { kind: 'area', path: polygon([...rating, ...share]), fill: 'stipple' },
  ];
  return [{ kind: 'area', path: whole, fill: 'hatch' }, ...(inside.length > 1 ? wedgeArea : [])];
}

/** The lines of one grade: rating solid, share thin, least hole; further grades by dash. Its label stands on the rating. */
function trackShapes({ grade, line }: Track, at: number, plot: Plot): Shape[] {
  const dash = dashes[at] ?? '';
  const drawn = (of: (each: PunchCapacity) => number) =>
    polyline(
      line
        .filter((each) => Number.isFinite(of(each)))
        .map((each): [number, number] => [plot.x(each.thicknessMm), plot.y(clamp(of(each), plot))]),
    );
  const styled = dash === '' ? {} : { dash };
  const falling = line.filter(({ ratingMm }) => ratingMm < (line[0]?.ratingMm ?? 0) * fallingShare);
  const place = falling[Math.floor(falling.length * (labelPlaces[at] ?? 0))];
  const label: Shape[] = place
    ? [
        {
          kind: 'text',
          x: Math.min(plot.x(place.thicknessMm) + 8, plot.x(plot.toMm) + 8 - labelWidth(grade.name)),
          y: plot.y(clamp(place.ratingMm, plot)) - 2,
          text: grade.name,
          strong: true,
          behind: 'paper',
        },
      ]
    : [];
  const leastPlace = line[Math.round(samples * 0.12)];
  const leastLabel: Shape[] =
    at === 0 && leastPlace
      ? [
          {
            kind: 'text',
            x: plot.x(leastPlace.thicknessMm) + 8,
            y: plot.y(leastPlace.leastMm) + 18,
            text: 'least hole',
            behind: 'paper',
          },
        ]
      : [];
  return [
    { kind: 'line', path: drawn(({ leastMm }) => leastMm), line: 'outline', ...styled },
    { kind: 'line', path: drawn(({ shareMm }) => shareMm), line: 'thin', ...styled },
    { kind: 'line', path: drawn(({ ratingMm }) => ratingMm), line: 'outline', ...styled },
    ...label,
    ...leastLabel,
  ];
}

function chosenShape(
  selected: SelectedHole,
  plot: Plot,
  unit: Shop['unit'],
): { shapes: Shape[]; points: Point[] } {
  const x = plot.x(selected.thicknessMm);
  const y = plot.y(equalRoundMm(selected.hole));
  const thick = `${formatLength(selected.thicknessMm, unit)} ${unit}`;
  return {
    shapes: selectedMark(x, y),
    points: [{ x, y, label: `Selected: ${selectedText(selected, unit)} through ${thick}.` }],
  };
}
