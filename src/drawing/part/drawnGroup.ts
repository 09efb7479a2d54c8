import type { PlacedHole } from '../../core/part/part.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { LaidGroup } from '../../core/row/layout/layGroup.js';
import { prepareRow } from '../../core/row/prepareRow.js';
import type { PlacedHoles } from '../../core/row/job/readyRow.js';
import type { HoleGroup, RowJob } from '../../core/row/job/rowJob.js';
import { cellNames } from '../../core/say/cellWords.js';
import { readingWords } from '../../core/say/readingWords.js';
import type { Section } from '../../core/section/section.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { DrawnFace } from './drawnFace.js';
import { choiceWords, isReadHole } from './readWork.js';

/** A hole group as it is drawn. */
export interface DrawnGroup {
  group: HoleGroup;
  holes: readonly PlacedHole[];
  isRead: (hole: PlacedHole) => boolean;
  /** How the row is read where it does not give their places; empty where it does. */
  read: string[];
  /** The cells that would settle which of several ways it is. */
  choices: string[];
  /** How they are made where they are not punched to size: `drilled`; empty where they are. */
  made: string;
}

/** The hole groups of the face that is drawn. */
export function drawnGroups(
  { groups, choices, face }: DrawnFace,
  job: RowJob,
  section: Section,
  { unit, shop }: { unit: LengthUnit; shop?: Shop | undefined },
): DrawnGroup[] {
  const places = placesOf(job, section, shop);
  const isSolid = section.kind === 'round' || section.kind === 'square';
  return groups.map((laid) => ({
    group: laid.group,
    holes: laid.holes,
    isRead: isReadHole(choices),
    read: readWords(laid, unit),
    choices: choiceWords(choices.filter(({ group }) => group === laid.index)),
    made: isSolid ? 'drilled' : madeText(places[laid.index], face.id),
  }));
}

function placesOf(job: RowJob, section: Section, shop: Shop | undefined): readonly PlacedHoles[] {
  const { grade } = job;
  return grade && shop ? prepareRow({ ...job, section, grade }, shop, false).row.places : [];
}

function madeText(placed: PlacedHoles | undefined, face: PlacedHole['face']): string {
  const process = placed?.faces.find((each) => each.face.id === face)?.process;
  if (process?.why?.by === 'row' && process.why.process === 'burn') return 'burned';
  return process?.made === 'drill'
    ? 'drilled'
    : process?.made === 'ream'
      ? 'punched 2 mm under and reamed'
      : '';
}

function readWords({ readings, holes, missing, index }: LaidGroup, unit: LengthUnit): string[] {
  const mm = holes[0]?.center.y ?? 0;
  const read = readings.map((reading) => readingWords({ is: 'places', group: 0, reading, mm }, unit));
  const blank = holes.some(({ free }) => free) ? missing.map((cell) => ({ cell, group: index })) : [];
  return [...read, ...(blank.length > 0 ? [`${cellNames(blank)} would place them`] : [])];
}
