import type { Reading } from '../job/reading.js';
import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import { readCount } from '../../quantity/readCount.js';
import type { AnySection } from '../../section/section.js';
import type { Headings } from '../headings/readHeadings.js';
import type { Bends, CornerClips, Notches } from '../job/rowJob.js';
import type { RowReader } from '../headings/rowReader.js';
import { readClip } from './readClip.js';
import { readPlacesOf } from './readPlacesOf.js';

/** The notches, corner clips and bends of a row. */
export interface OtherWork {
  notches?: Notches;
  clips?: CornerClips;
  bends?: Bends;
}

interface Context {
  reader: RowReader;
  fields: Headings['fields'];
  section: AnySection | undefined;
  readings: Reading[];
}

const greatestCount = 99;
const everyCorner =
  /^(?:all|alle)(?: (?:four|vier|4))?(?: corners| ecken| hoeken)?$|^([1-4]) (?:corners?|ecken?|hoeken?)$/i;

/** Reads what a row asks for besides the cut and the holes; work that is half given is a problem of the row. */
export function readOtherWork(
  reader: RowReader,
  { fields }: Headings,
  section: AnySection | undefined,
  readings: Reading[],
): OtherWork {
  const context = { reader, fields, section, readings };
  return { ...readNotches(context), ...readClips(context), ...readBends(context) };
}

function readNotches({ reader, fields, section, readings }: Context): OtherWork {
  const sizes = [fields.notchWidth, fields.notchDepth];
  const asked = [...sizes, fields.notches].some((column) => reader.isFilled(column));
  if (!asked && !reader.isFilled(fields.notchAt)) return {};
  const widthMm = reader.length(fields.notchWidth, 'width');
  const depthMm = reader.length(fields.notchDepth, 'width');
  const count = reader.read(fields.notches, readWholeNumber);
  const at = readPlacesOf(reader, {
    work: 'notch',
    at: fields.notchAt,
    counted: fields.notches,
    count,
    section,
  });
  if (!sizes.every((column) => reader.isFilled(column))) {
    const blank = sizes.find((column) => column && !reader.isFilled(column));
    const problem = 'a notch needs its width and its depth. Fill in the blank one.';
    const about = blank?.heading ?? 'Notch';
    reader.problem(blank ?? fields.notches ?? fields.notchAt, { about, argument: about, problem });
  }
  if (widthMm === undefined || depthMm === undefined) return {};
  const notches = { widthMm, depthMm, ...counted(count ?? at?.length) };
  const byMiddle = at?.some((place) => place.at === 'edge' && place.fromMm !== undefined);
  readings.push({
    is: 'notches',
    ...notches,
    placed: at !== undefined,
    ...(byMiddle ? { byMiddle } : {}),
  });
  return { notches: { widthMm, depthMm, count: notches.count, ...(at ? { at } : {}) } };
}

function readClips({ reader, fields, section, readings }: Context): OtherWork {
  const size = reader.read(fields.cornerClip, (value, argument) => readClip(value, argument, reader.unit));
  const count = reader.read(fields.corners, readCorners);
  const places = readPlacesOf(reader, {
    work: 'clip',
    at: fields.clipAt,
    counted: fields.corners,
    count,
    section,
  });
  const at = places?.flatMap((place) => (place.at === 'corner' ? [place] : []));
  if (!size) {
    if ((count !== undefined || at) && !reader.isFilled(fields.cornerClip)) {
      const problem = `corners are ${count === undefined ? 'named' : 'counted'} but the size is blank. Fill it in.`;
      const about = fields.cornerClip?.heading ?? 'Corner clip';
      reader.problem(fields.cornerClip ?? fields.corners ?? fields.clipAt, {
        about,
        argument: about,
        problem,
      });
    }
    return {};
  }
  const { alongMm, acrossMm } = size;
  const corners = { alongMm, acrossMm, ...counted(count ?? at?.length) };
  readings.push({ is: 'corners clipped', ...corners });
  return { clips: { alongMm, acrossMm, count: corners.count, ...(at ? { at } : {}) } };
}

function readBends({ reader, fields, section, readings }: Context): OtherWork {
  const lengthMm = reader.length(fields.bendLength, 'length');
  const count = reader.read(fields.bends, readWholeNumber);
  const at = readPlacesOf(reader, { work: 'bend', at: fields.bendAt, counted: fields.bends, count, section });
  if (lengthMm === undefined) {
    if ((count !== undefined || at) && !reader.isFilled(fields.bendLength)) {
      const problem = `bends are ${count === undefined ? 'placed' : 'counted'} but their length is blank. Fill it in.`;
      const about = fields.bendLength?.heading ?? 'Bend length';
      reader.problem(fields.bendLength ?? fields.bends ?? fields.bendAt, { about, argument: about, problem });
    }
    return {};
  }
  const bends = { lengthMm, ...counted(count ?? at?.length) };
  readings.push({ is: 'bends', ...bends });
  return { bends: { lengthMm, count: bends.count, ...(at ? { at } : {}) } };
}

/** How many there are, one where the row does not say. */
function counted(count: number | undefined): { count: number; counted: boolean } {
  return { count: count ?? 1, counted: count !== undefined };
}

/** `2`, `all 4`, `4 corners`; `all` is four of them. */
function readCorners(value: CellValue, argument: string): number {
  const match = typeof value === 'string' ? everyCorner.exec(value.trim()) : null;
  return match ? Number(match[1] ?? 4) : readWholeNumber(value, argument);
}

function readWholeNumber(value: CellValue, argument: string): number {
  const allowed = `Write a whole number from 1 to ${greatestCount}.`;
  const count = readCount(value, argument, allowed);
  if (Number.isInteger(count) && count >= 1 && count <= greatestCount) return count;
  return refuse(argument, String(value), `${quoted(value)} is not a whole number in range.`, allowed);
}
