import { type CellValue, isBlank, quoted } from '../quantity/cellValue.js';
import { refuse } from '../inputError.js';
import { memo } from '../quantity/memo.js';
import { readLength } from '../quantity/readLength.js';
import { tradeText } from '../quantity/tradeText.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Hole } from './hole.js';

/** A hole and, where the text says it, how many of them. */
export interface HoleText {
  hole: Hole;
  count?: number;
}

const remembered = memo<HoleText>();
const examples = 'Write 13/16, 13/16x1-7/8 (slot), sq 3/4, rect 1x2, hex 7/8 or 4 @ 13/16 (four holes).';
const sizeExamples =
  'Write the size alone, such as 13/16 or 22 mm; a slot or rectangle has its length under Length.';
const longestText = 60;
const greatestCount = 999;
/** Slots narrower than this are not punched: `4x22` is rather four holes of 22 mm than a slot 4 mm wide. */
const narrowestSlotMm = 9;

const shapeWords: Record<string, Hole['shape']> = {
  sq: 'square',
  square: 'square',
  rect: 'rectangle',
  rectangle: 'rectangle',
  hex: 'hexagon',
  hexagon: 'hexagon',
  slot: 'slot',
  ø: 'round',
  dia: 'round',
  round: 'round',
  rd: 'round',
};

/**
 * Reads a hole as the trade writes it: `13/16`, `Ø22`, `13/16x1-7/8` (slot), `sq 3/4`, `rect 1x2`, `hex 7/8`,
 * `4 x Ø22` or `4@13/16` (count and size). `2-1/4` and `4-13/16Ø` may be a mixed number or a count and are
 * refused with both readings; `1-3/16` is a mixed number. Numbers are in the shop's unit.
 * Throws for text that is no hole or has two readings. Source: common practice, no source.
 */
export function readHole(value: CellValue, argument: string, unit: LengthUnit): HoleText {
  if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', examples);
  if (typeof value !== 'string') {
    return { hole: { shape: 'round', diameterMm: readLength(value, argument, unit, 'hole') } };
  }
  return remembered(`${unit}|${argument}|${value}`, () => parseHole(value, argument, unit));
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
  if (size.length > longestText) notAHole(argument, size, sizeExamples);
  return holeOfSize(tradeText(size), shape, { argument, value: size, unit, allowed: sizeExamples });
}

function parseHole(value: string, argument: string, unit: LengthUnit): HoleText {
  if (value.length > longestText) notAHole(argument, value);
  const text = tradeText(value);
  const counted = /^(\d{1,3}) ?(?:@|(?:x|-|off) ?(?=ø))(.+)$/.exec(text);
  if (counted) {
    const count = Number(counted[1]);
    if (count < 1 || count > greatestCount) notAHole(argument, value);
    return { hole: parseShape(counted[2] ?? '', argument, value, unit), count };
  }
  refuseTwoReadings(text, argument, value);
  return { hole: parseShape(text, argument, value, unit) };
}

/** `2-1/4` and `4-13/16ø`: a mixed number or a count; `4x13/16`: a count or a slot. */
function refuseTwoReadings(text: string, argument: string, value: string): void {
  const dash = /^(\d{1,3}) ?- ?(\d+(?:[/.]\d+)?)/.exec(text);
  if (!dash || Number(dash[1]) < 2) return;
  const [, whole = '', part = ''] = dash;
  const mixed = part.includes('/') ? decimal(whole, part) : undefined;
  refuse(
    argument,
    value,
    `${quoted(value)} may be ${mixed ? `one hole of ${mixed}` : 'a size cut short'} or ${whole} holes of ${part}.`,
    `Write ${mixed ? `${mixed} for one hole, or ` : ''}${whole} @ ${part} for ${whole} holes.`,
  );
}

function decimal(whole: string, fraction: string): string {
  const [over = 0, under = 1] = fraction.split('/').map(Number);
  return String(Number((Number(whole) + over / under).toFixed(4)));
}

function parseShape(text: string, argument: string, value: string, unit: LengthUnit): Hole {
  const prefix = /^(square|sq|rectangle|rect|hexagon|hex|slot|round|rd|dia|ø)\.? ?(.*)$/.exec(text);
  const suffix = prefix ? null : /^(.*?) ?(square|sq|hexagon|hex|slot|dia|ø)\.?$/.exec(text);
  const word = prefix?.[1] ?? suffix?.[2];
  const size = (prefix?.[2] ?? suffix?.[1] ?? text).trim();
  return holeOfSize(size, word === undefined ? undefined : shapeWords[word], {
    argument,
    value,
    unit,
    allowed: examples,
  });
}

interface HoleSource {
  argument: string;
  /** The whole text as typed. */
  value: string;
  unit: LengthUnit;
  /** How it may be written, for refusals. */
  allowed: string;
}

/** The hole of one or two sizes; without a shape two make a slot, where they are not a count and a size. */
function holeOfSize(size: string, named: Hole['shape'] | undefined, source: HoleSource): Hole {
  const { argument, value, unit, allowed } = source;
  const sides = size.split('x').map((side) => side.trim());
  const [first = '', second] = sides;
  const shape = named ?? (second === undefined ? 'round' : 'slot');
  if (sides.length > 2 || !sides.every(startsWithDigits)) return notAHole(argument, value, allowed);
  const read = (side: string) => readLength(side, argument, unit, 'hole');
  if (second === undefined) {
    if (shape === 'round') return { shape, diameterMm: read(first) };
    if (shape === 'square') return { shape, sideMm: read(first) };
    if (shape === 'hexagon') return { shape, acrossFlatsMm: read(first) };
    return notAHole(argument, value, allowed);
  }
  if (shape !== 'slot' && shape !== 'rectangle') return notAHole(argument, value, allowed);
  const a = read(withUnitOf(second, first));
  const b = read(second);
  if (named === undefined) refuseCountOrSlot(first, second, a, b, argument, value);
  const [widthMm, lengthMm] = [Math.min(a, b), Math.max(a, b)];
  if (shape === 'slot' && widthMm === lengthMm) {
    return refuse(argument, value, `${quoted(value)} is a slot as long as it is wide.`, allowed);
  }
  return { shape, widthMm, lengthMm };
}

const startsWithDigits = (side: string) => /^[\d.,]/.test(side);

/** `10x40 mm`: the unit behind the last dimension holds for both. */
function withUnitOf(second: string, first: string): string {
  const unit = /(mm|cm|inches|inch|in\.?|")$/.exec(second)?.[1];
  return unit && /[\d.]$/.test(first) ? `${first} ${unit}` : first;
}

function refuseCountOrSlot(
  first: string,
  second: string,
  a: number,
  b: number,
  argument: string,
  value: string,
) {
  const whole = /^\d{1,3}$/.test(first) && Number(first) > 1;
  const plausibleSlot = a < b && a >= narrowestSlotMm && a < 2 * 25.4;
  if (!whole || plausibleSlot) return;
  refuse(
    argument,
    value,
    `${quoted(value)} may be ${first} holes of ${second} or a slot.`,
    `Write ${first} @ ${second} for ${first} holes, or slot ${second}x${first} for one slot.`,
  );
}

function notAHole(argument: string, value: string, allowed = examples): never {
  return refuse(argument, value, `${quoted(value)} is not a hole.`, allowed);
}
