import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import { formatLength } from '../../quantity/formatLength.js';
import { readCount } from '../../quantity/readCount.js';
import type { AnySection } from '../../section/section.js';
import type { Headings } from '../readHeadings.js';
import type { Bends, CornerClips, Notches } from '../rowJob.js';
import type { RowReader } from '../rowReader.js';
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
  understood: string[];
}

const greatestCount = 99;

/** Reads what a row asks for besides the cut and the holes; work that is half given is a problem of the row. */
export function readOtherWork(
  reader: RowReader,
  { fields }: Headings,
  section: AnySection | undefined,
  understood: string[],
): OtherWork {
  const context = { reader, fields, section, understood };
  return { ...readNotches(context), ...readClips(context), ...readBends(context) };
}

function readNotches({ reader, fields, section, understood }: Context): OtherWork {
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
    const note = 'Notch: its width and its depth are both needed. Fill in the blank one.';
    reader.problem(blank ?? fields.notches ?? fields.notchAt, 'notch', note);
  }
  if (widthMm === undefined || depthMm === undefined) return {};
  const size = (mm: number) => `${formatLength(mm, reader.unit)} ${reader.unit}`;
  const notches = counted(count ?? at?.length, 'notch');
  understood.push(`${notches} ${size(widthMm)} wide, ${size(depthMm)} deep, taken at an edge`);
  return { notches: { widthMm, depthMm, count: count ?? at?.length ?? 1, ...(at ? { at } : {}) } };
}

function readClips({ reader, fields, section, understood }: Context): OtherWork {
  const size = reader.read(fields.cornerClip, (value, argument) => readClip(value, argument, reader.unit));
  const count = reader.read(fields.corners, readWholeNumber);
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
      const note = `Corner clip: corners are ${count === undefined ? 'named' : 'counted'} but the size is blank. Fill it in.`;
      reader.problem(fields.cornerClip ?? fields.corners ?? fields.clipAt, 'corner clip', note);
    }
    return {};
  }
  const { alongMm, acrossMm } = size;
  const text = `${formatLength(alongMm, reader.unit)} × ${formatLength(acrossMm, reader.unit)} ${reader.unit}`;
  understood.push(`${counted(count ?? at?.length, 'corner')} clipped ${text}`);
  return { clips: { alongMm, acrossMm, count: count ?? at?.length ?? 1, ...(at ? { at } : {}) } };
}

function readBends({ reader, fields, section, understood }: Context): OtherWork {
  const lengthMm = reader.length(fields.bendLength, 'length');
  const count = reader.read(fields.bends, readWholeNumber);
  const at = readPlacesOf(reader, { work: 'bend', at: fields.bendAt, counted: fields.bends, count, section });
  if (lengthMm === undefined) {
    if ((count !== undefined || at) && !reader.isFilled(fields.bendLength)) {
      const note = `Bend: bends are ${count === undefined ? 'placed' : 'counted'} but their length is blank. Fill it in.`;
      reader.problem(fields.bendLength ?? fields.bends ?? fields.bendAt, 'bend', note);
    }
    return {};
  }
  const bends = counted(count ?? at?.length, 'bend');
  understood.push(`${bends} ${formatLength(lengthMm, reader.unit)} ${reader.unit} long`);
  return { bends: { lengthMm, count: count ?? at?.length ?? 1, ...(at ? { at } : {}) } };
}

/** `4 notches`, or `1 notch (one assumed)`. */
function counted(count: number | undefined, what: string): string {
  if (count === undefined) return `1 ${what} (one assumed)`;
  const plural = what.endsWith('ch') ? `${what}es` : `${what}s`;
  return `${count} ${count === 1 ? what : plural}`;
}

function readWholeNumber(value: CellValue, argument: string): number {
  const allowed = `Write a whole number from 1 to ${greatestCount}.`;
  const count = readCount(value, argument, allowed);
  if (Number.isInteger(count) && count >= 1 && count <= greatestCount) return count;
  return refuse(argument, String(value), `${quoted(value)} is not a whole number in range.`, allowed);
}
