import { listWords } from '../../core/say/listWords.js';
import { gaugePushWords } from '../../core/say/gaugePushWords.js';
import { formatNumber } from '../../core/quantity/formatLength.js';
import { radianPerDegree } from '../../core/quantity/units.js';
import type { CutPiece } from '../../core/stock/list/jobPlan.js';
import { turnedWords } from '../../core/stock/list/planWords.js';
import type { FactTable } from '../drawing.js';
import type { BarInput } from './barInput.js';
import { barLength } from '../../core/say/barLength.js';
import type { BarRun } from './barRuns.js';

/** The list of a bar: a line for each run of one part in the order of the cuts, the last one for what is left. */
export function barFacts(
  { bar, unit, everyCut = false }: Pick<BarInput, 'bar' | 'unit' | 'everyCut'>,
  runs: readonly BarRun[],
): FactTable {
  // Square ends need no column.
  const isMitered = bar.pieces.some(({ part }) => part.miterLeftRad !== 0 || part.miterRightRad !== 0);
  const ends = (text: string) => (isMitered ? [text] : []);
  const headings = ['Letter', 'Pieces', 'Mark', 'Length', ...ends('Ends'), 'Running length', 'Back gauge'];
  const rows = runs.map(({ letter, name, lengthMm, pieces }) => [
    letter,
    String(pieces.length),
    name,
    barLength(lengthMm, unit),
    ...ends(endWords(pieces[0])),
    runningWords(
      pieces.map(({ runMm }) => barLength(runMm, unit)),
      everyCut,
    ),
    [...new Set(pieces.map(({ push }) => gaugePushWords(push, unit)))].join('; '),
  ]);
  const rest =
    bar.restMm > 0 ? [['', '', restName(bar.isKept), barLength(bar.restMm, unit), ...ends(''), '', '']] : [];
  return { headings, rows: [...rows, ...rest] };
}

/** The ends as the piece lies in the bar, and how it is turned for that. */
function endWords(piece: CutPiece): string {
  const { miterLeftRad: left, miterRightRad: right } = piece.part;
  if (left === 0 && right === 0) return 'square';
  const degrees = (rad: number) =>
    rad === 0 ? 'square' : `${formatNumber(Math.abs(rad) / radianPerDegree, 1)}°`;
  const [first, last] = piece.isTurnedRound ? [right, left] : [left, right];
  const turned = turnedWords(piece);
  return `${degrees(first)} left, ${degrees(last)} right${turned === '' ? '' : `, turned ${turned}`}`;
}

/** So many cuts of a run are told one by one. */
const few = 4;

/** Where the pieces of a run are cut off, from the front end of the bar. */
function runningWords(cuts: readonly string[], every: boolean): string {
  if (every || cuts.length <= few) return cuts.join(', ');
  return `${cuts.slice(0, 2).join(', ')} … ${cuts.at(-1) ?? ''}`;
}

export function restName(isKept: boolean): string {
  return isKept ? 'drop to keep' : 'scrap';
}

/** One sentence: how many bars, what is cut from each, what is left, and what the drawing does not show. */
export function barSummary(
  { bar, unit }: BarInput,
  runs: readonly BarRun[],
  missing: { cuts: boolean; labels: number },
): string {
  const counts = new Map<string, number>();
  for (const { name, pieces } of runs) counts.set(name, (counts.get(name) ?? 0) + pieces.length);
  const cut = listWords([...counts].map(([mark, pieces]) => `${pieces} × ${mark}`));
  const rest =
    bar.restMm > 0 ? `, with ${barLength(bar.restMm, unit)} ${restName(bar.isKept)} at the end` : '';
  const bars = bar.bars === 1 ? '1 bar' : `${bar.bars} bars`;
  const each = bar.bars === 1 ? '' : 'each ';
  const notShown = [
    ...(missing.cuts ? ['the cuts lie too near each other to draw each of them'] : []),
    ...(missing.labels > 0 ? ['some letters have no room'] : []),
  ];
  const besides = notShown.length === 0 ? '' : `; ${notShown.join(', and ')}: see the list`;
  return `${bars} of ${barLength(bar.stock.lengthMm, unit)}, ${each}cut into ${cut}${rest}${besides}.`;
}
