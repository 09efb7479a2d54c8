import { gapWords } from '../../say/pieceWords.js';
import { mitersInBar } from '../list/cutBars.js';
import type { CutBar, CutPiece, ListPlan, PlannedJob } from '../list/jobPlan.js';
import { longPointWords, notNestedWords, turnedWords } from '../list/planWords.js';
import { markOf, named } from './blocks.js';
import { count, headings, length, miter, size, text } from './cells.js';
import type { SheetCell, SheetRow } from './sheetCell.js';

/** The cuts of a plan in shop order; pieces that follow each other and are cut alike are one row. */
export function cutRows({ planned, unit }: ListPlan): SheetRow[] {
  const head = headings(
    ...['Line', 'Section', 'Grade', `Bar, ${unit}`, 'Bars', 'Pattern', 'Letter', 'Mark', 'Pieces'],
    ...[
      `Length, ${unit}`,
      'Miter left',
      'Miter right',
      'Turn',
      `Back gauge, ${unit}`,
      `Cut at, ${unit}`,
      'Note',
    ],
  );
  const rows = planned.flatMap((job) =>
    job.bars.flatMap((bar) => alike(bar.pieces).map((pieces) => cutRow(job, bar, pieces, unit))),
  );
  return [head, ...rows];
}

type Alike = readonly [CutPiece, ...CutPiece[]];

function alike(pieces: readonly CutPiece[]): Alike[] {
  const runs: [CutPiece, ...CutPiece[]][] = [];
  for (const piece of pieces) {
    const run = runs.at(-1);
    if (run && isAlike(run[0], piece)) run.push(piece);
    else runs.push([piece]);
  }
  return runs;
}

function isAlike(a: CutPiece, b: CutPiece): boolean {
  const told = ({ letter, isTurnedOver, isTurnedRound, push }: CutPiece) =>
    JSON.stringify([letter, isTurnedOver, isTurnedRound, push]);
  return told(a) === told(b);
}

function cutRow(job: PlannedJob, bar: CutBar, pieces: Alike, unit: 'in' | 'mm'): SheetRow {
  const [piece] = pieces;
  const { part, push } = piece;
  const [left, right] = mitersInBar(part, piece.isTurnedRound);
  const notes = [
    longPointWords(piece),
    part.isOtherHand ? 'other hand than drawn' : '',
    part.notNested ? notNestedWords(part.notNested) : '',
    'open' in push ? `Back gauge: ${gapWords(push.open)}` : '',
    'mm' in push && push.reach === 'over' ? 'beyond the back gauge' : '',
  ];
  return [
    ...named('cut', job),
    length(bar.stock.lengthMm, unit),
    count(bar.bars),
    count(bar.pattern),
    text(piece.letter),
    text(markOf(part)),
    count(pieces.length),
    size(part.longMm, unit),
    miter(left),
    miter(right),
    text(turnedWords(piece)),
    'mm' in push ? size(push.mm, unit) : null,
    cutsAt(pieces, unit),
    text(notes.filter(Boolean).join('; ')),
  ];
}

const told = 4;

/** Where the cuts are: `5, 10, 15 … 135`. */
function cutsAt(pieces: Alike, unit: 'in' | 'mm'): SheetCell {
  const [first, ...rest] = pieces.map(({ runMm }) => size(runMm, unit));
  const last = rest.at(-1);
  if (first === undefined || last === undefined) return first ?? null;
  const words = [first, ...rest].map((cell) => String(cell?.value ?? ''));
  if (words.length <= told) return text(words.join(', '));
  return text(`${words.slice(0, told - 1).join(', ')} … ${String(last?.value ?? '')}`);
}
