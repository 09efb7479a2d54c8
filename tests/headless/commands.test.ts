import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { calc, readSheetValues, recalc } from '../../src/headless/index.js';
import { buildWorkbook, formula } from '../xlsx/support/buildWorkbook.js';

const support = path.join(import.meta.dirname, 'support');
let folder: string;
let quote: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'tonrow-commands-'));
  quote = path.join(folder, 'quote.xlsx');
  writeFileSync(quote, workbook());
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const workbook = (last = formula('B1+1', 1)) =>
  buildWorkbook(
    [
      {
        name: 'Quote',
        rows: [[21, formula('_xldudf_TONROW_DOUBLE(A1)', 0), last, formula('_xldudf_TONROW_MISSING()')]],
      },
      {
        name: 'Parts list',
        rows: [
          ['Mark', 'Qty'],
          ['A', 2],
          ['B', 3],
        ],
        tables: [{ name: 'Parts', ref: 'A1:B3', columns: ['Mark', 'Qty'] }],
      },
    ],
    { names: { Quantities: "'Parts list'!$B$2:$B$3" } },
  );

async function run(command: typeof calc, argv: string[], input?: string) {
  let [out, err] = ['', ''];
  const code = await command(argv, {
    out: (text) => (out += text),
    err: (text) => (err += text),
    folder: support,
    input: () => Promise.resolve(input),
  });
  return { code, out, err };
}

const lines = (out: string) =>
  out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as unknown);

describe('recalc', () => {
  it('writes beside the workbook, leaves it alone, and exits with 0', async () => {
    const before = readFileSync(quote);
    const { code, out } = await run(recalc, [quote]);
    expect(code).toBe(0);
    expect(out).toContain('quote.recalculated.xlsx');
    expect(out).toContain('Quote!D1  #N/A  There is no such press.');
    expect(readFileSync(quote).equals(before)).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(['quote.recalculated.xlsx', 'quote.xlsx']);
    const written = new Uint8Array(readFileSync(path.join(folder, 'quote.recalculated.xlsx')));
    expect(readSheetValues(written, 'Quote')).toEqual([[21, 42, 43, { error: '#N/A' }]]);
  });

  it('reports with --json, the options in any place', async () => {
    const target = path.join(folder, 'out.xlsx');
    const { code, out } = await run(recalc, ['--json', quote, target]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      in: quote,
      out: target,
      sheets: [
        { name: 'Quote', formulas: 3, calculated: 3, changed: 3 },
        { name: 'Parts list', formulas: 0, calculated: 0 },
      ],
      calculated: 3,
      pinned: [],
      stale: [],
      errors: [{ cell: 'Quote!D1', code: '#N/A', message: 'There is no such press.' }],
      milliseconds: { total: expect.any(Number) as number },
    });
  });

  it('exits with 3 when cells are stale', async () => {
    writeFileSync(quote, workbook(formula('_xlfn.LET(_xlpm.x,B1,_xlpm.x)', 5)));
    const { code, out } = await run(recalc, [quote, '--json']);
    expect(code).toBe(3);
    expect(JSON.parse(out)).toMatchObject({
      stale: [{ cell: 'Quote!C1', why: 'It uses LET, which is not among the functions evaluated here.' }],
    });
    const human = await run(recalc, [quote]);
    expect(human.code).toBe(3);
    expect(human.out).toContain('Quote!C1  It uses LET');
  });

  it.each([
    ['a missing file', ['nowhere.xlsx'], /nowhere\.xlsx does not exist\./],
    ['a folder', [os.tmpdir()], /is a folder\./],
    ['itself as target', ['quote.xlsx', 'quote.xlsx'], /is the workbook itself/],
    ['a target in a missing folder', ['quote.xlsx', 'no/where/out.xlsx'], /its folder does not exist/],
    ['a folder as target', ['quote.xlsx', '.'], /is a folder/],
  ])('refuses %s in one sentence and exits with 1', async (_, files, message) => {
    const { code, out, err } = await run(
      recalc,
      files.map((file) => path.resolve(folder, file)),
    );
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(message);
    expect(err.trimEnd()).not.toContain('\n');
    expect(readdirSync(folder)).toEqual(['quote.xlsx']);
  });

  it('refuses devices and pipes, to read or to write', async () => {
    const pipe = path.join(folder, 'pipe');
    spawnSync('mkfifo', [pipe]);
    for (const file of ['/dev/null', '/dev/zero', pipe]) {
      expect((await run(recalc, [file, path.join(folder, 'out.xlsx')])).err).toContain('is no plain file');
      expect((await run(recalc, [quote, file])).err).toContain('is no plain file');
    }
    expect(lstatSync('/dev/null').isCharacterDevice()).toBe(true);
    expect(lstatSync(pipe).isFIFO()).toBe(true);
  });

  it('follows a link to another file, and keeps the rights of the target, or else of the workbook', async () => {
    const [other, link] = [path.join(folder, 'other.xlsx'), path.join(folder, 'link.xlsx')];
    writeFileSync(other, 'x');
    chmodSync(other, 0o640);
    symlinkSync(other, link);
    expect((await run(recalc, [quote, link])).code).toBe(0);
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(statSync(other).mode & 0o777).toBe(0o640);
    chmodSync(quote, 0o600);
    expect((await run(recalc, [quote])).code).toBe(0);
    expect(statSync(path.join(folder, 'quote.recalculated.xlsx')).mode & 0o777).toBe(0o600);
  });

  it('refuses a link to the workbook as target', async () => {
    const link = path.join(folder, 'link.xlsx');
    symlinkSync(quote, link);
    expect((await run(recalc, [quote, link])).code).toBe(1);
  });

  it('refuses a truncated file in one sentence', async () => {
    writeFileSync(quote, workbook().subarray(0, 1500));
    const { code, err, out } = await run(recalc, [quote, '--json']);
    expect(code).toBe(1);
    expect(err).toMatch(/^The file is cut off or damaged: [^\n]*\.\n$/);
    expect(JSON.parse(out)).toMatchObject({ in: quote, error: err.trimEnd() });
  });

  it.each([[[]], [['a.xlsx', 'b.xlsx', 'c.xlsx']], [['--nope', 'a.xlsx']], [['--json=1', 'a.xlsx']]])(
    'exits with 2 when called as %j',
    async (argv) => {
      const { code, err } = await run(recalc, argv);
      expect(code).toBe(2);
      expect(err).toContain('Usage: npm run --silent recalc');
    },
  );
});

describe('calc', () => {
  it('ends with 1 where a formula gave an error, alone or in a cell of its result', async () => {
    expect((await run(calc, ['=1+1'])).code).toBe(0);
    expect((await run(calc, ['=1+1', '=NOPE(1)'])).code).toBe(1);
    expect((await run(calc, ['={1,2}/{1,0}'])).code).toBe(1);
  });

  it('gives one line of JSON per formula, in order', async () => {
    const { code, out } = await run(calc, [
      '--json',
      '=TONROW.DOUBLE(4)',
      '=ROUND(TONROW.DOUBLE(1.26),1)+1',
      '={1,2;3,4}*2',
      '=TONROW.DOUBLE("abc")',
      '=1/0',
      '=NOPE(1)',
      '=TONROW.NOPE()',
      '=1+',
    ]);
    expect(code).toBe(1);
    expect(lines(out)).toEqual([
      { formula: '=TONROW.DOUBLE(4)', value: 8 },
      { formula: '=ROUND(TONROW.DOUBLE(1.26),1)+1', value: 3.5 },
      {
        formula: '={1,2;3,4}*2',
        value: [
          [2, 4],
          [6, 8],
        ],
      },
      {
        formula: '=TONROW.DOUBLE("abc")',
        error: { code: '#VALUE!', message: "Value: 'abc' is not a number." },
      },
      { formula: '=1/0', error: { code: '#DIV/0!', message: 'It divides by zero.' } },
      {
        formula: '=NOPE(1)',
        error: { code: '#NAME?', message: 'It uses NOPE, which is not among the functions evaluated here.' },
      },
      {
        formula: '=TONROW.NOPE()',
        error: {
          code: '#NAME?',
          message: 'It uses TONROW.NOPE, which this edition of TONROW does not have.',
        },
      },
      { formula: '=1+', error: { code: '#NAME?', message: 'The formula ends too early.' } },
    ]);
  });

  it('reads formulas from standard input when none are given', async () => {
    const { out } = await run(calc, ['--json'], '=1+1\r\n\n  =TONROW.LATER(2)\n=TONROW.TALL(2)');
    expect(lines(out)).toEqual([
      { formula: '=1+1', value: 2 },
      { formula: '=TONROW.LATER(2)', value: 20 },
      {
        formula: '=TONROW.TALL(2)',
        value: [
          [1, 'row 1'],
          [2, 'row 2'],
        ],
      },
    ]);
  });

  it('passes left-out arguments as null, and a range to a single value one by one', async () => {
    const { out } = await run(calc, [
      '--json',
      '=TONROW.ADDUP(1)',
      '=TONROW.ADDUP(1,,5)',
      '=TONROW.DOUBLE({1,2})',
      '=TONROW.ADDUP({1,2},{10;20})',
      '=TONROW.KINDS(5)',
    ]);
    expect(lines(out).map((line) => (line as { value: unknown }).value)).toEqual([
      1,
      101,
      [[2, 4]],
      [
        [11, 12],
        [21, 22],
      ],
      'number',
    ]);
  });

  it('sees the sheets, names and tables of a calculated workbook', async () => {
    const { out } = await run(calc, [
      '--json',
      '--workbook',
      quote,
      '=B1',
      "='Parts list'!A2",
      '=SUM(Quantities)',
      '=TONROW.TOTAL(Parts[Qty])',
      '=Parts[[#Headers],[#Data],[Mark]]',
      '=Parts[Nope]',
      '=Nope',
    ]);
    expect(lines(out)).toEqual([
      { formula: '=B1', value: 42 },
      { formula: "='Parts list'!A2", value: 'A' },
      { formula: '=SUM(Quantities)', value: 5 },
      { formula: '=TONROW.TOTAL(Parts[Qty])', value: 5 },
      { formula: '=Parts[[#Headers],[#Data],[Mark]]', value: [['Mark'], ['A'], ['B']] },
      {
        formula: '=Parts[Nope]',
        error: { code: '#REF!', message: 'It refers to a cell that does not exist.' },
      },
      {
        formula: '=Nope',
        error: { code: '#NAME?', message: 'It uses the name Nope, which the workbook lacks.' },
      },
    ]);
  });

  it('writes readable text without --json', async () => {
    const { out } = await run(calc, ['=TRUE', '={1,"a"}', '=1/0', '="x"']);
    expect(out).toBe('TRUE\n1\ta\n#DIV/0! It divides by zero.\nx\n');
  });

  it('never runs code from a formula', async () => {
    const { out } = await run(calc, [
      '--json',
      '=constructor("x")',
      '=__proto__(1)',
      '=TONROW.CONSTRUCTOR()',
      '=toString()',
      "='x'];process.exit(9);//",
    ]);
    for (const line of lines(out)) expect(line).toMatchObject({ error: { code: '#NAME?' } });
  });

  it.each([[['--nope']], [[]], [['--workbook']]])('exits with 2 when called as %j', async (argv) => {
    const { code, err } = await run(calc, argv);
    expect(code).toBe(2);
    expect(err).toContain('Usage: npm run --silent calc');
  });

  it('exits with 1 when the workbook cannot be read', async () => {
    const { code, err } = await run(calc, ['--workbook', path.join(folder, 'no.xlsx'), '=1']);
    expect(code).toBe(1);
    expect(err).toMatch(/does not exist/);
  });
});
