import { refuse } from '../inputError.js';
import { type CellValue, quoted } from '../quantity/cellValue.js';
import { formatLength } from '../quantity/formatLength.js';
import { readLength } from '../quantity/readLength.js';
import { readCount } from '../quantity/readCount.js';
import { tradeText } from '../quantity/tradeText.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Headings } from './readHeadings.js';
import type { Bends, CornerClips, Notches } from './rowJob.js';
import type { RowReader } from './rowReader.js';

/** The notches, corner clips and bends of a row. */
export interface OtherWork {
  notches?: Notches;
  clips?: CornerClips;
  bends?: Bends;
}

const greatestCount = 99;

/** Reads what a row asks for besides the cut and the holes; work that is half given is a problem of the row. */
export function readOtherWork(reader: RowReader, { fields }: Headings, understood: string[]): OtherWork {
  return {
    ...readNotches(reader, fields, understood),
    ...readClips(reader, fields, understood),
    ...readBends(reader, fields, understood),
  };
}

function readNotches(reader: RowReader, fields: Headings['fields'], understood: string[]): OtherWork {
  const sizes = [fields.notchWidth, fields.notchDepth];
  if (![...sizes, fields.notches].some((column) => reader.isFilled(column))) return {};
  const widthMm = reader.length(fields.notchWidth, 'width');
  const depthMm = reader.length(fields.notchDepth, 'width');
  const count = reader.read(fields.notches, readNumberOf);
  if (!sizes.every((column) => reader.isFilled(column))) {
    const at = sizes.find((column) => column && !reader.isFilled(column)) ?? fields.notches;
    reader.problem(at, 'notch', 'Notch: its width and its depth are both needed. Fill in the blank one.');
  }
  if (widthMm === undefined || depthMm === undefined) return {};
  const size = (mm: number) => `${formatLength(mm, reader.unit)} ${reader.unit}`;
  understood.push(
    `${counted(count, 'notch')} ${size(widthMm)} wide, ${size(depthMm)} deep, taken at an edge`,
  );
  return { notches: { widthMm, depthMm, count: count ?? 1 } };
}

function readClips(reader: RowReader, fields: Headings['fields'], understood: string[]): OtherWork {
  const size = reader.read(fields.cornerClip, (value, argument) => readClip(value, argument, reader.unit));
  const count = reader.read(fields.corners, readNumberOf);
  if (!size) {
    if (count !== undefined && !reader.isFilled(fields.cornerClip)) {
      const note = 'Corner clip: corners are counted but the size is blank. Fill it in.';
      reader.problem(fields.cornerClip ?? fields.corners, 'corner clip', note);
    }
    return {};
  }
  const { alongMm, acrossMm } = size;
  const text = `${formatLength(alongMm, reader.unit)} × ${formatLength(acrossMm, reader.unit)} ${reader.unit}`;
  understood.push(`${counted(count, 'corner')} clipped ${text}`);
  return { clips: { alongMm, acrossMm, count: count ?? 1 } };
}

function readBends(reader: RowReader, fields: Headings['fields'], understood: string[]): OtherWork {
  const lengthMm = reader.length(fields.bendLength, 'length');
  const count = reader.read(fields.bends, readNumberOf);
  if (lengthMm === undefined) {
    if (count !== undefined && !reader.isFilled(fields.bendLength)) {
      const note = 'Bend: bends are counted but their length is blank. Fill it in.';
      reader.problem(fields.bendLength ?? fields.bends, 'bend', note);
    }
    return {};
  }
  understood.push(`${counted(count, 'bend')} ${formatLength(lengthMm, reader.unit)} ${reader.unit} long`);
  return { bends: { lengthMm, count: count ?? 1 } };
}

/** `4 notches`, or `1 notch (one assumed)`. */
function counted(count: number | undefined, what: string): string {
  if (count === undefined) return `1 ${what} (one assumed)`;
  const plural = what.endsWith('ch') ? `${what}es` : `${what}s`;
  return `${count} ${count === 1 ? what : plural}`;
}

/** `1`, both ways alike, or `3/4x1-1/2`, along the length first. */
function readClip(
  value: CellValue,
  argument: string,
  unit: LengthUnit,
): { alongMm: number; acrossMm: number } {
  const sides = typeof value === 'string' ? tradeText(value).split('x') : [value];
  const [along = null, across = along] = sides;
  if (sides.length > 2) {
    refuse(argument, String(value), `${quoted(value)} is not a corner clip.`, 'Write 1 or 3/4x1-1/2.');
  }
  return {
    alongMm: readLength(along, argument, unit, 'width'),
    acrossMm: readLength(across, argument, unit, 'width'),
  };
}

function readNumberOf(value: CellValue, argument: string): number {
  const allowed = `Write a whole number from 1 to ${greatestCount}.`;
  const count = readCount(value, argument, allowed);
  if (Number.isInteger(count) && count >= 1 && count <= greatestCount) return count;
  return refuse(argument, String(value), `${quoted(value)} is not a whole number in range.`, allowed);
}
