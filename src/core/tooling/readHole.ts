import { refuse } from '../inputError.js';
import { type CellValue, isBlank, plainText, quoted } from '../quantity/cellValue.js';
import { memo } from '../quantity/memo.js';
import { readLength, readLengthText } from '../quantity/readLength.js';
import { tradeText } from '../quantity/tradeText.js';
import { type LengthUnit, mmPer } from '../quantity/units.js';
import { mayBeCount } from './countOrSlot.js';
import { type Hole, leastDimensionMm } from './hole.js';
import { type CountedHole, countedHole, shapeAndSize } from './holeWords.js';

/** A hole and, where the text says it, how many of them. */
export interface HoleText {
  hole: Hole;
  count?: number;
}

const remembered = memo<HoleText>();
const holeExamples: Record<LengthUnit, string> = {
  in: 'Write 13/16, 13/16x1-7/8 (slot), sq 3/4, rect 1x2, hex 7/8 or 4 @ 13/16 (four holes).',
  mm: 'Write 22, 22x50 (slot), sq 20, rect 20x40, hex 22 or 4 @ 22 (four holes).',
};
const sizeExamples: Record<LengthUnit, string> = {
  in: 'Write the size alone, such as 13/16 or 22 mm; a slot or rectangle has its length under Length.',
  mm: 'Write the size alone, such as 22 or 13/16 in; a slot or rectangle has its length under Length.',
};
const longestText = 60;
/** `slot1 3/16`, `(4)1 3/16`: a space that slipped in front of the digit it was behind. */
const gluedMixed = /(?:[a-ce-z)]|[a-z]d)\d+ \d+\//;
const greatestCount = 999;

/**
 * Reads a hole as the trade writes it: `13/16`, `Ø22`, `13/16x1-7/8` (slot), `sq 3/4`, `rect 1x2`, `hex 7/8`,
 * `4 x Ø22`, `(4) 13/16` or `4@13/16` (count and size), `13/16 TYP`. `2-1/4` and `4-13/16Ø` may be a mixed number or
 * a count, `12x18` in mm a count or a slot: they are refused with both readings; `1-3/16` is a mixed number. Numbers
 * are in the shop's unit.
 * `isSlot`: a cell beside it says that it is a slot, so that `18x36` is one. Throws for text that is no hole or has two
 * readings. Source: common practice, no source.
 */
export function readHole(
  value: CellValue,
  argument: string,
  unit: LengthUnit,
  isSlot: boolean = false,
): HoleText {
  if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', holeExamples[unit]);
  if (typeof value !== 'string') {
    return { hole: { shape: 'round', diameterMm: readLength(value, argument, unit, 'hole') } };
  }
  return remembered(`${unit}|${argument}|${isSlot}|${value}`, () => parseHole(value, argument, unit, isSlot));
}

/**
 * Reads the size of a hole whose shape is given beside it, as the Tools table does: `13/16`, `13/16 x 1-7/8`.
 * @param size the size, or both sizes with an `x`
 * @param shape the shape
 * @param argument what the cell is, for the refusal
 * @param unit the shop's unit, for numbers without one
 * @returns the hole
 * Throws `invalid` for text that is no size of that shape, quoted as typed. Source: common practice, no source.
 */
export function readHoleSize(size: string, shape: Hole['shape'], argument: string, unit: LengthUnit): Hole {
  const source = { argument, value: size, unit, allowed: sizeExamples[unit] };
  if (size.length > longestText) notAHole(source);
  const said = shapeAndSize(tradeText(size));
  if (said.shape !== undefined && said.shape !== shape) notAHole(source);
  return holeOfSize(said.size, shape, source);
}

function parseHole(value: string, argument: string, unit: LengthUnit, isSlot: boolean): HoleText {
  const source = { argument, value, unit, allowed: holeExamples[unit], isSlot };
  if (value.length > longestText) notAHole(source);
  const text = tradeText(value);
  if (gluedMixed.test(text)) notAHole(source);
  const { count, rest } = roundTimes(text, source) ?? countedHole(text);
  if (count === undefined) {
    refuseTwoReadings(rest, source);
    return { hole: parseShape(rest, source) };
  }
  if (count < 1 || count > greatestCount) notAHole(source);
  return { hole: parseShape(rest, source), count };
}

/** `Ø18 x 4`: four holes where 4 can be no length of a slot; `Ø18x40` may be either. */
function roundTimes(text: string, source: HoleSource): CountedHole | undefined {
  const [, size, times] = /^((?:ø|diam?\.?|d) ?\d[^x]*?) ?x ?(\d{1,3})$/.exec(text) ?? [];
  if (size === undefined || times === undefined) return undefined;
  const hole = parseShape(size, source);
  const count = Number(times);
  if (count * mmPer[source.unit] < leastDimensionMm(hole)) return { count, rest: size };
  return refuse(
    source.argument,
    source.value,
    `${quoted(source.value)} may be ${count} round holes or a slot ${count} long.`,
    `Write ${count} @ ${plainText(source.value).replace(/ ?[x×*] ?\d+$/i, '')}, or the slot without its mark.`,
  );
}

/** `2-1/4`, `2 1/4` and `4-13/16ø`: a mixed number or a count. */
function refuseTwoReadings(text: string, { argument, value }: HoleSource): void {
  const dash = /^(\d{1,3}) ?[- ] ?(\d+(?:[/.]\d+)?)/.exec(text);
  if (!dash || Number(dash[1]) < 2) return;
  const [, whole = '', part = ''] = dash;
  const mixed = part.includes('/') ? decimal(whole, part) : undefined;
  refuse(
    argument,
    value,
    `${quoted(value)} may be ${mixed ? `one hole of ${mixed}` : 'an unfinished size'} or ${whole} holes of ${part}.`,
    `Write ${mixed ? `Ø${whole}-${part} for one hole, or ` : ''}${whole} @ ${part} for ${whole} holes.`,
  );
}

function decimal(whole: string, fraction: string): string {
  const [over = 0, under = 1] = fraction.split('/').map(Number);
  return String(Number((Number(whole) + over / under).toFixed(4)));
}

function parseShape(text: string, source: HoleSource): Hole {
  const { shape, size } = shapeAndSize(text);
  return holeOfSize(size, shape, source);
}

interface HoleSource {
  argument: string;
  /** The whole text as typed. */
  value: string;
  unit: LengthUnit;
  /** How it may be written, for refusals. */
  allowed: string;
  /** A cell beside it says that it is a slot: two sizes are no count and a size. */
  isSlot?: boolean;
}

/** The hole of one or two sizes; without a shape two make a slot, where they are not a count and a size. */
function holeOfSize(size: string, named: Hole['shape'] | undefined, source: HoleSource): Hole {
  const { argument, value, unit, allowed } = source;
  const sides = size.split('x').map((side) => side.trim());
  const [first = '', second] = sides;
  const shape = named ?? (second === undefined ? 'round' : 'slot');
  if (sides.length > 2 || !sides.every(isSize)) return notAHole(source);
  const read = (side: string) => readLengthText(side, argument, unit, 'hole');
  if (second === undefined) {
    if (shape === 'round') return { shape, diameterMm: read(first) };
    if (shape === 'square') return { shape, sideMm: read(first) };
    if (shape === 'hexagon') return { shape, acrossFlatsMm: read(first) };
    return notAHole(source);
  }
  if (shape !== 'slot' && shape !== 'rectangle') return notAHole(source);
  const a = read(withUnitOf(second, first));
  const b = read(withUnitOf(first, second));
  if (named === undefined && !source.isSlot) refuseCountOrSlot(first, second, a, b, source);
  const [widthMm, lengthMm] = [Math.min(a, b), Math.max(a, b)];
  if (shape === 'slot' && widthMm === lengthMm) {
    return refuse(argument, value, `${quoted(value)} is a slot as long as it is wide.`, allowed);
  }
  if (lengthMm > greatestSlotRatio * widthMm) {
    return refuse(
      argument,
      value,
      `${quoted(value)} is more than ${greatestSlotRatio} times as long as wide.`,
      allowed,
    );
  }
  return { shape, widthMm, lengthMm };
}

/** Holes are no feet wide. */
const isSize = (side: string) => /^[\d.]/.test(side) && !/['f]/.test(side);
/** A slot so much longer than wide is a digit that slipped. */
const greatestSlotRatio = 25;

/** `10x40 mm`, `1"x2`: a unit behind one dimension holds for both. */
function withUnitOf(marked: string, bare: string): string {
  const unit = /(mm|cm|inches|inch|in\.?|")$/.exec(marked)?.[1];
  return unit && /[\d.]$/.test(bare) ? `${bare} ${unit}` : bare;
}

function refuseCountOrSlot(first: string, second: string, a: number, b: number, source: HoleSource): void {
  const { argument, value } = source;
  refuseTimes(first, second, a, b, source);
  if (!/^\d{1,3}$/.test(first) || !mayBeCount({ first: Number(first), widthMm: a, lengthMm: b })) return;
  refuse(
    argument,
    value,
    `${quoted(value)} may be ${first} holes of ${second} or a slot.`,
    `Write ${first} @ ${second} for ${first} holes, or slot ${first}x${second} for one slot.`,
  );
}

/** `13/16x4` in inches: four holes, or a slot 4 in long. */
function refuseTimes(first: string, second: string, a: number, b: number, source: HoleSource): void {
  const { argument, value, unit } = source;
  const isInch = unit === 'in' || /[/"]|in$/.test(first);
  if (!isInch || !/^(?:[2-9]|\d\d)$/.test(second) || a >= b) return;
  refuse(
    argument,
    value,
    `${quoted(value)} may be ${second} holes of ${first} or a slot ${second} long.`,
    `Write ${second} @ ${first} for ${second} holes, or slot ${first}x${second} for one slot.`,
  );
}

function notAHole({ argument, value, allowed }: HoleSource): never {
  return refuse(argument, value, `${quoted(value)} is not a hole.`, allowed);
}
