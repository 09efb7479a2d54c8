import { type CellValue, isBlank, plainText } from '../quantity/cellValue.js';
import { formatLength } from '../quantity/formatLength.js';
import { readAnySection } from '../section/readAnySection.js';
import { gradeOfShop } from '../shop/gradeOfShop.js';
import type { Shop } from '../shop/readShop.js';
import { rowCells } from './headings/joinedColumns.js';
import type { Headings } from './headings/readHeadings.js';
import { readHoleGroup } from './read/readHoleGroup.js';
import { readMaking } from './read/readMaking.js';
import { readOtherWork } from './read/readOtherWork.js';
import { readMiters } from './read/readMiters.js';
import { readQty } from './read/readQty.js';
import type { Reading } from './job/reading.js';
import type { HoleGroup, PartEnd, RowJob } from './job/rowJob.js';
import { bareColumn, RowReader, unitUnder } from './headings/rowReader.js';
import { notRead } from './notRead.js';
import { readsUnclear, unclearCells } from './unclear.js';

const lengthFields = ['length', 'cornerClip', 'notchWidth', 'notchDepth', 'bendLength'] as const;

/** `Bent PL3/8X6`: a plate that is bent, wherever the row says how. */
const saysBent = (section: CellValue) => /^\s*bent\b/i.test(String(section ?? ''));

/** Reads one row of a parts list by its headings. Never throws for what a cell holds: that becomes a finding. */
export function readRow(cells: readonly CellValue[], headings: Headings, shop: Shop): RowJob {
  const { fields, groups } = headings;
  const reader = new RowReader(rowCells(cells, headings), shop.unit);
  const readings: Reading[] = [];
  const read = reader.read(bareColumn(fields.section), (value, argument) =>
    readAnySection(value, argument, unitUnder(fields.section, shop.unit)),
  );
  const isBathed = read?.ignored?.includes('GALV') === true;
  for (const mark of read?.ignored ?? []) if (mark !== 'GALV') readings.push({ is: 'ignored mark', mark });
  const grade = reader.read(fields.grade, (value, argument) => gradeOfShop(value, argument, shop));
  if (/^tensile/i.test(grade?.name ?? ''))
    readings.push({ is: 'tensile as typed', typed: grade?.name ?? '' });
  const lengthMm = reader.length(fields.length, 'length') ?? read?.lengthMm;
  const qty = reader.read(fields.qty, readQty);
  if (qty === undefined) readings.push({ is: 'quantity assumed' });
  if (qty?.hands) readings.push({ is: 'hands', ...qty.hands });
  const { left: miterLeftRad = 0, right: miterRightRad = 0 } = readMiters(reader, headings);
  const miterRad = Math.max(miterLeftRad, miterRightRad);
  if (miterRad > 0) readings.push({ is: 'miter', rad: miterRad });
  for (const [field, name] of [
    ['section', 'Section'],
    ['grade', 'Grade'],
  ] as const) {
    if (!reader.isFilled(fields[field]))
      reader.problem(fields[field], {
        about: fields[field]?.heading ?? name,
        argument: fields[field]?.heading ?? name,
        problem: fields[field]
          ? 'the cell is blank. Fill it in.'
          : `no column says it. Call the column ${name}.`,
      });
  }
  const holes: HoleGroup[] = [];
  const context = { shop, section: read?.section };
  for (const [index, columns] of groups.entries()) {
    const group = readHoleGroup(reader, columns, index, context, readings);
    if (group) holes.push(group);
  }
  const miterUnread = [fields.miter, fields.miterLeft, fields.miterRight].some((column) =>
    reader.isUnclear(column),
  );
  const mitered: PartEnd[] = [];
  if (miterLeftRad > 0) mitered.push('left');
  if (miterRightRad > 0) mitered.push('right');
  const making = readMaking(
    reader,
    headings,
    { section: read?.section, ends: miterUnread ? undefined : mitered },
    readings,
  );
  const other = readOtherWork(reader, headings, read?.section, readings);
  const press = reader.cell(fields.press);
  if (
    read?.lengthMm !== undefined &&
    reader.isFilled(fields.length) &&
    Math.abs(read.lengthMm - (lengthMm ?? 0)) > 0.5
  ) {
    const unit = shop.unit;
    const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
    const about = fields.length?.heading ?? 'Length';
    const problem = `the section says ${size(read.lengthMm)}, this cell ${size(lengthMm ?? 0)}. Make them agree.`;
    reader.contradiction(fields.length, { about, argument: about, problem });
  }
  const unclear = reader.problems.length > 0 ? unclearCells(reader, headings) : [];
  const job: RowJob = {
    qty: qty?.qty ?? 1,
    groups: holes,
    miterLeftRad,
    miterRightRad,
    miterRad,
    ...(unclear.length > 0 ? { unclear } : {}),
    problems: reader.problems,
    readings: unclear.length > 0 ? readings.filter((each) => !readsUnclear({ unclear }, each)) : readings,
  };
  if (qty?.hands) job.hands = qty.hands;
  if (!other.bends && saysBent(reader.cell(fields.section))) job.bendMissing = true;
  if (read) job.section = read.section;
  if (grade) job.grade = grade;
  if (lengthMm !== undefined) job.lengthMm = lengthMm;
  if (!isBlank(press)) job.press = plainText(String(press));
  if (isBathed) job.galvanized = true;
  Object.assign(job, other, making, reader.typed(fields, lengthFields));
  return Object.assign(job, notRead(cells, headings, job, shop));
}
