import { refuse } from '../inputError.js';
import { type CellValue, isBlank, plainText, quoted } from '../quantity/cellValue.js';
import { formatLength, formatNumber } from '../quantity/formatLength.js';
import { readAngle } from '../quantity/readAngle.js';
import { readCount } from '../quantity/readCount.js';
import { radianPerDegree } from '../quantity/units.js';
import { readAnySection } from '../section/readAnySection.js';
import { gradeOfShop } from '../shop/gradeOfShop.js';
import type { Shop } from '../shop/readShop.js';
import { joinedCells } from './joinedColumns.js';
import type { Headings } from './readHeadings.js';
import { readHoleGroup } from './readHoleGroup.js';
import { readOtherWork } from './readOtherWork.js';
import type { RowJob } from './rowJob.js';
import { bareColumn, RowReader, unitUnder } from './rowReader.js';

const greatestMiterDegree = 60;
const greatestQty = 1_000_000;

/** Reads one row of a parts list by its headings. Never throws for what a cell holds: that becomes a finding. */
export function readRow(cells: readonly CellValue[], headings: Headings, shop: Shop): RowJob {
  const { fields, groups } = headings;
  const reader = new RowReader(joinedCells(cells, headings), shop.unit);
  const understood: string[] = [];
  const read = reader.read(bareColumn(fields.section), (value, argument) =>
    readAnySection(value, argument, unitUnder(fields.section, shop.unit)),
  );
  for (const mark of read?.ignored ?? []) understood.push(`${mark} of the section changes nothing here`);
  const grade = reader.read(fields.grade, (value, argument) => gradeOfShop(value, argument, shop));
  const lengthMm = reader.length(fields.length, 'length') ?? read?.lengthMm;
  const qty = reader.read(fields.qty, readQty);
  if (qty === undefined) understood.push('quantity 1 assumed');
  const miterLeftRad = reader.read(fields.miterLeft, readMiter) ?? 0;
  const miterRightRad = reader.read(fields.miterRight, readMiter) ?? 0;
  const miterRad = Math.max(miterLeftRad, miterRightRad);
  if (miterRad > 0) understood.push(`miter ${formatNumber(miterRad / radianPerDegree, 1)}° from square`);
  for (const [field, name] of [
    ['section', 'Section'],
    ['grade', 'Grade'],
  ] as const) {
    if (!reader.isFilled(fields[field]))
      reader.problem(fields[field], name, `${name}: the cell is blank. Fill it in.`);
  }
  const holes = groups.flatMap(
    (columns, index) =>
      readHoleGroup(reader, columns, index, { shop, section: read?.section }, understood) ?? [],
  );
  const other = readOtherWork(reader, headings, understood);
  const press = reader.cell(fields.press);
  if (
    read?.lengthMm !== undefined &&
    reader.isFilled(fields.length) &&
    Math.abs(read.lengthMm - (lengthMm ?? 0)) > 0.5
  ) {
    const unit = shop.unit;
    reader.problem(
      fields.length,
      'Length',
      `Length: the section says ${formatLength(read.lengthMm, unit)} ${unit}, the Length cell ${formatLength(lengthMm ?? 0, unit)} ${unit}. Make them agree.`,
    );
  }
  return {
    qty: qty ?? 1,
    ...(read ? { section: read.section } : {}),
    ...(grade ? { grade } : {}),
    ...(lengthMm === undefined ? {} : { lengthMm }),
    groups: holes,
    ...other,
    miterLeftRad,
    miterRightRad,
    miterRad,
    ...(isBlank(press) ? {} : { press: plainText(String(press)) }),
    problems: reader.problems,
    understood,
  };
}

function readQty(value: CellValue, argument: string): number {
  const allowed = 'Write a whole number of pieces.';
  const qty = readCount(value, argument, allowed);
  if (Number.isInteger(qty) && qty >= 0 && qty <= greatestQty) return qty;
  return refuse(argument, String(value), `${quoted(value)} is not a number of pieces.`, allowed);
}

function readMiter(value: CellValue, argument: string): number {
  return readAngle(value, argument, 0, greatestMiterDegree);
}
