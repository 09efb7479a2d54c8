import { readdir, realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { cannotBeRead, typedPath } from '../files/readFile.js';

/** A file to do, or what is said of one that cannot be found. */
type BatchFile = { source: string } | { source: string; error: string };

/** Names of files that programs keep beside a workbook while it is open. */
const hidden = /^(?:\.|~\$)/;
const workbookName = /\.xls[xm]$/i;

/**
 * The workbooks of a list of files and folders, in the order of the list and of names, each once. `out`, the folder of
 * the results, is left out.
 */
export async function batchFiles(typed: readonly string[], out: string): Promise<BatchFile[]> {
  const results = await real(typedPath(out));
  const known = new Set<string>();
  const files: BatchFile[] = [];
  for (const name of typed)
    for (const file of await workbooksAt(name, results)) {
      const place = await real(typedPath(file.source));
      if (known.has(place)) continue;
      known.add(place);
      files.push(
        isWithin(results, place)
          ? { source: file.source, error: `${file.source} lies in ${out}, the folder of the results.` }
          : file,
      );
    }
  return files;
}

async function workbooksAt(name: string, results: string): Promise<BatchFile[]> {
  try {
    if (!(await stat(typedPath(name))).isDirectory()) return [{ source: name }];
    const found = await workbooksIn(name, results);
    return found.length > 0 ? found : [{ source: name, error: `${name} holds no workbook.` }];
  } catch (error) {
    if (error instanceof WorkbookRefused) return [{ source: name, error: error.message }];
    return [{ source: name, error: cannotBeRead(name, error).message }];
  }
}

/** The workbooks in a folder and those below it. Links to folders are not followed: they may lead in circles. */
async function workbooksIn(folder: string, results: string): Promise<BatchFile[]> {
  const entries = await readdir(typedPath(folder), { withFileTypes: true });
  entries.sort((a, b) => (a.name < b.name ? -1 : 1));
  const files: BatchFile[] = [];
  for (const entry of entries) {
    const name = path.join(folder, entry.name);
    if (hidden.test(entry.name)) continue;
    if (entry.isDirectory()) {
      if ((await real(typedPath(name))) === results) continue;
      try {
        for (const file of await workbooksIn(name, results)) files.push(file);
      } catch (error) {
        files.push({ source: name, error: cannotBeRead(name, error).message });
      }
    } else if (workbookName.test(entry.name)) {
      const isFile = entry.isFile() || (await stat(typedPath(name)).catch(() => undefined))?.isFile();
      if (isFile) files.push({ source: name });
    }
  }
  return files;
}

/** Where a path leads, links followed as far as it exists. */
async function real(file: string): Promise<string> {
  try {
    return await realpath(file);
  } catch {
    const folder = path.dirname(file);
    return folder === file ? file : path.join(await real(folder), path.basename(file));
  }
}

function isWithin(folder: string, file: string): boolean {
  const way = path.relative(folder, file);
  return way === '' || !(way === '..' || way.startsWith(`..${path.sep}`) || path.isAbsolute(way));
}

const elsewhere = 'elsewhere';

/**
 * Where the result of a file lies: its way from beside `out`, repeated in `out`; of a file that lies elsewhere, its
 * whole path. It hangs on no other file, so a list may be split in any way, and no two files meet.
 */
export function resultOf(source: string, out: string, ending = ''): string {
  const [file, beside] = [typedPath(source), path.dirname(typedPath(out))];
  const way = path.relative(beside, file);
  const isBeside = isWithin(beside, file) && way.split(path.sep)[0] !== elsewhere;
  const { root } = path.parse(file);
  const drive = root
    .replaceAll(/[:\\/]+/g, ' ')
    .trim()
    .replaceAll(' ', '_');
  return path.join(out, isBeside ? way : path.join(elsewhere, drive, file.slice(root.length))) + ending;
}

/** Refuses a result that a link in the folder of the results leads out of it: it might be somebody's workbook. */
export async function refuseLinks(target: string, out: string): Promise<void> {
  if (isWithin(await real(typedPath(out)), await real(typedPath(target)))) return;
  throw new WorkbookRefused(`${target} is not written: a link leads out of ${out}.`);
}
