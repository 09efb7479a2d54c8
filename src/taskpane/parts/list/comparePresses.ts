import { type Verdict, type VerdictKind, verdictKind } from '../../../core/check/verdict.js';
import type { Shop } from '../../../core/shop/readShop.js';
import type { LongWork } from '../../../workbook/longWork.js';
import { checkRows } from './checkRows.js';
import { type ColumnMatch, headingsOf } from './columnMatch.js';
import type { ListRead } from './listRead.js';

export interface PressCompared {
  press: string;
  /** Rows that it would run, where the holes that are not placed may lie where they will. */
  runs: readonly number[];
  /** Rows of which that is not known. */
  unknown: number;
  /** What most of the others would be. */
  mostly: Verdict | undefined;
}

/** What each press would make of some rows of a list; undefined when it was stopped. */
export async function comparePresses(
  { rows }: ListRead,
  matches: readonly ColumnMatch[],
  of: readonly number[],
  shop: Shop,
  work: LongWork,
): Promise<PressCompared[] | undefined> {
  const own = matches.find(({ field }) => field === 'Press');
  const at = own?.at ?? matches.length;
  const headings = own ? headingsOf(matches) : [...headingsOf(matches), 'Press'];
  const compared: PressCompared[] = [];
  for (const { name: press } of shop.presses) {
    const asked = of.map((row) => {
      const cells = [...(rows[row] ?? [])];
      while (cells.length < at) cells.push(null);
      cells[at] = press;
      return cells;
    });
    const results = await checkRows(headings, asked, shop, work.signal ? { signal: work.signal } : {});
    if (!results) return undefined;
    const words = results.map((result) => (result.blank ? undefined : result.verdict));
    const kinds = words.map((word) => word && verdictKind(word));
    const others = words.filter((word, each) => {
      const kind = kinds[each];
      return word !== undefined && !isRun(kind) && kind !== 'elsewhere';
    });
    compared.push({
      press,
      runs: of.filter((_, each) => isRun(kinds[each])),
      unknown: kinds.filter((kind) => kind === 'unknown').length,
      mostly: mostOf(others.flatMap((word) => word ?? [])),
    });
  }
  return compared;
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
