import { InputError, refuse } from '../inputError.js';
import { type CellValue, isBlank, quoted } from '../quantity/cellValue.js';
import { readAngle } from '../quantity/readAngle.js';
import { readForce } from '../quantity/readForce.js';
import { readLength } from '../quantity/readLength.js';
import { readMass } from '../quantity/readMass.js';
import { readNumber, refuseThousandsAmount } from '../quantity/readNumber.js';
import { readStress } from '../quantity/readStress.js';
import type { LengthUnit } from '../quantity/units.js';
import type { PressValue } from './press.js';
import type { PressItem } from './item/pressItem.js';
import { wordTable } from '../quantity/wordTable.js';

/** Kinds whose cell is one of a few words: `none` is no limit there. */
const isWord = new Set<PressItem['kind']>(['station', 'yesNo', 'legs', 'legPosition']);

/**
 * One cell of the Presses table. `none` is no limit, blank is unknown, anything else must be readable;
 * a cell that is not stays a problem of its own, told where it is used.
 */
export function readPressValue(
  cell: CellValue,
  unitCell: CellValue,
  item: PressItem,
  pressName: string,
  unit: LengthUnit,
): PressValue {
  const text = typeof cell === 'string' ? cell.trim().toLowerCase() : cell;
  if (isBlank(text)) return { state: 'unknown' };
  if (text === 'none' && !isWord.has(item.kind)) return { state: 'none' };
  const argument = `Presses, ${pressName}, ${item.name}`;
  try {
    const { kind } = item;
    if (kind === 'lengths') return { state: 'list', values: readLengths(cell, unitCell, argument, unit) };
    return { state: 'value', value: readValue(cell, unitCell, kind, argument, unit) };
  } catch (error) {
    if (error instanceof InputError) return { state: 'bad', failure: error.failure };
    throw error;
  }
}

function readValue(
  cell: CellValue,
  unitCell: CellValue,
  kind: Exclude<PressItem['kind'], 'lengths'>,
  argument: string,
  unit: LengthUnit,
) {
  switch (kind) {
    case 'station':
    case 'yesNo':
      return readYesNo(cell, argument);
    case 'legPosition':
      return readLegPosition(cell, argument);
    case 'amount':
      refuseThousandsAmount(cell, argument, unit);
      return readRange(cell, kind, argument);
    case 'minutes':
      return 60 * readRange(cell, kind, argument);
    case 'speed':
      return readSpeed(cell, unitCell, argument, unit);
    case 'legs':
      return readLegs(cell, argument);
    case 'force':
      return readForce(cell, argument, unitCell, unit);
    case 'length':
      return readLength(withUnit(cell, unitCell), argument, unit, 'distance');
    case 'stress':
      return readStress(withUnit(cell, unitCell), argument, unit);
    case 'mass':
      return readMass(withUnit(cell, unitCell), argument, unit);
    case 'angle':
      return readAngle(cell, argument, 0, 45);
    default:
      return readRange(cell, kind, argument);
  }
}

/** Sizes such as `1, 1-1/2, 2`, smallest first, each once. Behind a comma stands a space, or a semicolon parts them. */
function readLengths(cell: CellValue, unitCell: CellValue, argument: string, unit: LengthUnit): number[] {
  const parts = typeof cell === 'string' ? cell.split(cell.includes(';') ? ';' : /,\s/) : [cell];
  const filled = parts.filter((part) => !isBlank(part));
  const read = filled.map((part) => readLength(withUnit(part, unitCell), argument, unit, 'distance'));
  if (read.length === 0) {
    return refuse(
      argument,
      String(cell),
      `${quoted(cell)} holds no sizes.`,
      'Write sizes such as 1, 1-1/2, 2.',
    );
  }
  return [...new Set(read)].sort((a, b) => a - b);
}

/** A bare number takes the unit of the Unit column; text that carries its own unit keeps it. */
function withUnit(cell: CellValue, unitCell: CellValue): CellValue {
  if (isBlank(unitCell) || typeof unitCell !== 'string') return cell;
  const bare = typeof cell === 'number' || (typeof cell === 'string' && /\d$/.test(cell.trim()));
  return bare ? `${typeof cell === 'string' ? cell.trim() : plainDigits(cell)} ${unitCell.trim()}` : cell;
}

/** A number as digits, never in exponent form. */
function plainDigits(cell: CellValue): string {
  const text = String(cell);
  return text.includes('e') ? Number(cell).toFixed(12) : text;
}

function readYesNo(cell: CellValue, argument: string): number {
  if (cell === true) return 1;
  if (cell === false) return 0;
  const word = String(cell).trim().toLowerCase();
  if (word === 'yes' || word === 'y') return 1;
  if (word === 'no' || word === 'n' || word === 'none') return 0;
  return refuse(argument, String(cell), `${quoted(cell)} is not yes or no.`, 'Write yes or no.');
}

function readLegs(cell: CellValue, argument: string): number {
  const word = String(cell).trim().toLowerCase();
  if (word === 'no' || word === 'none' || cell === false) return 0;
  if (word === 'one' || word === '1') return 1;
  if (word === 'both' || word === '2') return 2;
  return refuse(argument, String(cell), `${quoted(cell)} is not one, both or no.`, 'Write one, both or no.');
}

/** How the other leg may lie, as in `legPositions`. */
function readLegPosition(cell: CellValue, argument: string): number {
  const word = String(cell).trim().toLowerCase();
  const at = legPositions.findIndex((each) => each === word);
  if (at >= 0) return at;
  const problem = `${quoted(cell)} is not down, up or both.`;
  return refuse(argument, String(cell), problem, 'Write down, up or both.');
}

export const legPositions = ['down', 'up', 'both'] as const;

const perTime = /\s*\/\s*(s|sec|min)\.?\s*$/i;
const secondsOf: Record<string, number> = wordTable({ s: 1, sec: 1, min: 60 });

/** A length for each second, `1.2 in/s`, or for each minute, in mm/s. */
function readSpeed(cell: CellValue, unitCell: CellValue, argument: string, unit: LengthUnit): number {
  const text = typeof cell === 'string' ? cell : '';
  const per = perTime.exec(text) ?? perTime.exec(typeof unitCell === 'string' ? unitCell : '');
  const bare = typeof cell === 'string' ? cell.replace(perTime, '') : cell;
  const lengthUnit = typeof unitCell === 'string' ? unitCell.replace(perTime, '') : unitCell;
  const length = readLength(withUnit(bare, lengthUnit), argument, unit, 'distance');
  return length / (secondsOf[per?.[1]?.toLowerCase() ?? 's'] ?? 1);
}

const ranges = {
  ratio: { least: 0.05, greatest: 1, allowed: 'Write a share from 0.05 to 1, such as 0.8.' },
  allowance: { least: 1, greatest: 3, allowed: 'Write a factor from 1 to 3, such as 1.2.' },
  amount: { least: 0, greatest: 1e6, allowed: 'Write an amount from 0 to 1,000,000.' },
  count: { least: 0, greatest: 100, allowed: 'Write a number from 0 to 100.' },
  seconds: { least: 0, greatest: 3600, allowed: 'Write seconds from 0 to 3,600.' },
  minutes: { least: 0, greatest: 480, allowed: 'Write minutes from 0 to 480.' },
  rate: { least: 1, greatest: 600, allowed: 'Write strokes per minute from 1 to 600.' },
};

function readRange(cell: CellValue, kind: keyof typeof ranges, argument: string): number {
  const { least, greatest, allowed } = ranges[kind];
  const number = readNumber(cell, argument, allowed);
  if (number >= least && number <= greatest) return number;
  return refuse(argument, String(cell), `${quoted(cell)} is out of range.`, allowed);
}
