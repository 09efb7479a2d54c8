// npm run bench:batch [-- --files 500]: many quotes one after another and side by side, in one run.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { ensure, root } from '../ensure.mjs';

ensure();
const { recalculateWorkbook, builtFunctions, readSheetValues } = await import('../../dist/headless.mjs');
const { values } = parseArgs({ options: { files: { type: 'string', default: '500' } } });
const files = Number(values.files);
const folder = path.join(root, 'out', 'bench-batch');
rmSync(folder, { recursive: true, force: true });
mkdirSync(path.join(folder, 'quotes'), { recursive: true });

// Each file has a length of its own, so that no answer is remembered from the file before.
const example = new Uint8Array(readFileSync(path.join(root, 'examples/quote.xlsx')));
const functions = await builtFunctions(path.join(root, 'dist'));
const rows = readSheetValues(example, 'Quote');
const top = rows.findIndex((row) => row.includes('Mark') && row.includes('Length'));
const column = String.fromCharCode(65 + rows[top].indexOf('Length'));
const list = [];
for (let at = 0; at < rows.length - top - 1; at++)
  if (rows[top + 1 + at]?.[rows[top].indexOf('Length')]) list.push(top + 2 + at);
for (let file = 0; file < files; file++) {
  const changes = list.map((row, at) => ({
    sheet: 'Quote',
    cell: `${column}${row}`,
    value: `${20 + at + file / 16}`,
  }));
  const { bytes } = await recalculateWorkbook(example, functions, { changes });
  writeFileSync(path.join(folder, 'quotes', `${String(file).padStart(5, '0')}.xlsx`), bytes);
}

// A build of its own: what is built meanwhile does not come in between.
cpSync(path.join(root, 'dist'), path.join(folder, 'dist'), { recursive: true });
const headless = pathToFileURL(path.join(folder, 'dist/headless.mjs')).href;
const program = `const { recalc } = await import('${headless}'); process.exitCode = await recalc(process.argv.slice(1));`;

/** Seconds of a run by the command, its start included. */
function run(jobs) {
  const began = performance.now();
  const argv = [
    '--input-type=module',
    '-e',
    program,
    '--',
    path.join(folder, 'quotes'),
    '--out',
    path.join(folder, 'out'),
    '--jobs',
    String(jobs),
    '--again',
  ];
  const text = execFileSync(process.execPath, argv, {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (!text.includes(`${files} files: ${files} done.`)) throw new Error(text.slice(-600));
  return (performance.now() - began) / 1000;
}

console.log(`${os.availableParallelism()} cores, load ${os.loadavg()[0].toFixed(1)}, ${files} files`);
// In turns, the order changed: a busy spell of the machine meets both.
const [one, two] = [[], []];
one.push(run(1));
two.push(run(2));
two.push(run(2));
one.push(run(1));
const sum = (list) => list.reduce((total, each) => total + each, 0);
const shown = (list) => list.map((each) => `${each.toFixed(1)} s`).join(', ');
console.log(`one after another: ${shown(one)}`);
console.log(`--jobs 2: ${shown(two)}`);
console.log(`${(sum(one) / sum(two)).toFixed(2)} × faster`);
