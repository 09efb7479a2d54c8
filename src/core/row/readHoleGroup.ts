import { refuse } from '../inputError.js';
import { type CellValue, plainText, quoted } from '../quantity/cellValue.js';
import { readLength } from '../quantity/readLength.js';
import { readCount } from '../quantity/readCount.js';
import type { LengthUnit } from '../quantity/units.js';
import { boltHole, type BoltHole, type HoleFit } from '../rule/boltHole.js';
import { type BoltSize, readBolt } from '../rule/boltSize.js';
import { type EdgeKind } from '../rule/edgeDistance.js';
import { setting } from '../shop/setting.js';
import type { Shop } from '../shop/readShop.js';
import type { AnySection } from '../section/section.js';
import { nameKey } from '../shop/table.js';
import { describeHole, type Hole } from '../tooling/hole.js';
import { readHole } from '../tooling/readHole.js';
import type { GroupField } from './heading.js';
import { legProblem } from './holePlace.js';
import type { Column } from './readHeadings.js';
import type { HoleGroup } from './rowJob.js';
import type { RowReader } from './rowReader.js';

type Columns = Partial<Record<GroupField, Column>>;

const edgeKindWords = new Map<string, EdgeKind>([
  ['sheared', 'sheared'],
  ['machine cut', 'machine cut'],
  ['sawn', 'machine cut'],
  ['gas cut', 'machine cut'],
  ['rolled', 'rolled'],
  ['sheared connection end', 'sheared connection end'],
]);

/**
 * One hole group of a row; undefined where it has neither hole nor bolt, or they cannot be read: every other cell
 * of the group is read all the same, so that all that is wrong is told at once. With a bolt and no hole, the hole is
 * the one for that bolt in the shop's fit.
 */
export function readHoleGroup(
  reader: RowReader,
  columns: Columns,
  index: number,
  { shop, section }: { shop: Shop; section: AnySection | undefined },
  understood: string[],
): HoleGroup | undefined {
  if (![columns.hole, columns.bolt, columns.holes].some((column) => reader.isFilled(column)))
    return undefined;
  const title = index === 0 ? 'Hole' : `Hole ${index + 1}`;
  const bolt = reader.read(columns.bolt, (value, argument) => readBolt(value, argument, shop.unit));
  const text = reader.read(columns.hole, (value, argument) => readHole(value, argument, shop.unit));
  const given = reader.read(columns.holes, readNumberOf);
  const placed = distances(reader, columns);
  readLegOf(reader, columns, section, placed.leg);
  const boltHoleWanted = bolt !== undefined && !reader.isFilled(columns.hole);
  const hole = boltHoleWanted ? holeOfBolt(reader, bolt, columns, shop) : text?.hole;
  if (bolt && !boltHoleWanted && isPunchable(section)) tabledHole(reader, bolt, columns, shop, 'standard');
  refuseCounts(reader, columns, title, given, text?.count);
  if (!hole) return undefined;
  const count = text?.count ?? given ?? 1;
  const assumed = text?.count === undefined && given === undefined ? ' (one assumed)' : '';
  const fit = text ? '' : `, ${setting(shop, 'holeFit')} for bolt ${bolt?.name}`;
  understood.push(`${count} × ${describeHole(hole, shop.unit)}${assumed}${fit}`);
  return { title, hole, count, ...(bolt ? { bolt } : {}), ...placed };
}

/** Holes that are counted without a size, or counted twice and differently. */
function refuseCounts(
  reader: RowReader,
  columns: Columns,
  title: string,
  given: number | undefined,
  inText: number | undefined,
): void {
  if (given === undefined) return;
  if (!reader.isFilled(columns.hole) && !reader.isFilled(columns.bolt)) {
    const note = `${title}: ${given} holes are asked for but the hole's size is blank. Fill it in.`;
    reader.problem(columns.hole ?? columns.holes, title, note);
  } else if (inText !== undefined && inText !== given) {
    const note = `${title}: the hole says ${inText}, the Holes cell says ${given}. Make them agree.`;
    reader.problem(columns.holes, title, note);
  }
}

/** A leg the section does not have is told with the other cells of the row. */
function readLegOf(reader: RowReader, columns: Columns, section: AnySection | undefined, leg?: string): void {
  const problem = section && legProblem(section, leg, reader.unit);
  if (problem !== undefined) reader.problem(columns.leg, 'Leg', problem);
}

/** The hole for a bolt by the shop's code; a bolt its table lacks is a problem of the row. */
function tabledHole(
  reader: RowReader,
  bolt: BoltSize,
  columns: Columns,
  shop: Shop,
  fit?: HoleFit,
): BoltHole | undefined {
  return reader.read(columns.bolt, () => {
    const code = setting(shop, 'edgeCode') === 'EN' ? 'EN' : 'AISC';
    return boltHole({ bolt, fit: fit ?? setting(shop, 'holeFit'), code });
  });
}

/** Holes in solid bars and in what is sawn are drilled: no table is asked for their bolts. */
function isPunchable(section: AnySection | undefined): boolean {
  return section === undefined || ['flat', 'angle', 'channel'].includes(section.kind);
}

/** The hole of a bolt in the shop's own fit. */
function holeOfBolt(reader: RowReader, bolt: BoltSize, columns: Columns, shop: Shop): Hole | undefined {
  const size = tabledHole(reader, bolt, columns, shop);
  if (!size) return undefined;
  const { widthMm, lengthMm } = size;
  return lengthMm === undefined
    ? { shape: 'round', diameterMm: widthMm }
    : { shape: 'slot', widthMm, lengthMm };
}

function distances(reader: RowReader, columns: Columns): Partial<HoleGroup> {
  const read = {
    edgeMm: reader.length(columns.edge, 'distance'),
    endMm: reader.length(columns.end, 'distance'),
    pitchMm: reader.length(columns.pitch, 'distance'),
    gageMm: reader.length(columns.gage, 'distance'),
    edgeKind: reader.read(columns.edgeKind, readEdgeKind),
    leg: reader.read(columns.leg, (value, argument) => readLeg(value, argument, reader.unit)),
  };
  return Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined));
}

/** The leg as text: which of them, or its size. A number is a size. */
function readLeg(value: CellValue, argument: string, unit: LengthUnit): string {
  if (typeof value === 'number') readLength(value, argument, unit, 'leg');
  return plainText(String(value));
}

function readNumberOf(value: CellValue, argument: string): number {
  const allowed = 'Write a whole number of holes.';
  const count = readCount(value, argument, allowed);
  if (Number.isInteger(count) && count >= 1 && count <= 999) return count;
  return refuse(argument, String(value), `${quoted(value)} is not a number of holes.`, allowed);
}

function readEdgeKind(value: CellValue, argument: string): EdgeKind {
  const allowed = `Write ${[...edgeKindWords.keys()].join(', ')}.`;
  return (
    edgeKindWords.get(nameKey(value)) ??
    refuse(argument, String(value), `${quoted(value)} is not a kind of edge.`, allowed)
  );
}
