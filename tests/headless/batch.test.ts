import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { batchDesk } from '../../src/headless/batch/batchDesk.js';
import { resultOf } from '../../src/headless/batch/batchFiles.js';
import { reportBefore } from '../../src/headless/batch/doneBefore.js';
import type { OpenWorker } from '../../src/headless/batch/batchThreads.js';
import { readSheetValues, recalc } from '../../src/headless/index.js';
import { buildWorkbook, formula } from '../xlsx/support/buildWorkbook.js';

const support = path.join(import.meta.dirname, 'support');
let folder: string;
let built: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'tonrow-batch-'));
  // Beside the folder of the test, which some tests do as a whole.
  built = mkdtempSync(path.join(os.tmpdir(), 'tonrow-built-'));
  for (const name of ['functions.js', 'functions.json'])
    writeFileSync(path.join(built, name), readFileSync(path.join(support, name)));
  writeFileSync(path.join(built, 'batch.mjs'), '');
});
afterEach(() => {
  for (const one of [folder, built]) rmSync(one, { recursive: true, force: true });
});

const at = (...parts: string[]) => path.join(folder, ...parts);

/** A list of parts whose verdicts hang on a function of ours; the words are those that the file holds. */
function quote(load: number, ...words: string[]): Uint8Array {
  const verdict = (row: number, word: string) => ({
    attributes: ' t="str"',
    inner: `<f>IF(_xldudf_TONROW_DOUBLE(C${row})&gt;40,"Over capacity","OK")</f><v>${word}</v>`,
  });
  const rows = words.map((word, row) => [`B${row + 1}`, 'FB 3/8x4', load + row, verdict(row + 2, word)]);
  return buildWorkbook([{ name: 'Quote', rows: [['Mark', 'Section', 'Load', 'Verdict'], ...rows] }]);
}

function put(name: string, bytes: Uint8Array | string): string {
  mkdirSync(path.dirname(at(name)), { recursive: true });
  writeFileSync(at(name), bytes);
  // A result is newer than its file by the clock of the disk, which may be coarse.
  utimesSync(at(name), new Date(0), new Date(0));
  return at(name);
}

/** Works in this thread: the files are what is tested. */
const here: OpenWorker = (setting) => {
  const desk = batchDesk(setting);
  return { work: async (job) => (await desk)(job), end: () => {} };
};

async function run(...argv: string[]) {
  let [out, err] = ['', ''];
  const shown: string[] = [];
  const code = await recalc(argv, {
    out: (text) => (out += text),
    err: (text) => (err += text),
    progress: (text) => void shown.push(text),
    folder: built,
    openWorker: here,
    input: () => Promise.resolve(undefined),
  });
  return { code, out, err, shown };
}

const outcomes = (out: string) =>
  out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);

describe('recalc of many files', () => {
  it('says a line for each file, in the order of the list, and which verdicts changed, by mark', async () => {
    put('quotes/jan/a.xlsx', quote(20, 'OK', 'OK', 'OK'));
    put('quotes/feb/a.xlsx', quote(1, 'OK', 'Over capacity', ''));
    put('quotes/feb/~$a.xlsx', 'locked');
    put('quotes/readme.txt', 'x');
    const { code, out } = await run(at('quotes'), '--out', at('checked'), '--jobs', '3');
    expect(code).toBe(0);
    expect(out.replaceAll(folder, '').replaceAll('\\', '/').trimEnd().split('\n')).toEqual([
      '/quotes/feb/a.xlsx  3 formulas calculated, 2 values changed, 1 verdict changed',
      '/quotes/jan/a.xlsx  3 formulas calculated, 2 values changed, 2 verdicts changed',
      '',
      '2 files: 2 done.',
      '1 cell had no verdict before.',
      '3 verdicts changed in 2 files:',
      '  2  OK → Over capacity',
      '  1  Over capacity → OK',
      '3 rows:',
      '  /quotes/feb/a.xlsx  Quote!D3  B2  Over capacity → OK',
      '  /quotes/jan/a.xlsx  Quote!D3  B2  OK → Over capacity',
      '  /quotes/jan/a.xlsx  Quote!D4  B3  OK → Over capacity',
      'Results in /checked.',
    ]);
    const written = new Uint8Array(readFileSync(at('checked/quotes/jan/a.xlsx')));
    expect(readSheetValues(written, 'Quote').map((row) => row[3])).toEqual([
      'Verdict',
      'OK',
      'Over capacity',
      'Over capacity',
    ]);
  });

  it('does the rest in a second run, tells of all, and does all again when asked', async () => {
    put('quotes/a.xlsx', quote(20, 'OK', 'OK'));
    put('quotes/b.xlsx', quote(30, 'OK'));
    await run(at('quotes/a.xlsx'), '--out', at('checked'));
    const second = await run(at('quotes'), '--out', at('checked'), '--json');
    expect(outcomes(second.out)).toMatchObject([
      { state: 'done before', verdicts: { changed: [{ mark: 'B2', was: 'OK', now: 'Over capacity' }] } },
      { state: 'done' },
      { summary: { files: 2, done: 1, doneBefore: 1, refused: 0, verdicts: { files: 2 } } },
    ]);
    const again = await run(at('quotes'), '--out', at('checked'), '--json', '--again');
    expect(outcomes(again.out)).toMatchObject([{ state: 'done' }, { state: 'done' }, {}]);
  });

  it('makes a result again that is damaged, or older than its file', async () => {
    put('quotes/a.xlsx', quote(20, 'OK'));
    const result = at('checked/quotes/a.xlsx');
    const state = async () =>
      outcomes((await run(at('quotes'), '--out', at('checked'), '--json')).out)[0]?.state;
    expect(await state()).toBe('done');
    expect(await state()).toBe('done before');
    writeFileSync(result, readFileSync(result).subarray(0, 900));
    expect(await state()).toBe('done');
    utimesSync(result, new Date(1), new Date(1));
    expect(await state()).toBe('done');
    // A file moved into place keeps the date of its change, and is another file all the same.
    writeFileSync(at('quotes/a.xlsx'), quote(30, 'OK'));
    utimesSync(at('quotes/a.xlsx'), new Date(0), new Date(0));
    expect(await state()).toBe('done');
  });

  it('makes all results again when the program that made them is another one', async () => {
    put('quotes/a.xlsx', quote(20, 'OK'));
    const state = async () =>
      outcomes((await run(at('quotes'), '--out', at('checked'), '--json')).out)[0]?.state;
    for (const name of ['functions.js', 'functions.json', 'batch.mjs']) {
      expect(await state()).toBe('done');
      expect(await state()).toBe('done before');
      writeFileSync(path.join(built, name), readFileSync(path.join(built, name)));
    }
    expect(await state()).toBe('done');
  });

  it('does a file again that itself asks to be calculated: its result says nothing of stale cells', async () => {
    const bytes = buildWorkbook([{ name: 'Quote', rows: [[formula('_xldudf_TONROW_DOUBLE(1)', 5)]] }], {
      workbook: '<calcPr calcId="1" fullCalcOnLoad="1"/>',
    });
    put('quotes/asks.xlsx', bytes);
    for (let times = 0; times < 2; times++) {
      const { code, out } = await run(at('quotes'), '--out', at('checked'), '--json');
      expect(outcomes(out)[0]).toMatchObject({ state: 'done', stale: 0 });
      expect(code).toBe(0);
    }
  });

  it('lists the first changes of many, and counts them all', async () => {
    put('quotes/a.xlsx', quote(30, ...Array.from({ length: 50 }, () => 'OK')));
    const { out } = await run(at('quotes'), '--out', at('checked'));
    expect(out).toContain('  50  OK → Over capacity\n50 rows:\n');
    expect(out.match(/ {2}Quote!D\d+ /g)).toHaveLength(20);
    expect(out).toContain('  and 30 more (--json lists all)');
  });

  it('keeps the worst exit code, and says what is wrong with a file in its line', async () => {
    const stale = formula('_xlfn.LET(_xlpm.x,_xldudf_TONROW_DOUBLE(1),_xlpm.x)', 5);
    put('quotes/stale.xlsx', buildWorkbook([{ name: 'Quote', rows: [[stale]] }]));
    put('quotes/good.xlsx', quote(1, 'OK'));
    const twice = [
      await run(at('quotes'), '--out', at('checked')),
      await run(at('quotes'), '--out', at('checked')),
    ];
    expect(twice.map(({ code }) => code)).toEqual([3, 3]);
    expect(twice[1]?.out).toContain('stale.xlsx  done before, some cells may be stale');
    put('quotes/cut.xlsx', quote(1, 'OK').subarray(0, 700));
    const { code, out } = await run(at('quotes'), at('nowhere'), at('none'), '--out', at('checked'));
    expect(code).toBe(1);
    expect(out).toMatch(/cut\.xlsx {2}refused: The file is cut off or damaged/);
    expect(out).toMatch(/nowhere {2}refused: .*nowhere does not exist\./);
    expect(out).toContain('5 files: 0 done, 2 done before, 3 refused.');
  });

  it('never writes over a file it reads, and never through a link', async () => {
    const before = quote(20, 'OK', 'OK');
    const [a, other] = [put('a.xlsx', before), put('other.xlsx', 'mine')];
    expect((await run(at('.'), '--out', at('.'))).code).toBe(1);
    mkdirSync(at('checked'));
    symlinkSync(other, at('checked/a.xlsx'));
    expect((await run(a, '--out', at('checked'))).out).toContain('a link leads out of');
    rmSync(at('checked/a.xlsx'));
    symlinkSync(a, at('checked/in.xlsx'));
    expect((await run(at('checked/in.xlsx'), a, '--out', at('checked'))).code).toBe(0);
    expect([readFileSync(a).equals(Buffer.from(before)), readFileSync(other, 'utf8')]).toEqual([
      true,
      'mine',
    ]);
  });

  it('leaves the folder of the results out when it lies within a folder to do', async () => {
    put('a.xlsx', quote(1, 'OK'));
    await run(folder, '--out', at('checked'));
    const { out } = await run(folder, '--out', at('checked'));
    expect(out).toContain('1 file: 0 done, 1 done before.');
    expect(readdirSync(at('checked'))).toEqual(['a.xlsx']);
  });

  it('shows progress where a person watches, and clears it before each line', async () => {
    put('quotes/a.xlsx', quote(1, 'OK'));
    const { shown } = await run(at('quotes'), '--out', at('checked'));
    expect(shown).toEqual(['1 of 1 …', '', '']);
  });

  it('refuses a file as the folder of the results, and a shop that is none, before any work', async () => {
    const a = put('a.xlsx', quote(1, 'OK'));
    expect(await run(a, '--out', a)).toMatchObject({ code: 1, out: '' });
    const { code, err } = await run(a, '--out', at('checked'), '--shop', a);
    expect([code, err]).toEqual([1, expect.stringContaining('has no cell named ShopStamp')]);
    expect(existsSync(at('checked'))).toBe(false);
  });

  it.each([
    [['a.xlsx', '--jobs', '2'], /need --out/],
    [['a.xlsx', '--again'], /need --out/],
    [['a.xlsx', '--out', 'x', '--jobs', '0'], /from 1 to 64, not 0/],
    [['a.xlsx', '--out', 'x', '--jobs', 'two'], /from 1 to 64, not two/],
    [['--out', 'x'], /Which workbook/],
    [['a', 'b', 'c'], /folder for the results with --out/],
  ])('exits with 2 when called as %j', async (argv, message) => {
    const { code, err } = await run(...argv);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });
});

describe('where a result lies', () => {
  it('hangs on its file and the folder only, and no two files meet', () => {
    const out = path.resolve('/quotes/checked');
    const files = [
      '/quotes/a.xlsx',
      '/quotes/jan/a.xlsx',
      '/quotes/feb/a.xlsx',
      '/a.xlsx',
      '/jan/a.xlsx',
      '/quotes/elsewhere/a.xlsx',
      '/quotes/elsewhere/jan/a.xlsx',
      '/elsewhere/a.xlsx',
      '/quotes/..a.xlsx',
    ].map((file) => path.resolve(file));
    const results = files.map((file) => resultOf(file, out));
    expect(new Set(results).size).toBe(files.length);
    expect(results.every((result) => result.startsWith(out + path.sep))).toBe(true);
    expect(results[1]).toBe(path.join(out, 'jan', 'a.xlsx'));
  });
});

describe('a report that lies where the result belongs', () => {
  it.each([
    ['{"shop":"s","verdicts":{"changed":[],"first":0},"stale":0}', { changed: [], first: 0 }],
    ['{"shop":"other","verdicts":{"changed":[],"first":0},"stale":0}', undefined],
    ['{"shop":"s","verdicts":{},"stale":0}', undefined],
    ['{"shop":"s","verd', undefined],
    ['null', undefined],
    ['7', undefined],
  ])('%s counts as done where it is whole and of the same shop', async (text, verdicts) => {
    const target = put('a.xlsx.json', text);
    const before = await reportBefore({ source: 'a.xlsx', target, again: false }, 's');
    expect(before?.verdicts).toEqual(verdicts);
  });
});
