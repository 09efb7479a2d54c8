import { greatestMiterDegree } from '../../core/cut/requireMiter.js';
import { refuse } from '../../core/inputError.js';
import { readAngle } from '../../core/quantity/readAngle.js';
import { readQty } from '../../core/row/read/readQty.js';
import { planeWidthMm } from '../../core/section/planeWidth.js';
import { turningOf } from '../../core/stock/list/nestedEnds.js';
import type { StockPart, Turning } from '../../core/stock/stockProblem.js';
import type { MatrixArgument, ReadContext } from '../argument/argument.js';
import {
  gradeOf,
  type Layout,
  listedRows,
  type ListedRow,
  type Named,
  namedBy,
  refuseUnread,
  requireOne,
  sectionOf,
} from './columns.js';

/** What is to be cut, longest first, like pieces together. */
export interface ListedParts {
  parts: readonly StockPart[];
  /** In the plane of the miters; 0 where all ends are square. */
  widthMm: number;
  turning: Turning;
  section: Named | undefined;
  grade: Named | undefined;
}

const layout: Layout = {
  columns: ['length', 'qty', 'miterLeft', 'miterRight', 'section'],
  allowed: 'Give length and quantity of one part in each row, then miter left, miter right and section.',
};
const mostPieces = 100_000;

/** Parts of one section: lengths between the farthest points, pieces, miters. */
export const partsArgument: MatrixArgument<ListedParts> = {
  kind: 'parts',
  meaning: 'Length, quantity, miter left, miter right, section in columns; or any order under headings',
  dimensionality: 'matrix',
  optional: false,
  read: (cells, context) => partsOf(listedRows(cells, layout, context), context),
};

function partsOf(rows: readonly ListedRow[], { argument }: ReadContext): ListedParts {
  const read = rows.map((row) => partOf(row, argument));
  const sections = namedBy(read, ({ section }) => section);
  const grades = namedBy(read, ({ grade }) => grade);
  requireOne(sections, argument, 'section');
  requireOne(grades, argument, 'grade');
  const pieces = read.reduce((sum, { part }) => sum + part.pieces, 0);
  if (pieces > mostPieces)
    refuse(argument, String(pieces), `${pieces} pieces were given.`, `Give at most ${mostPieces}.`);
  const [section] = sections;
  const mitered = read.find(({ part }) => part.leanLeftRad !== 0 || part.leanRightRad !== 0);
  return {
    parts: together(read.map(({ part }) => part)),
    widthMm: mitered ? widthOf(section, `${argument}, row ${mitered.row}`) : 0,
    turning: section ? turningOf(section.section) : 'over and round',
    section,
    grade: grades[0],
  };
}

/** The width in the plane of the miters. Without it nobody knows what a miter takes, and what two of them share. */
function widthOf(section: ReadPart['section'], argument: string): number {
  if (!section)
    return refuse(
      argument,
      '',
      'a mitered part needs its section, which says how wide it is.',
      'Add a column Section, such as FB 1/4x2.',
    );
  if (turningOf(section.section) !== 'round') return planeWidthMm(section, argument);
  const problem = `how ${section.written} lies in the plane of its miters is not known.`;
  return refuse(
    argument,
    section.written,
    problem,
    'Leave its miters out: it is then planned by its full length.',
  );
}

interface ReadPart {
  row: number;
  part: StockPart;
  section: ReturnType<typeof sectionOf>;
  grade: Named | undefined;
}

function partOf(listed: ListedRow, argument: string): ReadPart {
  const { reader, fields, row } = listed;
  const lengthMm = reader.length(fields.length, 'length');
  const qty = reader.read(fields.qty, readQty);
  const miter = (column: ListedRow['fields']['miterLeft']) =>
    reader.read(column, (value, name) => readAngle(value, name, -greatestMiterDegree, greatestMiterDegree)) ??
    0;
  const [left, right] = [miter(fields.miterLeft), miter(fields.miterRight)];
  const section = sectionOf(listed);
  refuseUnread(listed, argument);
  const at = `${argument}, row ${row}`;
  if (lengthMm === undefined)
    return refuse(
      `${at}, Length`,
      '',
      'the cell is blank.',
      'Write the length of the part, or clear the row.',
    );
  if (reader.isFilled(fields.miter))
    refuse(at, '', 'Miter does not say at which end.', 'Give columns Miter left and Miter right.');
  if (qty?.hands && (left !== 0 || right !== 0))
    refuse(
      `${at}, Qty`,
      '',
      'hands of mitered parts are counted together.',
      'Give each hand a row of its own.',
    );
  return {
    row,
    // The long point of a left miter above 0 is at the fence: the far edge begins farther along the bar.
    part: { lengthMm, pieces: qty?.qty ?? 1, leanLeftRad: left, leanRightRad: right === 0 ? 0 : -right },
    section,
    grade: gradeOf(listed),
  };
}

/** Like pieces in one line, so that a plan does not depend on the order of the rows. */
function together(parts: readonly StockPart[]): StockPart[] {
  const byKind = new Map<string, StockPart>();
  for (const part of parts) {
    const key = [part.lengthMm, part.leanLeftRad, part.leanRightRad].join('|');
    byKind.set(key, { ...part, pieces: part.pieces + (byKind.get(key)?.pieces ?? 0) });
  }
  return [...byKind.values()].sort(
    (a, b) => b.lengthMm - a.lengthMm || a.leanLeftRad - b.leanLeftRad || a.leanRightRad - b.leanRightRad,
  );
}
