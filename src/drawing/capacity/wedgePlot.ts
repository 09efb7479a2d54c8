import { formatLength } from '../../core/quantity/formatLength.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { Shape } from '../drawing.js';
import { rectangle, segment } from '../path.js';
import { logMarksMm } from './commonSizes.js';
import type { PunchCapacity } from './punchCapacity.js';
import { equalRoundMm, type SelectedHole } from './selectedHole.js';

const left = 56;
const right = 16;
const top = 26;
const foot = 46;

/** Where thicknesses and holes lie, both logarithmic. */
export interface Plot {
  x: (thicknessMm: number) => number;
  y: (holeMm: number) => number;
  fromMm: number;
  toMm: number;
  lowMm: number;
  highMm: number;
}

export function plotOf(
  tracks: readonly { line: readonly PunchCapacity[] }[],
  selected: SelectedHole | undefined,
  { fromMm, toMm, width, height }: { fromMm: number; toMm: number; width: number; height: number },
): Plot {
  const all = tracks.flatMap(({ line }) => line);
  const own = selected ? [equalRoundMm(selected.hole)] : [];
  const least = all.map(({ leastMm }) => leastMm);
  const rated = all.flatMap(({ ratingMm }) => (Number.isFinite(ratingMm) ? ratingMm : []));
  const lowMm = Math.min(...least, ...own) / 1.25;
  const highMm = Math.max(...least, ...rated, ...own) * 1.25;
  const share = (mm: number, low: number, high: number) => Math.log(mm / low) / Math.log(high / low);
  return {
    x: (mm) => left + share(mm, fromMm, toMm) * (width - left - right),
    y: (mm) => height - foot - share(mm, lowMm, highMm) * (height - foot - top),
    fromMm,
    toMm,
    lowMm,
    highMm,
  };
}

export function clamp(mm: number, { lowMm, highMm }: Plot): number {
  return Math.min(Math.max(mm, lowMm), highMm);
}

/** Names the level part of the rating, where the plate's largest hole is the limit. */
export function plateauLabel(line: readonly PunchCapacity[], plot: Plot): Shape[] {
  const [first, second] = line;
  if (!first || !second || !Number.isFinite(first.ratingMm) || second.ratingMm !== first.ratingMm) return [];
  const y = plot.y(first.ratingMm) + 19;
  return [{ kind: 'text', x: left + 8, y, text: 'largest hole', behind: 'paper' }];
}

export function axes(
  common: readonly number[],
  plot: Plot,
  unit: Shop['unit'],
  { width, height }: { width: number; height: number },
): Shape[] {
  const bottom = height - foot;
  let last = -Infinity;
  const along = common.flatMap((mm): Shape[] => {
    const x = plot.x(mm);
    const tick: Shape = { kind: 'line', path: segment(x, bottom, x, bottom + 5), line: 'thin' };
    if (x - last < 30) return [tick];
    last = x;
    return [tick, { kind: 'text', x, y: bottom + 19, text: formatLength(mm, unit), anchor: 'middle' }];
  });
  const up = logMarksMm(unit, plot.lowMm, plot.highMm).flatMap((mm): Shape[] => [
    { kind: 'line', path: segment(left - 5, plot.y(mm), left, plot.y(mm)), line: 'thin' },
    { kind: 'text', x: left - 9, y: plot.y(mm) + 4, text: formatLength(mm, unit), anchor: 'end' },
  ]);
  return [
    { kind: 'line', path: rectangle(left, top, width - left - right, bottom - top), line: 'thin' },
    ...along,
    ...up,
    {
      kind: 'text',
      x: (left + width - right) / 2,
      y: height - 8,
      text: `thickness, ${unit}`,
      anchor: 'middle',
    },
    { kind: 'text', x: 4, y: top - 4, text: `hole, ${unit}` },
  ];
}
