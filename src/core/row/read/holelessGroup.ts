import type { GroupField } from '../headings/heading.js';
import type { Column } from '../headings/readHeadings.js';
import type { RowReader } from '../headings/rowReader.js';

/** What says something of holes, and nothing without one. What makes them may stand in every row of a list. */
const ofHoles: readonly GroupField[] = [
  'edge',
  'end',
  'pitch',
  'gage',
  'p2',
  'p3',
  'p4',
  'leg',
  'edgeKind',
  'endKind',
  'slot',
  'holesAt',
];

/** Cells of a hole group without a hole: nothing can be checked against them, so they are a problem of the row. */
export function refuseHoleless(
  reader: RowReader,
  columns: Partial<Record<GroupField, Column>>,
  title: string,
): void {
  const given = ofHoles.flatMap((field) => {
    const column = columns[field];
    return column && reader.isFilled(column) ? [column] : [];
  });
  const [first, ...others] = given;
  if (!first) return;
  const last = others.at(-1);
  const before = [first, ...others.slice(0, -1)].map(({ heading }) => heading).join(', ');
  const names = last ? `${before} and ${last.heading} are` : `${before} is`;
  const fill = columns.hole ? `Fill in ${columns.hole.heading}` : `Add a column ${title}`;
  const problem = `${names} given but no hole size. ${fill}, or clear ${last ? 'them' : 'it'}.`;
  const about = columns.hole?.heading ?? title;
  reader.problem(columns.hole ?? first, { about, argument: about, problem });
}
