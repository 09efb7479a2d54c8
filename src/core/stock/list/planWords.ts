import { formatLength } from '../../quantity/formatLength.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { StockPlan } from '../stockPlan.js';
import { listWords } from '../../say/listWords.js';
import { proofWords, miterCountWords } from '../../say/stockWords.js';
import type { ListPlan, UnplannedJob } from './jobPlan.js';
import { commonLengthsMm } from './commonLengths.js';
import type { JobPart, LeftOut, StockJob } from './stockJob.js';

/*
 * What a plan of a list says in words: how good it is, what it took, what is not in it.
 */

/** How good a plan is: `Proven: no plan buys less.` */
export function statusWords(plan: StockPlan): string {
  if (plan.shortages.some(({ why }) => why !== 'none found'))
    return 'Short: not all pieces can be cut from this stock.';
  if (plan.shortages.length > 0) return 'Short: no plan was found that cuts all pieces from this stock.';
  const words = proofWords(plan);
  const before = plan.isStopped ? 'Stopped: ' : plan.by === 'steps only' ? 'Without the solver: ' : '';
  const said = plan.proof === undefined ? before + words : words;
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

/** The plans of all jobs in one sentence, and the sections whose kerf had to be guessed in another. */
export function totalStatusWords({ planned }: Pick<ListPlan, 'planned'>): string {
  const proven = planned.filter(({ plan }) => plan.proof !== undefined && plan.shortages.length === 0).length;
  const isAll = planned.length > 0 && proven === planned.length;
  const open = planned.filter(({ job }) => isKerfOpen(job)).map(({ job }) => job.section.designation);
  const words = isAll ? 'Proven: no plan buys less.' : `Proven for ${proven} of ${planned.length} sections.`;
  return open.length === 0
    ? words
    : `${words} What a cut takes is not known: ${listWords([...new Set(open)])}.`;
}

/** What a cut takes and where that comes from, and how miters are counted; in sentences. */
export function kerfWords(job: Pick<StockJob, 'kerf' | 'parts'>, unit: LengthUnit): string {
  const isMitered = job.parts.some((part) => part.leanLeftRad !== 0 || part.leanRightRad !== 0);
  const words = cutWords(job, unit);
  return isMitered && job.kerf.mm > 0 ? `${words} ${miterCountWords}` : words;
}

function cutWords({ kerf }: Pick<StockJob, 'kerf'>, unit: LengthUnit): string {
  const size = `${formatLength(kerf.mm, unit)} ${unit}`;
  switch (kerf.from) {
    case 'setting':
      return `Each cut takes ${size}, as Cut kerf says.`;
    case 'slug of the press':
      return `Each cut takes ${size}, the slug of ${kerf.press ?? ''}.`;
    case 'single blade':
      return 'A single-blade shear loses no steel at a cut.';
    case 'slug not known':
      return `What a cut takes on ${kerf.press ?? ''} is not known, so ${size} is used. Fill in Angle shear slug or Cut kerf.`;
    case 'saw not known':
      return `It is sawn, and what the saw takes is not known, so ${size} is used. Fill in Cut kerf.`;
  }
}

/** What is counted where a setting of cutting bars is blank; a sentence for each. */
export function blankLossWords({ losses }: Pick<ListPlan, 'losses'>): string[] {
  const { trimMm, gripMm, keepMm } = losses;
  return [
    ...(trimMm === undefined ? ['End trim is blank: the front end of a bar is used as it comes.'] : []),
    ...(gripMm === undefined ? ['Grip is blank: a bar is cut to its very end.'] : []),
    ...(keepMm === undefined ? ['Shortest drop kept is blank: no drop is kept, all is scrap.'] : []),
  ];
}

/** Why a part is not nested with others; a clause. */
export function notNestedWords(why: NonNullable<JobPart['notNested']>): string {
  switch (why) {
    case 'Long side':
      return 'Long side is blank, so the miters share no cut';
    case 'Miter leg':
      return 'Miter leg is blank, so the miters share no cut';
    case 'how it lies':
      return 'the section may lie in two ways, so the miters share no cut';
    case 'both legs':
      return 'both legs are mitered, so the miters share no cut';
    case 'another width':
      return 'most pieces are mitered in another leg, so the miters share no cut';
  }
}

const leftOutAsAsked = {
  fails: 'Rows that fail are left out, as asked.',
  'off press': 'Off press rows are left out, as asked.',
  hidden: 'Hidden rows are left out, as asked.',
};

/** Why a row is not planned; a sentence. */
export function leftOutWords(why: LeftOut): string {
  switch (why.is) {
    case 'plate':
      return 'Plates are cut in two directions and are not planned. If yours are cut from flat bar, set "Bar stock to width" to "from bar".';
    case 'no length':
      return 'The row has no Length.';
    case 'bought':
      return 'The part is bought, as Cut by says.';
    case 'asked':
      return leftOutAsAsked[why.kind];
    case 'not read':
      return why.sentence;
  }
}

/** Why a job is not planned, and what would do; sentences. */
export function unplannedWords({ job, why }: UnplannedJob, unit: LengthUnit): string {
  if (why === 'unreadable stock')
    return `${job.unreadable.join(' ')} Nothing is planned from this section until then.`;
  const lengths = commonLengthsMm[unit]
    .map((mm) => (unit === 'in' ? `${mm / 304.8} ft` : `${mm} mm`))
    .join(' and ');
  return `The Stock table has no length for it. Add a row, or use common lengths (${lengths}, invented).`;
}

/** That only some lengths of a job have a price; undefined otherwise. */
export function partlyPricedWords({ stocks }: StockJob): string | undefined {
  const priced = stocks.filter(({ price }) => price !== undefined).length;
  if (priced === 0 || priced === stocks.length) return undefined;
  return 'Only some of its lengths have a price, so the least length is bought, not the least cost.';
}

/** The section as it is bought: a plate of the list that is cut from flat bar is a flat bar. */
export function boughtName({ section }: Pick<StockJob, 'section'>): string {
  return section.kind === 'flat' ? section.designation.replace(/^PL/, 'FB') : section.designation;
}

/** `over`, `round`: how a piece is turned before it is cut. */
export function turnedWords(piece: { isTurnedOver: boolean; isTurnedRound: boolean }): string {
  return [piece.isTurnedOver ? 'over' : '', piece.isTurnedRound ? 'round' : ''].filter(Boolean).join(', ');
}

/** On which edge the long points of a piece are as it lies in the bar; nothing where it is square or not nested. */
export function longPointWords(piece: { leanLeftRad: number; leanRightRad: number }): string {
  const side = (isFence: boolean) => (isFence ? 'at the fence' : 'at the far edge');
  const { leanLeftRad, leanRightRad } = piece;
  const ends = [
    ...(leanLeftRad === 0 ? [] : [`left ${side(leanLeftRad > 0)}`]),
    ...(leanRightRad === 0 ? [] : [`right ${side(leanRightRad < 0)}`]),
  ];
  return ends.length === 0 ? '' : `long point ${ends.join(', ')}`;
}

/** What is cut off and held of each bar, where it is given. */
export function lossWords({ losses }: Pick<ListPlan, 'losses'>, unit: LengthUnit): string[] {
  const of = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const { trimMm = 0, gripMm = 0, keepMm } = losses;
  return [
    ...(trimMm > 0
      ? [`End trim: ${of(trimMm)} is cut off the front end of each bar first, its kerf with it.`]
      : []),
    ...(gripMm > 0 ? [`Grip: nothing is cut from the last ${of(gripMm)} of a bar.`] : []),
    ...(keepMm === undefined ? [] : [`Drops of ${of(keepMm)} or more are kept, the grip with them.`]),
  ];
}

/** Whether what a cut takes had to be guessed. */
export function isKerfOpen({ kerf }: Pick<StockJob, 'kerf'>): boolean {
  return kerf.from === 'slug not known' || kerf.from === 'saw not known';
}
