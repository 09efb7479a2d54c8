import { createHash, randomBytes } from 'node:crypto';
import { open, readdir, rename, rm, stat } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

const ending = '.tonrow-unfinished';

/**
 * Writes a file whole or not at all: the bytes go to a hidden name in the same folder, are flushed, and
 * the finished file is moved into place. Killed at any moment, the file under the real name is the old
 * one, the new one, or none; what a killed run left behind is removed by the next.
 */
export async function writeFileWhole(file: string, bytes: Uint8Array, mode = 0o644): Promise<void> {
  const folder = path.dirname(file);
  const prefix = `.${shortened(path.basename(file))}.${machine}-`;
  await removeLeftovers(folder, prefix);
  const unfinished = path.join(folder, `${prefix}${process.pid}-${randomBytes(4).toString('hex')}${ending}`);
  try {
    const handle = await open(unfinished, 'wx', 0o600);
    try {
      await handle.chmod(mode);
      await handle.writeFile(bytes);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(unfinished, file);
  } catch (error) {
    await rm(unfinished, { force: true });
    throw error;
  }
  await flushFolder(folder);
}

/** Machines that share a folder tell their unfinished files apart: only here is it known which programs still run. */
const machine = digest(os.hostname());

function digest(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 10);
}

/** Names of files have 255 bytes at most: a long one is cut, and kept apart from others by its digest. */
function shortened(name: string): string {
  return Buffer.byteLength(name) <= 100 ? name : `${[...name].slice(0, 20).join('')}~${digest(name)}`;
}

async function removeLeftovers(folder: string, prefix: string): Promise<void> {
  for (const name of await readdir(folder)) {
    if (!name.startsWith(prefix) || !name.endsWith(ending)) continue;
    const owner = Number.parseInt(name.slice(prefix.length), 10);
    if (!isRunning(owner)) await rm(path.join(folder, name), { force: true });
  }
}

function isRunning(process_: number): boolean {
  if (process_ === process.pid) return true;
  try {
    process.kill(process_, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/** Makes the move itself last; systems that cannot flush a folder do it in their own time. */
async function flushFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Whether two paths lead to the same existing file, links included. */
export async function isSameFile(a: string, b: string): Promise<boolean> {
  const [first, second] = await Promise.all([a, b].map((file) => stat(file).catch(() => undefined)));
  return first !== undefined && second !== undefined && first.ino === second.ino && first.dev === second.dev;
}
