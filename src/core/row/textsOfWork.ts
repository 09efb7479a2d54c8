import { atMost } from '../atMost.js';
import type { NotHeld } from '../check/rowFact.js';
import { looksLikeSize } from '../notation/looksLikeSize.js';
import { type CellValue, meant, plainText } from '../quantity/cellValue.js';
import { galvanizedFromMm } from '../rule/jobSpecRuling.js';
import type { Headings } from './headings/readHeadings.js';
import { pointsToNote } from './headings/rowReader.js';
import { workText } from './headings/workText.js';
import type { WorkKind } from './headings/workWords.js';
import type { RowJob, TextOfWork } from './job/rowJob.js';
import type { Shop } from '../shop/readShop.js';
import { namesOtherGrade } from './gradeInText.js';
import { isOwnHeading } from './rowItem.js';
import { givesOtherCount, givesOtherSize, isAboutPlace } from './sizesInText.js';

/** `ST1R/L`, `ST1 OPP`: a mark of both hands, or of the other. */
const hasHand = /[\d)][- ]?(?:r ?[/&+] ?l|l ?[/&+] ?r|opp)\.?$/i;
const isOfSteel = /(?<!\p{L})(?:alloy|temper)(?!\p{L})/iu;

/**
 * Texts of a row that no check reads, where they name work, a size, a count or a grade that its cells do not give, or
 * point to a note: a remark, what stands behind a mark.
 */
export function textsOfWork(
  cells: readonly CellValue[],
  { fields, unread }: Headings,
  { given, job, shop }: { given: () => readonly number[]; job: RowJob; shop: Shop },
): (TextOfWork & { at: number })[] {
  const names = [fields.mark, fields.drawing, fields.revision].flatMap((column) => column ?? []);
  return [...names, ...unread].flatMap(({ at, heading }) => {
    const read = meant(cells[at]);
    const cell = isOfSteel.test(heading) && /^\d+l?$/i.test(String(read)) ? `type ${read}` : read;
    if (typeof cell !== 'string' || isOwnHeading(heading)) return [];
    const text = plainText(cell);
    const isName = names.some((column) => column.at === at);
    const other = { at, heading, text, kinds: ['other'] as const, isDetailed: true, isName: false };
    if (isName && pointsToNote(text)) return [other];
    // A mark of one word is a name, whatever it is made of: `HOLE1`.
    if (isName && !/\s/.test(text))
      return hasHand.test(text) ? [{ ...other, kinds: ['hand'], isDetailed: false }] : [];
    const isPart = !isName || at === fields.mark?.at;
    const remark = isName ? text.replace(/^\S+/, '') : text;
    const isCompared = isPart && !isAboutPlace.test(heading);
    if (isCompared && (namesOtherGrade(remark, job.grade, shop) || givesOtherCount(remark, job.qty)))
      return [other];
    const told = workText(text) ?? workText(text.replace(/^[^\s\d]*\d\S*\s+/, ''));
    if (told) return [{ at, heading, text, ...told }];
    const isOfSizes = unread.some((column) => column.at === at && column.names === 'size');
    if (!isCompared || isOfSizes) return [];
    const isOther = looksLikeSize(remark, shop.unit) || givesOtherSize(remark, given, shop.unit);
    return isOther ? [other] : [];
  });
}

/** Work of which a word says all there is. */
const saysAll: ReadonlySet<WorkKind> = new Set(['finish', 'hand']);

/** The texts that say more of the work than the cells that are read: work that these do not have, or its size or place. */
export function workInTexts(job: RowJob): NotHeld[] {
  return (job.texts ?? [])
    .filter(({ kinds, isDetailed }) => {
      const others = kinds.filter((kind) => !saysAll.has(kind) || !isGiven(job, kind));
      return isDetailed
        ? others.length > 0 || kinds.length === 0
        : others.some((kind) => !isGiven(job, kind));
    })
    .map(({ heading, text }) => ({ why: 'work in a text', heading, text }));
}

function isGiven(job: RowJob, kind: WorkKind): boolean {
  const { groups } = job;
  switch (kind) {
    case 'holes':
      return groups.length > 0;
    case 'drill':
      return groups.length > 0 && groups.every(({ by }) => by === 'drill');
    case 'slots':
      return groups.some(({ hole }) => hole.shape === 'slot');
    case 'finishing':
      return groups.some(({ finishing }) => finishing !== undefined);
    case 'miter':
      return job.miterRad > 0;
    case 'notch':
      return job.notches !== undefined;
    case 'clip':
      return job.clips !== undefined;
    case 'bend':
      return job.bends !== undefined || job.bendMissing === true;
    case 'cut':
      return job.cutBy !== undefined;
    case 'finish':
      return job.galvanized === true || !mindsZinc(job);
    case 'stagger':
      return groups.some(({ holesAt }) => holesAt !== undefined);
    case 'hand':
      return job.hands !== undefined;
    case 'other':
    case 'shape':
    case 'fit':
    case 'state':
      return false;
  }
}

/** Whether a bath of zinc makes a difference to what is checked: to bends, and to holes in thick steel. */
function mindsZinc({ section, groups, bends, bendMissing }: RowJob): boolean {
  if (bends !== undefined || bendMissing) return true;
  const isThin = section && 'thicknessMm' in section && !atMost(galvanizedFromMm, section.thicknessMm);
  return groups.length > 0 && !isThin;
}
