import { realpath, stat } from 'node:fs/promises';
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
  if (found && !found.isFile())
    throw new WorkbookRefused(`${target} is no plain file: name a file to write.`);
}

const reasons: Record<string, string> = {
  ENOENT: 'its folder does not exist',
  ENOTDIR: 'its folder is a file',
  EEXIST: 'its folder is a file',
  ELOOP: 'its folder is a link to itself',
  ENOSPC: 'the disk is full',
  EDQUOT: 'there is no room left for you on the disk',
  EROFS: 'the disk can only be read',
  EACCES: 'you may not write there',
  EPERM: 'you may not write there',
  EBUSY: 'another program holds it open',
  ENAMETOOLONG: 'its name is too long',
  EIO: 'the disk reports an error',
};

/** Where a target leads, links followed, and the rights it gets: its own, or those of the workbook it is made from. */
async function placeOf(source: string, target: string): Promise<{ file: string; mode: number }> {
  const known = await stat(target).catch(() => undefined);
  const { mode } = known ?? (await stat(typedPath(source)));
  return { file: known ? await realpath(target) : target, mode: mode & 0o777 };
}

/** Writes a file whole, or refuses in one sentence. */
export async function writeTarget(source: string, target: string, bytes: Uint8Array): Promise<void> {
  try {
    const { file, mode } = await placeOf(source, typedPath(target));
    await writeFileWhole(file, bytes, mode);
  } catch (error) {
    throw cannotBeWritten(target, error);
  }
}

/** What the system says of a file that it does not let be written, in one sentence. */
export function cannotBeWritten(target: string, error: unknown): WorkbookRefused {
  const { code = '', message } = error as NodeJS.ErrnoException;
  return new WorkbookRefused(`${target} cannot be written: ${reasons[code] ?? (code || message)}.`);
}

/** So many of a list are printed. */
export const mostListed = 20;

/** A list under its title, the first of many; nothing where there is none. `count`: of how many these are the first. */
export function listed<T>(
  title: string,
  items: readonly T[],
  show: (item: T) => string,
  all = '',
  count = items.length,
): string[] {
  if (count === 0) return [];
  const shown = items.slice(0, mostListed);
  const rest = count > shown.length ? [`  and ${count - shown.length} more${all}`] : [];
  return [`${count} ${title}:`, ...shown.map((item) => `  ${show(item)}`), ...rest];
}
