import { type CellValue, plainText } from '../../quantity/cellValue.js';
import { readLength } from '../../quantity/readLength.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { AnySection } from '../../section/section.js';
import { leastDimensionMm, type Hole } from '../../tooling/hole.js';
import type { GroupField } from '../headings/heading.js';
import { legProblem } from './legProblem.js';
import type { Column } from '../headings/readHeadings.js';
import type { HoleGroup } from '../job/rowJob.js';
import type { RowReader } from '../headings/rowReader.js';
import { sidesOf } from './faces.js';
import { anyLine, holeLines } from './holeLines.js';
import { legText } from './legText.js';
import { legWidthProblem } from './legWidth.js';
import type { HoleCount } from './readHoleCount.js';
import { readGage } from './readGage.js';
import { readHolesAt } from './readHolesAt.js';
import { readPitch } from './readPitch.js';
import { readEdge, readEnd } from './readSided.js';
import { withSecondPitch } from './secondPitch.js';

type Columns = Partial<Record<GroupField, Column>>;
type Distances = Pick<
  HoleGroup,
  'edgeMm' | 'edgeFrom' | 'endMm' | 'endFrom' | 'pitchMm' | 'pitchesMm' | 'gageMm' | 'leg' | 'holesAt'
>;

/** What the distances of a group hang on. */
export interface DistanceContext {
  section: AnySection | undefined;
  hole: Hole | undefined;
  /** As the row gives it; undefined where it does not. */
  holes: HoleCount | undefined;
  /** The row gives it in a cell that cannot be read. */
  countUnread: boolean;
}

/** Where the holes of a group lie, by its cells. */
export function readDistances(reader: RowReader, given: Columns, context: DistanceContext): Distances {
  const { section, holes } = context;
  const leg = readLegOf(reader, given, section);
  const onLeg = isOnLeg(section, leg);
  const columns = withSecondPitch(reader, given, { section, isOnLeg: onLeg, count: holes?.count });
  const gageMm = reader.readText(columns.gage, (text, argument, length) =>
    readGage(text, {
      argument,
      length: (size) => length(size, 'distance'),
      onLeg,
      leastApartMm: context.hole ? leastDimensionMm(context.hole) : 0,
    }),
  );
  const edge = reader.readText(columns.edge, (text, argument, length) =>
    readEdge(text, argument, (size) => length(size, 'distance'), sidesOf(section, leg)),
  );
  const end = reader.readText(columns.end, (text, argument, length) =>
    readEnd(text, argument, (size) => length(size, 'distance')),
  );
  const holesAt = holesOneByOne(reader, columns, context);
  const pitch = holesAt ? undefined : pitchOf(reader, columns, context, leg);
  if (section && edge?.edgeMm !== undefined && gageMm !== undefined) {
    const problem = legWidthProblem(section, leg, edge.edgeMm, gageMm, reader.unit);
    if (problem !== undefined) reader.contradiction(columns.edge, told(columns.edge, 'Edge', problem));
  }
  const distances: Distances = { ...edge };
  if (end) Object.assign(distances, end);
  if (pitch) Object.assign(distances, pitch);
  if (gageMm !== undefined) distances.gageMm = gageMm;
  if (leg !== undefined) distances.leg = leg;
  if (holesAt) distances.holesAt = holesAt;
  return distances;
}

/** A problem told by the heading of its column. */
function told(column: Column | undefined, name: string, problem: string) {
  const about = column?.heading ?? name;
  return { about, argument: about, problem };
}

/** Whether holes are in a leg or a flange, whose gage is from the heel. */
function isOnLeg(section: AnySection | undefined, leg: string | undefined): boolean {
  if (section?.kind === 'angle') return true;
  return section?.kind === 'channel' && leg !== undefined && leg.toLowerCase() !== 'web';
}

function pitchOf(
  reader: RowReader,
  columns: Columns,
  { section, hole, holes, countUnread }: DistanceContext,
  leg: string | undefined,
): Pick<HoleGroup, 'pitchMm' | 'pitchesMm'> | undefined {
  return reader.readText(columns.pitch, (text, argument, length) =>
    readPitch(text, {
      argument,
      unit: reader.unit,
      length: (size) => length(size, 'distance'),
      lines: countUnread ? anyLine : holeLines(holes, reader.isFilled(columns.gage), section, leg),
      leastApartMm: hole ? leastDimensionMm(hole) : 0,
    }),
  );
}

/** Holes given one by one: what else would place them is another saying, and so is another number of holes. */
function holesOneByOne(
  reader: RowReader,
  columns: Columns,
  { holes }: DistanceContext,
): HoleGroup['holesAt'] | undefined {
  const column = columns.holesAt;
  const points = reader.readText(column, (text, argument, length) => readHolesAt(text, argument, length));
  if (!column || !points) return undefined;
  const others = [columns.edge, columns.end, columns.pitch, columns.gage].filter((each) =>
    reader.isFilled(each),
  );
  if (others.length > 0 || holes?.eachEnd) {
    const names = others.map((each) => each?.heading ?? '');
    if (holes?.eachEnd) names.push(columns.holes?.heading ?? 'Holes');
    const problem = `${names.join(', ')} says where the holes are, too. Keep one of them.`;
    reader.contradiction(column, { about: column.heading, argument: column.heading, problem });
  } else if (holes && holes.count !== points.length) {
    const problem = `it gives ${points.length} holes, the row says ${holes.count}. Make them agree.`;
    reader.contradiction(column, { about: column.heading, argument: column.heading, problem });
  }
  return points;
}

/** A leg the section does not have is told with the other cells of the row. */
function readLegOf(reader: RowReader, columns: Columns, section: AnySection | undefined): string | undefined {
  const leg = reader.read(columns.leg, (value, argument) => readLeg(value, argument, reader.unit));
  const problem = section && legProblem(section, leg, reader.unit);
  if (problem !== undefined) reader.contradiction(columns.leg, told(columns.leg, 'Leg', problem));
  return leg;
}

/** The leg as text: which of them, or its size. A number is a size. */
function readLeg(value: CellValue, argument: string, unit: LengthUnit): string {
  if (typeof value === 'number') readLength(value, argument, unit, 'leg');
  return legText(plainText(String(value)));
}
