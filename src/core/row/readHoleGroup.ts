import { refuse } from '../inputError.js';
import { type CellValue, isBlank, plainText, quoted } from '../quantity/cellValue.js';
import { readLength } from '../quantity/readLength.js';
import { readNumber } from '../quantity/readNumber.js';
import type { LengthUnit } from '../quantity/units.js';
import { boltHole } from '../rule/boltHole.js';
import { type BoltSize, readBolt } from '../rule/boltSize.js';
import { type EdgeKind } from '../rule/edgeDistance.js';
import { setting } from '../shop/setting.js';
import type { Shop } from '../shop/readShop.js';
import { nameKey } from '../shop/table.js';
import { describeHole, type Hole } from '../tooling/hole.js';
import { readHole } from '../tooling/readHole.js';
import type { GroupField } from './heading.js';
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
 * One hole group of a row; undefined where it has neither hole nor bolt. With a bolt and no hole, the hole is
 * the one for that bolt in the shop's fit.
 */
export function readHoleGroup(
  reader: RowReader,
  columns: Columns,
  index: number,
  shop: Shop,
  understood: string[],
): HoleGroup | undefined {
  const title = index === 0 ? 'Hole' : `Hole ${index + 1}`;
  const bolt = reader.read(columns.bolt, (value, argument) => readBolt(value, argument, shop.unit));
  const text = reader.read(columns.hole, (value, argument) => readHole(value, argument, shop.unit));
  const hole =
    text?.hole ??
    (bolt && isBlank(reader.cell(columns.hole)) ? holeOfBolt(reader, bolt, columns, shop) : undefined);
  const given = reader.read(columns.holes, readCount);
  if (!hole) {
    if (given !== undefined && isBlank(reader.cell(columns.hole)) && isBlank(reader.cell(columns.bolt))) {
      reader.problem(
        title,
        `${title}: ${given} holes are asked for but the hole's size is blank. Fill it in.`,
      );
    }
    return undefined;
  }
  if (text?.count !== undefined && given !== undefined && text.count !== given) {
    reader.problem(
      title,
      `${title}: the hole says ${text.count}, the Holes cell says ${given}. Make them agree.`,
    );
  }
  const count = text?.count ?? given ?? 1;
  const assumed = text?.count === undefined && given === undefined ? ' (one assumed)' : '';
  understood.push(
    `${count} × ${describeHole(hole, shop.unit)}${assumed}${text ? '' : `, ${setting(shop, 'holeFit')} for bolt ${bolt?.name}`}`,
  );
  return { title, hole, count, ...(bolt ? { bolt } : {}), ...distances(reader, columns) };
}

/** The hole of a bolt in the shop's own fit. */
function holeOfBolt(reader: RowReader, bolt: BoltSize, columns: Columns, shop: Shop): Hole | undefined {
  const code = setting(shop, 'edgeCode') === 'EN' ? 'EN' : 'AISC';
  const size = reader.read(columns.bolt, () => boltHole({ bolt, fit: setting(shop, 'holeFit'), code }));
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

function readCount(value: CellValue, argument: string): number {
  const allowed = 'Write a whole number of holes.';
  const count = readNumber(value, argument, allowed);
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
