import type { Reading } from '../job/reading.js';
import { type BoltSize, readBolt } from '../../rule/boltSize.js';
import { setting } from '../../shop/setting.js';
import type { Shop } from '../../shop/readShop.js';
import type { AnySection } from '../../section/section.js';
import { type Hole } from '../../tooling/hole.js';
import type { GroupField } from '../headings/heading.js';
import type { Column } from '../headings/readHeadings.js';
import { saysNoBolt } from '../headings/nothingCells.js';
import type { HoleGroup } from '../job/rowJob.js';
import type { RowReader } from '../headings/rowReader.js';
import { boltHoleOf, isPunchable, tabledHole } from './boltHoleOf.js';
import { refuseHoleless } from './holelessGroup.js';
import { saysHole } from './typedSo.js';
import { readDistances } from './readDistances.js';
import { readEdgeKind } from './readEdgeKind.js';
import { type FinishedHole, readFinishedHole } from './readFinishedHole.js';
import { readHoleCount } from './readHoleCount.js';
import { readHolesBy } from './readProcess.js';
import { readSlot, type SlotWord } from './readSlot.js';

type Columns = Partial<Record<GroupField, Column>>;

const lengthFields = ['hole', 'bolt', 'edge', 'end', 'pitch', 'gage'] as const;

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
  readings: Reading[],
): HoleGroup | undefined {
  const title = index === 0 ? 'Hole' : `Hole ${index + 1}`;
  const noBolt = saysNoBolt(reader.cell(columns.bolt));
  const asksBolt = reader.isFilled(columns.bolt) && !noBolt;
  if (!asksBolt && ![columns.hole, columns.holes].some((column) => reader.isFilled(column))) {
    refuseHoleless(reader, columns, title);
    return undefined;
  }
  const bolt = asksBolt ? readBoltOf(reader, columns, shop) : undefined;
  const slot = reader.read(columns.slot, readSlot);
  const text = reader.read(columns.hole, (value, argument) =>
    readFinishedHole(value, argument, shop.unit, slot !== undefined),
  );
  const given = reader.read(columns.holes, readHoleCount);
  const fromBolt = bolt !== undefined && !reader.isFilled(columns.hole);
  const hole = fromBolt ? boltHoleOf(reader, bolt, columns.bolt, shop) : text?.hole;
  if (bolt && !fromBolt && isPunchable(section)) tabledHole(reader, bolt, columns.bolt, shop, 'standard');
  const holes = given ?? (text?.count === undefined ? undefined : { count: text.count });
  const countUnread = !holes && (reader.isFilled(columns.holes) || (reader.isFilled(columns.hole) && !text));
  const placed = readDistances(reader, columns, { section, hole, holes, countUnread });
  const made = readMaking(reader, columns, hole, slot);
  refuseCounts(reader, columns, title, given?.count, text?.count, asksBolt);
  if (!hole) return undefined;
  const count = text?.count ?? given?.count ?? placed.holesAt?.length;
  refuseBetween(reader, columns, { section, placed, count, eachEnd: given?.eachEnd === true });
  readings.push({
    is: 'holes',
    group: index,
    hole,
    count: count ?? 1,
    counted: count !== undefined,
    ...(text && saysHole(reader.cell(columns.hole), hole, count ?? 1, shop.unit) ? { typedSo: true } : {}),
    ...(text?.finishing?.includes('countersink') ? { countersunk: true as const } : {}),
    ...(text || !bolt ? {} : { fitOfBolt: { fit: setting(shop, 'holeFit'), bolt: bolt.name } }),
  });
  if (noBolt) readings.push({ is: 'no bolt', group: index });
  return {
    number: index,
    title,
    hole,
    count: count ?? 1,
    ...said(bolt, noBolt, text),
    ...(given?.eachEnd ? { eachEnd: true } : {}),
    ...placed,
    ...made,
    ...reader.typed(columns, lengthFields),
  };
}

function readBoltOf(reader: RowReader, columns: Columns, shop: Shop): BoltSize | undefined {
  return reader.read(columns.bolt, (value, argument) => readBolt(value, argument, shop.unit));
}

function said(
  bolt: BoltSize | undefined,
  noBolt: boolean,
  text: FinishedHole | undefined,
): Partial<HoleGroup> {
  return {
    ...(bolt ? { bolt } : {}),
    ...(noBolt ? { noBolt } : {}),
    ...(text?.finishing ? { finishing: text.finishing } : {}),
  };
}

/** How the edges and the holes are made, and which way the holes are long. */
function readMaking(
  reader: RowReader,
  columns: Columns,
  hole: Hole | undefined,
  slot: SlotWord | undefined,
): Partial<HoleGroup> {
  const edgeKind = reader.read(columns.edgeKind, readEdgeKind);
  const endKind = reader.read(columns.endKind, readEdgeKind);
  const by = reader.read(columns.holesBy, readHolesBy);
  if (columns.slot && slot && hole && hole.shape !== 'slot' && hole.shape !== 'rectangle') {
    const { heading } = columns.slot;
    const problem = `a ${hole.shape} hole is not longer one way. Clear the cell, or give the hole both sizes.`;
    reader.problem(columns.slot, { about: heading, argument: heading, problem });
  }
  return {
    ...(edgeKind ? { edgeKind } : {}),
    ...(endKind ? { endKind } : {}),
    ...(by ? { by } : {}),
    ...(slot && slot !== 'slotted' ? { slot } : {}),
  };
}

/** Holes that are counted without a size, or counted twice and differently. */
function refuseCounts(
  reader: RowReader,
  columns: Columns,
  title: string,
  given: number | undefined,
  inText: number | undefined,
  asksBolt: boolean,
): void {
  if (given === undefined) return;
  if (!reader.isFilled(columns.hole) && !asksBolt) {
    const problem = `${given} holes are asked for but the hole's size is blank. Fill it in.`;
    const about = columns.hole?.heading ?? title;
    reader.problem(columns.hole ?? columns.holes, { about, argument: about, problem });
  } else if (inText !== undefined && inText !== given) {
    const [hole = title, about = title] = [columns.hole?.heading, columns.holes?.heading];
    const problem = `it says ${given}, ${hole} says ${inText}. Make them agree.`;
    reader.contradiction(columns.holes, { about, argument: about, problem });
  }
}

interface Between {
  section: AnySection | undefined;
  placed: Partial<HoleGroup>;
  count: number | undefined;
  eachEnd: boolean;
}

/** A pitch lies between holes along the part, a gage of a plate or web between two lines: neither may lie between none. */
function refuseBetween(
  reader: RowReader,
  columns: Columns,
  { section, placed, count, eachEnd }: Between,
): void {
  if (placed.holesAt?.length === count && (count ?? 0) > 1) return;
  if (count === undefined && reader.isUnclear(columns.holes)) return;
  const { pitchMm, gageMm, leg } = placed;
  const onPlate = section?.kind === 'flat' || (section?.kind === 'channel' && leg?.toLowerCase() === 'web');
  const together = eachEnd ? (count ?? 2) / 2 : (count ?? 1);
  const inLines = onPlate && gageMm !== undefined && together > 1;
  const gage = columns.gage ?? columns.p2;
  const column =
    pitchMm !== undefined && together <= (inLines ? 2 : 1)
      ? columns.pitch
      : onPlate && gageMm !== undefined && together <= 1
        ? gage
        : undefined;
  if (!column) return;
  const problem = inLines
    ? `it lies between holes along the part, and ${gage?.heading ?? 'Gage'} sets the 2 ${eachEnd ? 'of each end' : 'holes'} side by side across it. Clear one of them.`
    : noneBetween(columns, count, eachEnd);
  reader.problem(column, { about: column.heading, argument: column.heading, problem });
}

function noneBetween(columns: Columns, count: number | undefined, eachEnd: boolean): string {
  const holes = columns.holes?.heading ?? 'Holes';
  if (count !== undefined)
    return `it lies between holes, and there is one${eachEnd ? ' at each end' : ''}. Clear it, or correct ${holes}.`;
  return columns.holes
    ? `it lies between holes, and ${holes} is blank. Fill in how many there are.`
    : 'it lies between holes, and no column says how many there are. Add a column Holes.';
}
