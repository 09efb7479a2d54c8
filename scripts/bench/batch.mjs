// npm run bench:batch [-- --files 500 --rows 200]: many quotes one after another and side by side, in one run: those of
// the example, and lists of more rows.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { ensure, root } from '../ensure.mjs';
import { rowCheckWorkbook } from './workbooks.mjs';

ensure();
const { recalculateWorkbook, builtFunctions, readSheetValues } = await import('../../dist/headless.mjs');
const { values } = parseArgs({
  options: { files: { type: 'string', default: '500' }, rows: { type: 'string', default: '200' } },
});
const [files, rows] = [Number(values.files), Number(values.rows)];
const folder = path.join(root, 'out', 'bench-batch');
rmSync(folder, { recursive: true, force: true });
// A build of its own: what is built meanwhile does not come in between.
cpSync(path.join(root, 'dist'), path.join(folder, 'dist'), { recursive: true });
const headless = pathToFileURL(path.join(folder, 'dist/headless.mjs')).href;
const program = `const { recalc } = await import('${headless}'); process.exitCode = await recalc(process.argv.slice(1));`;

/** The example's quote; each file has lengths of its own, so that no answer is remembered from the file before. */
async function exampleQuotes() {
  const example = new Uint8Array(readFileSync(path.join(root, 'examples/quote.xlsx')));
  const functions = await builtFunctions(path.join(root, 'dist'));
  const cells = readSheetValues(example, 'Quote');
  const top = cells.findIndex((row) => row.includes('Mark') && row.includes('Length'));
  const column = cells[top].indexOf('Length');
  const list = cells.flatMap((row, at) => (at > top && row[column] ? [at + 1] : []));
  return async (file) => {
    const changes = list.map((row, at) => ({
      sheet: 'Quote',
      cell: `${String.fromCharCode(65 + column)}${row}`,
      value: `${20 + at + file / 16}`,
    }));
    return (await recalculateWorkbook(example, functions, { changes })).bytes;
  };
}

/** Seconds of a run by the command, its start included. */
function run(quotes, jobs) {
  const began = performance.now();
  const out = path.join(folder, 'out');
  const argv = [
    '--input-type=module',
    '-e',
    program,
    '--',
    quotes,
    '--out',
    out,
    '--jobs',
    String(jobs),
    '--again',
  ];
  const text = execFileSync(process.execPath, argv, { encoding: 'utf8', maxBuffer: 1 << 28 });
  if (!text.includes(`${files} files: ${files} done.`)) throw new Error(text.slice(-600));
  return (performance.now() - began) / 1000;
}

async function measure(name, quote) {
  const quotes = path.join(folder, 'quotes');
  rmSync(quotes, { recursive: true, force: true });
  mkdirSync(quotes, { recursive: true });
  for (let file = 0; file < files; file++)
    writeFileSync(path.join(quotes, `${String(file).padStart(5, '0')}.xlsx`), await quote(file));
  // In turns, the order changed: a busy spell of the machine meets both.
  const [one, two] = [[], []];
  one.push(run(quotes, 1));
  two.push(run(quotes, 2), run(quotes, 2));
  one.push(run(quotes, 1));
  const sum = (list) => list.reduce((total, each) => total + each, 0);
  const shown = (list) => list.map((each) => `${each.toFixed(1)} s`).join(', ');
  console.log(
    `${files} ${name}: one after another ${shown(one)}; --jobs 2 ${shown(two)}: ${(sum(one) / sum(two)).toFixed(2)} × faster`,
  );
}

console.log(`${os.availableParallelism()} cores, load ${os.loadavg()[0].toFixed(1)}`);
await measure('quotes of the example', await exampleQuotes());
await measure(`lists of ${rows} rows`, (file) => rowCheckWorkbook(rows, file));
