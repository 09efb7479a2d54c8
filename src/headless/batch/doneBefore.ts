import { readFile, stat } from 'node:fs/promises';
import { cellKey } from '../../sheet/address.js';
import { sameName } from '../../sheet/names.js';
import { openWorkbook, type Workbook } from '../../xlsx/workbook.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import { nodeCodec } from '../files/nodeCodec.js';
import { readWorkbookFile, typedPath } from '../files/readFile.js';
import type { FileJob, VerdictNews } from './fileOutcome.js';
import { type SheetBeforeAfter, verdictNews } from './verdictNews.js';

/** What is known of a result that an earlier run left. */
interface Before {
  verdicts: VerdictNews;
  stale: number;
}

/** When a file came to be what it is: a file moved into place may carry an old date of change, but not this one. */
export async function changedAt(file: string): Promise<number> {
  const { mtimeMs, ctimeMs } = await stat(file);
  return Math.max(mtimeMs, ctimeMs);
}

/** Whether a result is newer than the file it is made from and than the functions and shop that made it. */
export async function isNewer({ source, target }: FileJob, since: number): Promise<boolean> {
  const made = await stat(typedPath(target)).catch(() => undefined);
  if (!made?.isFile() || made.mtimeMs <= since) return false;
  const changed = await changedAt(typedPath(source)).catch(() => undefined);
  return changed !== undefined && made.mtimeMs > changed;
}

/**
 * The result of an earlier run, read whole and held against its file; undefined where it is not whole, or where the file
 * itself asks to be calculated: then the result does not tell whether cells in it may be stale.
 */
export async function workbookBefore({ source, target }: FileJob): Promise<Before | undefined> {
  const was = openWorkbook(await readWorkbookFile(source), nodeCodec);
  if (asksForCalculation(was)) return undefined;
  const now = await opened(target);
  if (!now || now.sheets.some(({ name }, at) => !sameName(name, was.sheets[at]?.name ?? '')))
    return undefined;
  return {
    verdicts: verdictNews(now, (position) => beforeAfter(was, now, position)),
    stale: asksForCalculation(now) ? 1 : 0,
  };
}

/** A result that is cut off or damaged is made again. */
async function opened(target: string): Promise<Workbook | undefined> {
  try {
    return openWorkbook(await readWorkbookFile(target), nodeCodec);
  } catch (error) {
    if (error instanceof WorkbookRefused) return undefined;
    throw error;
  }
}

function beforeAfter(before: Workbook, after: Workbook, position: number): SheetBeforeAfter | undefined {
  const [was, now] = [before.sheets[position]?.cells, after.sheets[position]?.cells];
  if (!was || !now) return undefined;
  const value = (sheet: typeof was, key: number) => sheet.values[sheet.index.get(key) ?? -1] ?? null;
  return {
    width: now.width,
    value: (row, column) => value(now, cellKey(row, column)),
    *cells() {
      for (const [key, at] of now.index)
        yield [now.rows[at] ?? 0, now.columns[at] ?? 0, value(was, key), now.values[at] ?? null];
    },
  };
}

/** A file that is written with cells that may be stale asks for it. */
function asksForCalculation({ package: parts, part }: Workbook): boolean {
  const reader = new XmlReader(parts.xml(part) ?? '');
  while (reader.next())
    if (reader.name === 'calcPr' && !reader.closing)
      return ['1', 'true'].includes(reader.attribute('fullCalcOnLoad') ?? '');
  return false;
}

/** The report of an earlier run against a shop of this stamp; undefined where it is not whole, or of another shop. */
export async function reportBefore({ target }: FileJob, stamp: string): Promise<Before | undefined> {
  try {
    const report = JSON.parse(await readFile(typedPath(target), 'utf8')) as Partial<ShopReport> | null;
    const { shop, verdicts, stale } = report ?? {};
    if (shop !== stamp || !Array.isArray(verdicts?.changed) || typeof stale !== 'number') return undefined;
    return { verdicts, stale };
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

/** What is written of a file that is checked against another shop. */
export interface ShopReport extends Before {
  in: string;
  shop: string;
}
