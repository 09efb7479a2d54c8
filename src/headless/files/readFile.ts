import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';

const reasons: Record<string, string> = {
  ENOENT: 'does not exist',
  EACCES: 'may not be read',
  EPERM: 'may not be read',
  EISDIR: 'is a folder',
};

const commands = new Set(['recalc', 'calc', 'cards']);

/** Where a path typed by the user leads: npm runs commands in the project folder, people type elsewhere. */
export function typedPath(file: string): string {
  const { npm_lifecycle_event: command, INIT_CWD: typedIn } = process.env;
  const throughNpm = command !== undefined && commands.has(command);
  return path.resolve(throughNpm && typedIn ? typedIn : process.cwd(), file);
}

/** Reads a workbook file, or refuses it in one sentence. */
export async function readWorkbookFile(file: string): Promise<Uint8Array> {
  try {
    return new Uint8Array(await readFile(typedPath(file)));
  } catch (error) {
    const { code = '', message } = error as NodeJS.ErrnoException;
    throw new WorkbookRefused(`${file} ${reasons[code] ?? `cannot be read (${code || message})`}.`);
  }
}
