import { stat } from 'node:fs/promises';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { typedPath } from '../files/readFile.js';
import { isSameFile, writeFileWhole } from '../files/writeFile.js';

/** Refuses to write over the workbook that is read, or onto a folder. */
export async function checkTarget(source: string, target: string): Promise<void> {
  if (await isSameFile(typedPath(source), typedPath(target))) {
    throw new WorkbookRefused(
      `${target} is the workbook itself: name another file to write, the source is never changed.`,
    );
  }
  const found = await stat(typedPath(target)).catch(() => undefined);
  if (found?.isDirectory()) throw new WorkbookRefused(`${target} is a folder: name a file to write.`);
}

/** Writes a file whole, or refuses in one sentence. */
export async function writeTarget(target: string, bytes: Uint8Array): Promise<void> {
  try {
    await writeFileWhole(typedPath(target), bytes);
  } catch (error) {
    const { code = '', message } = error as NodeJS.ErrnoException;
    const why = code === 'ENOENT' ? 'its folder does not exist' : code || message;
    throw new WorkbookRefused(`${target} cannot be written: ${why}.`);
  }
}

const most = 20;

/** A list under its title, the first of many; nothing where there is none. */
export function listed<T>(title: string, items: readonly T[], show: (item: T) => string, all = ''): string[] {
  if (items.length === 0) return [];
  const rest = items.length > most ? [`  and ${items.length - most} more${all}`] : [];
  return [`${items.length} ${title}:`, ...items.slice(0, most).map((item) => `  ${show(item)}`), ...rest];
}
