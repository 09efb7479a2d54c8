import type { AnySection } from '../../section/section.js';
import type { GroupField } from '../headings/heading.js';
import type { Column } from '../headings/readHeadings.js';
import type { RowReader } from '../headings/rowReader.js';

type Columns = Partial<Record<GroupField, Column>>;

interface GroupContext {
  section: AnySection | undefined;
  isOnLeg: boolean;
  count: number | undefined;
}

/**
 * The columns of a group with what p2, p3 and p4 are in this row. On a plate or web p2 alone lies between two lines of
 * holes, as in EN 1993-1-8, Figure 3.1, where no gage says so; on an angle, beside a gage and beside p3 they are the
 * spaces of one line behind p1. Three holes may be either: the row is asked.
 */
export function withSecondPitch(
  reader: RowReader,
  columns: Columns,
  { section, isOnLeg, count }: GroupContext,
): Columns {
  const { p2, p3, p4, pitch, gage } = columns;
  const more = [p2, p3, p4].flatMap((column) => (column && reader.isFilled(column) ? [column] : []));
  const [first] = more;
  if (!first) return columns;
  const isAcross = more.length === 1 && first === p2 && !isOnLeg && !reader.isFilled(gage);
  if (isAcross && (section?.kind === 'flat' || section?.kind === 'channel')) {
    if (pitch && reader.isFilled(pitch) && count === 3) {
      const problem =
        'it may lie between two lines of holes, or be the second space of a line of 3. Call the column Gage, or write both spaces under Pitch.';
      reader.contradiction(first, { about: first.heading, argument: first.heading, problem });
      return columns;
    }
    return { ...columns, gage: first };
  }
  if (!pitch || !reader.isFilled(pitch)) {
    const problem = `it is a space of a line of holes, and ${pitch?.heading ?? 'Pitch'}, the one before it, is blank. Fill it in.`;
    reader.contradiction(first, { about: first.heading, argument: first.heading, problem });
    return columns;
  }
  return { ...columns, pitch: reader.list([pitch, ...more]) };
}
