import { open } from 'node:fs/promises';
import { constants } from 'node:fs';
import path from 'node:path';
import { limits } from '../../xlsx/refusal/limits.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';

const reasons: Record<string, string> = {
  ENOENT: 'does not exist',
  EACCES: 'may not be read',
  EPERM: 'may not be read',
  EISDIR: 'is a folder',
  ENOTDIR: 'does not exist: its folder is a file',
  ELOOP: 'is a link to itself',
  ENAMETOOLONG: 'does not exist: its name is too long',
  EIO: 'cannot be read: the disk reports an error',
  EBUSY: 'cannot be read: another program holds it open',
  EMFILE: 'cannot be read: too many files are open',
};

const commands = new Set(['recalc', 'calc', 'cards', 'stock']);

/** Where a path typed by the user leads: npm runs commands in the project folder, people type elsewhere. */
export function typedPath(file: string): string {
  const { npm_lifecycle_event: command, INIT_CWD: typedIn } = process.env;
  const throughNpm = command !== undefined && commands.has(command);
  return path.resolve(throughNpm && typedIn ? typedIn : process.cwd(), file);
}

/** Reads a workbook file, or refuses it in one sentence. */
export async function readWorkbookFile(file: string): Promise<Uint8Array> {
  try {
    // A pipe without a writer must not be waited for; a plain file does not know the difference.
    const handle = await open(typedPath(file), constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const found = await handle.stat();
      if (found.isDirectory()) throw new WorkbookRefused(`${file} is a folder.`);
      if (!found.isFile()) throw new WorkbookRefused(`${file} is no plain file: name a workbook.`);
      if (found.size > limits.file)
        throw new WorkbookRefused(`${file} is larger than 512 MB, more than a workbook may be here.`);
      return new Uint8Array(await handle.readFile());
    } finally {
      await handle.close();
    }
  } catch (error) {
    throw error instanceof WorkbookRefused ? error : cannotBeRead(file, error);
  }
}

/** What the system says of a file that it does not let be read, in one sentence. */
export function cannotBeRead(file: string, error: unknown): WorkbookRefused {
  const { code = '', message } = error as NodeJS.ErrnoException;
  return new WorkbookRefused(`${file} ${reasons[code] ?? `cannot be read (${code || message})`}.`);
}
