// @vitest-environment node
// Many files by the built command: threads, a kill in the middle, and the presses of another workbook.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import '../contract/support/built.js';
import { type ShopReport } from '../../src/headless/batch/doneBefore.js';
import { builtFunctions, readSheetValues, recalculateWorkbook } from '../../src/headless/index.js';
import { buildWorkbook, formula } from '../xlsx/support/buildWorkbook.js';

const dist = path.join(root, 'dist');
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'tonrow-threads-'));
  mkdirSync(path.join(folder, 'quotes'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the built command; `onLine` may kill it. */
function recalc(argv: string[], onLine: (lines: string[], kill: () => void) => void = () => {}) {
  const headless = pathToFileURL(path.join(dist, 'headless.mjs')).href;
  const program = `const { recalc } = await import('${headless}'); process.exitCode = await recalc(process.argv.slice(1));`;
  const child = spawn(process.execPath, ['--input-type=module', '-e', program, '--', ...argv], {
    cwd: folder,
  });
  let [out, err] = ['', ''];
  child.stderr.on('data', (data) => (err += String(data)));
  child.stdout.on('data', (data) => {
    out += String(data);
    onLine(out.split('\n').slice(0, -1), () => child.kill('SIGKILL'));
  });
  return new Promise<{ code: number | null; lines: string[]; err: string }>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, lines: out.trimEnd().split('\n'), err }));
  });
}

const summaryOf = (lines: string[]) => (JSON.parse(lines.at(-1) ?? '{}') as { summary: unknown }).summary;

describe('many files in threads', () => {
  it('killed in the middle leave whole results, and a second run does the rest', async () => {
    const small = (rows: number) =>
      buildWorkbook([
        {
          name: 'Quote',
          rows: Array.from({ length: rows }, (_, row) => [
            row,
            formula(`_xldudf_TONROW_HOLEMIN(${(row % 9) + 1}/16,"A36")`, 0),
          ]),
        },
      ]);
    for (let at = 0; at < 120; at++)
      writeFileSync(path.join(folder, 'quotes', `${String(at).padStart(3, '0')}.xlsx`), small(20 + at));
    const call = ['quotes', '--out', 'checked', '--jobs', '2', '--json'];
    const killed = await recalc(call, (lines, kill) => lines.length >= 15 && kill());
    expect(killed.code).toBeNull();
    const whole = readdirSync(path.join(folder, 'checked/quotes')).filter((name) => name.endsWith('.xlsx'));
    expect(whole.length).toBeGreaterThanOrEqual(15);
    expect(whole.length).toBeLessThan(120);
    for (const name of whole) {
      const bytes = new Uint8Array(readFileSync(path.join(folder, 'checked/quotes', name)));
      expect(readSheetValues(bytes, 'Quote')[8]?.[1]).toBe(0.5625);
    }
    const second = await recalc(call);
    expect(second.err).toBe('');
    expect(second.code).toBe(0);
    expect(summaryOf(second.lines)).toMatchObject({
      files: 120,
      done: 120 - whole.length,
      doneBefore: whole.length,
      refused: 0,
    });
    const left = readdirSync(path.join(folder, 'checked/quotes'));
    expect(left.filter((name) => name.endsWith('.xlsx'))).toHaveLength(120);
  });

  it('are checked against the presses of another workbook, and the report names what changed', async () => {
    const example = new Uint8Array(readFileSync(path.join(root, 'examples/quote.xlsx')));
    const shop = readSheetValues(example, 'Shop');
    const row = shop.findIndex(([item]) => item === 'Punch force');
    const force = shop[row]?.[2];
    expect(typeof force).toBe('number');
    const weaker = await recalculateWorkbook(example, await builtFunctions(dist), {
      changes: [{ sheet: 'Shop', cell: `C${row + 1}`, value: (force as number) / 4 }],
    });
    writeFileSync(path.join(folder, 'today.xlsx'), weaker.bytes);
    writeFileSync(path.join(folder, 'quotes/old.xlsx'), example);
    const call = ['quotes', '--out', 'checked', '--shop', 'today.xlsx', '--json'];
    const { code, lines } = await recalc(call);
    expect(code).toBe(0);
    const report = JSON.parse(
      readFileSync(path.join(folder, 'checked/quotes/old.xlsx.json'), 'utf8'),
    ) as ShopReport;
    // The words are those of the workbook whose own presses these are.
    const words = readSheetValues(weaker.bytes, 'Quote');
    const before = readSheetValues(example, 'Quote');
    const top = before.findIndex((cells) => cells.includes('Mark'));
    const [mark, verdict] = ['Mark', 'Verdict'].map((name) => before[top]?.indexOf(name) ?? -1);
    const expected = before.flatMap((cells, at) => {
      const [was, now] = [cells, words[at]].map((row) => row?.[verdict ?? -1]);
      return was === now ? [] : [{ cell: `Quote!A${at + 1}`, mark: cells[mark ?? -1], was, now }];
    });
    expect(expected.length).toBeGreaterThan(0);
    const { changed } = report.verdicts;
    expect(changed.filter(({ cell }) => cell.startsWith('Quote!A'))).toEqual(expected);
    // The same list stands a second time on a sheet of its own.
    const others = changed.filter(({ cell }) => cell.startsWith("'List check'!"));
    expect(others.map(({ mark, was, now }) => [mark, was, now])).toEqual(
      expected.map(({ mark: one, was, now }) => [one, was, now]),
    );
    expect(changed).toHaveLength(2 * expected.length);
    expect(summaryOf(lines)).toMatchObject({ done: 1, verdicts: { files: 1 } });
    const again = await recalc(call);
    expect(summaryOf(again.lines)).toMatchObject({ doneBefore: 1, verdicts: { files: 1 } });
  });
});
