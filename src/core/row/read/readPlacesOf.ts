import type { AnySection } from '../../section/section.js';
import type { Column } from '../headings/readHeadings.js';
import type { PartPlace } from '../job/rowJob.js';
import type { RowReader } from '../headings/rowReader.js';
import { type PlacedWork, readPlaces } from './readPlaces.js';

/** The cells that place and count the work of one kind. */
export interface PlacedCells {
  work: PlacedWork;
  at: Column | undefined;
  counted: Column | undefined;
  /** As the counting cell says; undefined where it says nothing. */
  count: number | undefined;
  section: AnySection | undefined;
}

/** The places of the work; another number of them than the row counts is a problem of the row. */
export function readPlacesOf(
  reader: RowReader,
  { work, at, counted, count, section }: PlacedCells,
): PartPlace[] | undefined {
  if (!at || !reader.isFilled(at)) return undefined;
  const { unit } = reader;
  const places = reader.readText(at, (text, argument, length) =>
    readPlaces(text, { work, argument, section, unit, count, length: (size) => length(size, 'distance') }),
  );
  if (places && count !== undefined && places.length !== count) {
    const named = `${places.length} ${places.length === 1 ? 'place' : 'places'}`;
    const problem = `it names ${named}, ${counted?.heading ?? 'the count'} says ${count}. Make them agree.`;
    reader.contradiction(at, { about: at.heading, argument: at.heading, problem });
  }
  return places;
}
