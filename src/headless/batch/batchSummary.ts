import type { FileOutcome, VerdictChange } from './fileOutcome.js';
import { listed, mostListed } from '../command/target.js';

/** What a batch came to. */
interface BatchSummary {
  files: number;
  done: number;
  doneBefore: number;
  refused: number;
  /** Files with cells that may be stale. */
  stale: number;
  verdicts: {
    /** How many went from which word to which, most frequent first. */
    changed: { was: string; now: string; count: number }[];
    /** Files in which a verdict changed. */
    files: number;
    /** Verdicts of cells that held none before. */
    first: number;
  };
}

/** Counts outcomes as they come. */
export class BatchCount {
  private readonly counts = { done: 0, 'done before': 0, refused: 0 };
  private stale = 0;
  private first = 0;
  private filesWithChanges = 0;
  private readonly moves = new Map<string, { was: string; now: string; count: number }>();
  /** The first changes, with their files: of thousands of files there may be more than memory holds. */
  readonly changes: (VerdictChange & { in: string })[] = [];
  changed = 0;

  add(outcome: FileOutcome): void {
    this.counts[outcome.state]++;
    if (outcome.state === 'refused') return;
    const { verdicts, stale } = outcome;
    if (stale > 0) this.stale++;
    this.first += verdicts.first;
    if (verdicts.changed.length > 0) this.filesWithChanges++;
    for (const change of verdicts.changed) {
      const { was, now } = change;
      const key = JSON.stringify([was, now]);
      const move = this.moves.get(key) ?? { was, now, count: 0 };
      move.count++;
      this.moves.set(key, move);
      this.changed++;
      if (this.changes.length < mostListed) this.changes.push({ in: outcome.in, ...change });
    }
  }

  summary(): BatchSummary {
    const { done, refused, 'done before': doneBefore } = this.counts;
    return {
      files: done + doneBefore + refused,
      done,
      doneBefore,
      refused,
      stale: this.stale,
      verdicts: {
        changed: [...this.moves.values()].sort((a, b) => b.count - a.count),
        files: this.filesWithChanges,
        first: this.first,
      },
    };
  }

  /** The worst of its files: 1 where one was refused, else 3 where one has cells that may be stale. */
  exitCode(): number {
    if (this.counts.refused > 0) return 1;
    return this.stale > 0 ? 3 : 0;
  }
}

const counted = (count: number, one: string, many = `${one}s`) => `${count} ${count === 1 ? one : many}`;

/** One line on a file. */
export function fileLine(outcome: FileOutcome): string {
  if (outcome.state === 'refused') return `${outcome.in}  refused: ${outcome.error}`;
  const { verdicts, stale } = outcome;
  const words =
    outcome.state === 'done before'
      ? ['done before']
      : [
          `${counted(outcome.calculated, 'formula')} calculated`,
          counted(outcome.changed, 'value') + ' changed',
        ];
  if (verdicts.changed.length > 0) words.push(`${counted(verdicts.changed.length, 'verdict')} changed`);
  if (stale > 0)
    words.push(
      outcome.state === 'done' ? `${counted(stale, 'cell')} may be stale` : 'some cells may be stale',
    );
  return `${outcome.in}  ${words.join(', ')}`;
}

/** The end of a batch in lines. */
export function summaryLines(count: BatchCount, out: string): string[] {
  const { files, done, doneBefore, refused, stale, verdicts } = count.summary();
  const parts = [
    `${done} done`,
    ...(doneBefore > 0 ? [`${doneBefore} done before`] : []),
    ...(refused > 0 ? [`${refused} refused`] : []),
  ];
  const { changed } = count;
  return [
    `${counted(files, 'file')}: ${parts.join(', ')}.`,
    ...(stale > 0
      ? [
          `${counted(stale, 'file')} with cells that may be stale: let the spreadsheet program calculate them.`,
        ]
      : []),
    ...(verdicts.first > 0 ? [`${counted(verdicts.first, 'cell')} had no verdict before.`] : []),
    changed === 0
      ? 'No verdict changed.'
      : `${counted(changed, 'verdict')} changed in ${counted(verdicts.files, 'file')}:`,
    ...verdicts.changed.map((move) => `  ${move.count}  ${move.was} → ${move.now}`),
    ...listed(
      changed === 1 ? 'row' : 'rows',
      count.changes,
      (change) => `${change.in}  ${change.cell}  ${change.mark}  ${change.was} → ${change.now}`,
      ' (--json lists all)',
      changed,
    ),
    ...(done + doneBefore > 0 ? [`Results in ${out}.`] : []),
  ];
}
