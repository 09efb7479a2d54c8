import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostileBooks } from './books.js';

interface Outcome {
  yardsticks: number;
  megabytes: number;
  refused?: boolean;
  message?: string;
  first?: unknown;
}

const support = path.join(import.meta.dirname, '../support');
const outcomes = new Map<string, Outcome>();
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'tonrow-hostile-'));
  const script = path.join(import.meta.dirname, '../../../out', `hostile-${process.pid}.mjs`);
  const entryPoints = [path.join(import.meta.dirname, 'child.ts')];
  await build({
    entryPoints,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    outfile: script,
  });
  const names = Object.keys(hostileBooks);
  const files = names.map((name, at) => {
    const file = path.join(folder, `${at}.xlsx`);
    writeFileSync(file, hostileBooks[name]?.bytes() ?? '');
    return file;
  });
  const argv = ['--max-old-space-size=450', script, support, ...files];
  const { stdout } = await promisify(execFile)(process.execPath, argv, { maxBuffer: 1 << 26 }).finally(() =>
    rmSync(script),
  );
  stdout
    .trim()
    .split('\n')
    .forEach((line, at) => outcomes.set(names[at] as string, JSON.parse(line) as Outcome));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A yardstick takes about 0.1 s. Alone all take under 20 of them; beside other work garbage is collected at a higher price. */
const mostYardsticks = 30;

describe('a small file that asks for work without end', () => {
  it.each(Object.entries(hostileBooks))(
    '%s: is refused, or pinned beside what is done',
    (name, { comes }) => {
      const outcome = outcomes.get(name);
      if (!outcome) throw new Error('There is no outcome: the program ended before it.');
      expect(outcome.yardsticks).toBeLessThan(mostYardsticks);
      expect(outcome.megabytes).toBeLessThan(512);
      if (comes === 'refused') {
        expect(outcome.refused).toBe(true);
        expect(outcome.message).toMatch(/^The file is refused: [^.]*\.$/);
      } else expect(outcome.message).toBeUndefined();
    },
  );

  it('leaves the good formula beside the bad ones calculated', () => {
    const done = [...outcomes.values()].filter(({ first }) => first === 42);
    expect(done.length).toBeGreaterThan(15);
  });
});
