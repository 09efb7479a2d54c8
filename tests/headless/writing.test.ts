import { createHash } from 'node:crypto';
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readSheetValues, writeFileWhole } from '../../src/headless/index.js';
import { buildWorkbook } from '../xlsx/support/buildWorkbook.js';

let folder: string;
let script: string;

beforeAll(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'tonrow-writing-'));
  script = path.join(folder, 'write.mjs');
  const writer = readFileSync(
    path.resolve(import.meta.dirname, '../../src/headless/files/writeFile.ts'),
    'utf8',
  );
  const loop = `
    import { readFileSync } from 'node:fs';
    const bytes = readFileSync(process.argv[2]);
    process.stdout.write('.');
    for (;;) await writeFileWhole(process.argv[3], bytes);`;
  const options = { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 };
  writeFileSync(script, ts.transpileModule(writer + loop, { compilerOptions: options }).outputText);
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A workbook of some size, all its numbers the same. */
const workbookOf = (value: number) =>
  buildWorkbook([
    { name: 'Quote', rows: Array.from({ length: 4000 }, (_, i) => [i, value, Math.sin(i + value)]) },
  ]);

function killedAfter(milliseconds: number, source: string, target: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, source, target], { stdio: ['ignore', 'pipe', 'inherit'] });
    child.stdout.once('data', () => setTimeout(() => child.kill('SIGKILL'), milliseconds));
    child.once('exit', () => resolve());
    child.once('error', reject);
  });
}

describe('writing a file', () => {
  it('killed at fifty moments leaves the old file, the new one, or none, and nothing in the way', async () => {
    const source = path.join(folder, 'new.xlsx');
    const target = path.join(folder, 'out.xlsx');
    writeFileSync(source, workbookOf(2));
    let leftovers = 0;
    for (let i = 0; i < 50; i++) {
      if (i % 3 === 0) rmSync(target, { force: true });
      else writeFileSync(target, workbookOf(1));
      await killedAfter(Math.random() * 30, source, target);
      if (existsSync(target)) {
        const rows = readSheetValues(new Uint8Array(readFileSync(target)), 'Quote');
        expect(rows).toHaveLength(4000);
        expect([1, 2]).toContain(rows[3999]?.[1]);
      } else expect(i % 3).toBe(0);
      leftovers += readdirSync(folder).filter((name) => name.endsWith('.tonrow-unfinished')).length;
    }
    await writeFileWhole(target, workbookOf(3));
    expect(readdirSync(folder).sort()).toEqual(['new.xlsx', 'out.xlsx', 'write.mjs']);
    expect(readSheetValues(new Uint8Array(readFileSync(target)), 'Quote')[0]?.[1]).toBe(3);
    // Some of the fifty were caught in the middle; otherwise the test would show nothing.
    expect(leftovers).toBeGreaterThan(0);
  });

  it('leaves nothing behind when the folder is missing', async () => {
    const missing = path.join(folder, 'nowhere', 'out.xlsx');
    await expect(writeFileWhole(missing, new Uint8Array(3))).rejects.toMatchObject({ code: 'ENOENT' });
  });

  it('leaves the unfinished file of a running program or another machine alone', async () => {
    const target = path.join(folder, 'other.xlsx');
    const machine = createHash('sha256').update(os.hostname()).digest('hex').slice(0, 10);
    const running = path.join(folder, `.other.xlsx.${machine}-${process.ppid}-00000000.tonrow-unfinished`);
    const elsewhere = path.join(folder, '.other.xlsx.0123456789-999999999-00000000.tonrow-unfinished');
    for (const file of [running, elsewhere]) writeFileSync(file, 'x');
    await writeFileWhole(target, new Uint8Array(3));
    for (const file of [running, elsewhere]) {
      expect(existsSync(file)).toBe(true);
      rmSync(file);
    }
  });

  it('takes names as long as the system does', async () => {
    const target = path.join(folder, `${'n'.repeat(240)}.xlsx`);
    await writeFileWhole(target, new Uint8Array(3));
    expect(readFileSync(target)).toHaveLength(3);
    rmSync(target);
  });
});
