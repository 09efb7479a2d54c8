import { type Verdict, type VerdictKind, verdictKind } from '../../../core/check/verdict.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import { checkedPart } from '../../../core/row/checkRow.js';
import { type Headings, readHeadings } from '../../../core/row/headings/readHeadings.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { type RowWorkResult, workOnChecked } from '../../../core/work/workOnRow.js';
import type { LongWork } from '../../../workbook/longWork.js';
import { inSlices } from '../../shared/inSlices.js';
import { type ColumnMatch, headingsOf } from './columnMatch.js';
import type { ListRead } from './listRead.js';
import { type WorkCompared, workCompared } from './workCompared.js';

export interface PressCompared {
  press: string;
  /** Rows that it would run, where the holes that are not placed may lie where they will. */
  runs: readonly number[];
  /** Rows of which that is not known. */
  unknown: number;
  /** What most of the others would be. */
  mostly: Verdict | undefined;
  /** Of the rows that it would run. */
  work: WorkCompared;
}

/** Which press can run some rows of a list, and how long it takes; undefined when it was stopped. */
export async function comparePresses(
  { rows }: ListRead,
  matches: readonly ColumnMatch[],
  of: readonly number[],
  shop: Shop,
  { signal }: Pick<LongWork, 'signal'>,
): Promise<PressCompared[] | undefined> {
  const own = matches.find(({ field }) => field === 'Press');
  const at = own?.at ?? matches.length;
  const headings = readHeadings(own ? headingsOf(matches) : [...headingsOf(matches), 'Press']);
  const compared: PressCompared[] = [];
  for (const { name: press } of shop.presses) {
    const asked = of.map((row) => {
      const cells = [...(rows[row] ?? [])];
      while (cells.length < at) cells.push(null);
      cells[at] = press;
      return cells;
    });
    const tried = await inSlices(asked, (cells) => tryRow(cells, headings, shop), signal ? { signal } : {});
    if (!tried) return undefined;
    const others = tried.flatMap(({ word, kind }) =>
      word !== undefined && !isRun(kind) && kind !== 'elsewhere' ? word : [],
    );
    compared.push({
      press,
      runs: of.filter((_, each) => isRun(tried[each]?.kind)),
      unknown: tried.filter(({ kind }) => kind === 'unknown').length,
      mostly: mostOf(others),
      work: workCompared(tried.flatMap(({ work }) => work ?? [])),
    });
  }
  return compared;
}

interface TriedRow {
  word?: Verdict;
  kind?: VerdictKind;
  /** Of a row that runs. */
  work?: RowWorkResult;
}

function tryRow(cells: readonly CellValue[], headings: Headings, shop: Shop): TriedRow {
  const checked = checkedPart(cells, headings, shop);
  if (checked.result.blank) return {};
  const { verdict: word } = checked.result;
  const kind = verdictKind(word);
  return { word, kind, ...(isRun(kind) ? { work: workOnChecked(checked, shop) } : {}) };
}

/** Of what is OK so far only distances of the drawing are open: the press has nothing against it. */
function isRun(kind: VerdictKind | undefined): boolean {
  return kind === 'passes' || kind === 'open';
}

function mostOf(words: readonly Verdict[]): Verdict | undefined {
  const counts = new Map<Verdict, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0];
}
