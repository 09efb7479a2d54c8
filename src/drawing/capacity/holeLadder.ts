import type { Grade } from '../../core/material/grade.js';
import type { Press } from '../../core/press/press.js';
import { formatLength, formatSizes } from '../../core/quantity/formatLength.js';
import { nameKey } from '../../core/shop/table.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { Drawn, Point, Shape } from '../drawing.js';
import { rectangle, segment } from '../path.js';
import { capacityLabel, capacityTable, capacityTitle, largestOnHandMm } from './capacityText.js';
import { ladderLegend } from './ladderLegend.js';
import { commonThicknessesMm, scaleMarksMm } from './commonSizes.js';
import { punchCapacity, type PunchCapacity } from './punchCapacity.js';
import { equalRoundMm, type SelectedHole, selectedMark, selectedText } from './selectedHole.js';

export interface LadderInput {
  press: Press;
  grade: Grade;
  shop: Shop;
  selected?: SelectedHole | undefined;
  width?: number;
}

const left = 54;
const top = 30;
/** Room at the right for the largest punch on hand of each rung; none where no punches are known. */
const handWidth = 64;
const margin = 18;
const rungHeight = 32;
const foot = 44;
const halfBar = 5;
const sameMm = 0.01;

/**
 * The holes a press punches in a grade, a rung for each common thickness: a bar from the smallest to the largest hole,
 * thick up to the shop's share, thin to the rating; ticks for the punches on hand, the largest of a rung named.
 */
export function holeLadder({ press, grade, shop, selected, width = 320 }: LadderInput): Drawn {
  const rungs: PunchCapacity[] = [];
  for (const thicknessMm of commonThicknessesMm(shop.unit, selected?.thicknessMm)) {
    const capacity = punchCapacity(press, grade, shop, thicknessMm);
    if ('problem' in capacity) return capacity;
    rungs.push(capacity);
  }
  const punches = punchesOnHandMm(press, shop);
  const chosenMm = selected ? equalRoundMm(selected.hole) : 0;
  const ends = rungs.flatMap(({ ratingMm }) => (Number.isFinite(ratingMm) ? ratingMm : []));
  const endMm = Math.max(...ends, ...punches, chosenMm, ...rungs.map(({ leastMm }) => leastMm)) * 1.06;
  const right = punches.length > 0 ? handWidth : margin;
  const x = (mm: number) => left + (Math.min(mm, endMm) / endMm) * (width - left - right);
  const y = (at: number) => top + rungHeight * (at + 0.5);
  const height = top + rungHeight * rungs.length + foot;
  const points: Point[] = rungs.map((rung, at) => ({
    x: x(Math.min(Math.max(rung.leastMm, rung.shareMm), endMm)),
    y: y(at),
    label: capacityLabel(rung, punches, shop.unit),
  }));
  const shapes = [
    ...axis(shop.unit, endMm, x, height),
    ...(punches.length > 0 ? onHandColumn(rungs, punches, shop.unit, { x: width - 4, y }) : []),
    ...rungs.flatMap((rung, at) => rungShapes(rung, { x, y: y(at), endMm, punches, unit: shop.unit })),
  ];
  const at = rungs.findIndex(
    (rung) => selected && Math.abs(rung.thicknessMm - selected.thicknessMm) < sameMm,
  );
  if (selected && at >= 0) {
    shapes.push(...selectedMark(x(chosenMm), y(at)));
    points.push({
      x: x(chosenMm),
      y: y(at),
      label: `Selected: ${selectedText(selected, shop.unit)} through ${formatLength(selected.thicknessMm, shop.unit)} ${shop.unit}.`,
    });
  }
  return {
    ...capacityTitle({ press, grade, shop, rungs, selected }),
    width,
    height,
    shapes,
    notes: [ladderLegend({ press, selected, punches })],
    points,
    table: capacityTable({ grade, rungs, punches, unit: shop.unit }),
  };
}

/** Diameters of the round punches that fit a press, smallest first, each once. */
export function punchesOnHandMm(press: Press, shop: Shop): number[] {
  const tools = shop.tools?.tools ?? [];
  const sizes = tools.flatMap(({ kind, size, count, press: owner }) => {
    const fits = owner === undefined || nameKey(owner) === nameKey(press.name);
    return kind === 'punch' && count > 0 && fits && size.shape === 'round' ? size.diameterMm : [];
  });
  return [...new Set(sizes)].sort((a, b) => a - b);
}

/** The largest punch on hand of each rung, by name. */
function onHandColumn(
  rungs: readonly PunchCapacity[],
  punches: readonly number[],
  unit: Shop['unit'],
  { x, y }: { x: number; y: (at: number) => number },
): Shape[] {
  const column = { kind: 'text', x, anchor: 'end' } as const;
  const named = rungs.map((rung, at): Shape => {
    const largest = largestOnHandMm(rung, punches);
    const text = largest === undefined ? 'none' : `Ø${formatSizes([largest], unit)}`;
    return { ...column, y: y(at) + 4, text, strong: largest !== undefined };
  });
  return [{ ...column, y: 18, text: 'on hand' }, ...named];
}

function axis(unit: Shop['unit'], endMm: number, x: (mm: number) => number, height: number): Shape[] {
  const bottom = height - foot;
  const marks = scaleMarksMm(unit, endMm).flatMap((mm): Shape[] => [
    { kind: 'line', path: segment(x(mm), bottom, x(mm), bottom + 5), line: 'thin' },
    { kind: 'text', x: x(mm), y: bottom + 19, text: formatLength(mm, unit), anchor: 'middle' },
  ]);
  return [
    { kind: 'text', x: 4, y: 18, text: `thickness, ${unit}` },
    { kind: 'line', path: segment(x(0), bottom, x(endMm), bottom), line: 'thin' },
    ...marks,
    { kind: 'text', x: (x(0) + x(endMm)) / 2, y: bottom + 36, text: `hole, ${unit}`, anchor: 'middle' },
  ];
}

interface RungPlace {
  x: (mm: number) => number;
  y: number;
  endMm: number;
  punches: readonly number[];
  unit: Shop['unit'];
}

function rungShapes(rung: PunchCapacity, { x, y, endMm, punches, unit }: RungPlace): Shape[] {
  const { leastMm, shareMm, ratingMm, thicknessMm, stopped } = rung;
  const label: Shape = {
    kind: 'text',
    x: left - 8,
    y: y + 4,
    text: formatLength(thicknessMm, unit),
    anchor: 'end',
  };
  const ticks = punches.map(
    (mm): Shape => ({ kind: 'line', path: segment(x(mm), y - 13, x(mm), y - 8), line: 'thin' }),
  );
  if (stopped !== undefined || ratingMm < leastMm)
    return [label, ...ticks, { kind: 'text', x: x(0) + 4, y: y + 5, text: 'none' }];
  const open = ratingMm > endMm;
  const thin: Shape = { kind: 'line', path: segment(x(leastMm), y, x(ratingMm), y), line: 'thin' };
  const end: Shape = open
    ? {
        kind: 'line',
        path: `M${x(endMm) - 6} ${y - 5}L${x(endMm)} ${y}L${x(endMm) - 6} ${y + 5}`,
        line: 'thin',
      }
    : { kind: 'line', path: segment(x(ratingMm), y - 6, x(ratingMm), y + 6), line: 'outline' };
  const thick: Shape[] =
    shareMm <= leastMm
      ? []
      : [
          {
            kind: 'area',
            path: rectangle(x(leastMm), y - halfBar, x(shareMm) - x(leastMm), 2 * halfBar),
            fill: 'solid',
          },
        ];
  const start: Shape = { kind: 'line', path: segment(x(leastMm), y - 6, x(leastMm), y + 6), line: 'outline' };
  return [label, ...ticks, thin, ...thick, start, end];
}
