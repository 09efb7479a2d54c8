// What a row check costs: rows of a varied list against the same rows in another commit, and many holes against few.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { CellValue } from '../../src/core/quantity/cellValue.js';
import type { checkRow } from '../../src/core/row/checkRow.js';
import type { readHeadings } from '../../src/core/row/headings/readHeadings.js';
import type { readShop } from '../../src/core/shop/readShop.js';

interface RowCheck {
  checkRow: typeof checkRow;
  readHeadings: typeof readHeadings;
  readShop: typeof readShop;
}

const own = await load('own');
const against = process.env.BENCH_AGAINST;
const old = against === undefined ? undefined : await load('old');

async function load(name: string): Promise<RowCheck> {
  return (await import(pathToFileURL(path.resolve(`out/bench/${name}.mjs`)).href)) as RowCheck;
}

const sources = path.resolve('examples/quote');

function table(name: string): CellValue[][] {
  const lines = readFileSync(path.join(sources, `${name}.tsv`), 'utf8')
    .trimEnd()
    .split('\n');
  const cell = (text: string): CellValue =>
    text === '' ? null : /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text;
  return lines.map((line) => line.split('\t').map(cell));
}

const tables = {
  presses: table('presses'),
  tools: table('tools'),
  grades: table('grades'),
  settings: table('settings'),
};
const [titles = [], ...example] = table('parts');
const lengthAt = titles.indexOf('Length');

/** The example over and over, every row of another length: only its sections and holes come again, as in a list. */
const varied = Array.from({ length: 40 }, (_, round) =>
  example.map((cells) =>
    cells.map((cell, at) => (at === lengthAt && typeof cell === 'number' ? cell + round / 16 : cell)),
  ),
).flat();

/** Microseconds a row, the best of several; the machine is noisy. */
function microseconds(
  module: RowCheck,
  heads: readonly CellValue[],
  rows: readonly CellValue[][],
): () => number {
  const shop = module.readShop(tables);
  const headings = module.readHeadings(heads);
  return () => {
    const started = performance.now();
    for (const cells of rows) module.checkRow(cells, headings, shop);
    return ((performance.now() - started) * 1000) / rows.length;
  };
}

/** The least of several turns each, taken in turns, so that both see the same machine. */
function together(runs: readonly (() => number)[], turns: number): number[] {
  const least = runs.map(() => Infinity);
  for (let turn = 0; turn < turns; turn += 1) {
    runs.forEach((run, at) => {
      least[at] = Math.min(least[at] ?? Infinity, run());
    });
  }
  return least;
}

const runs = [microseconds(own, titles, varied), ...(old ? [microseconds(old, titles, varied)] : [])];
const [ownUs = 0, oldUs] = together(runs, 15);
console.log(`a row of the example, ${varied.length} unlike rows: ${ownUs.toFixed(1)} µs`);
if (oldUs !== undefined) {
  console.log(`  in ${against}: ${oldUs.toFixed(1)} µs; now to then ${(ownUs / oldUs).toFixed(2)}`);
}

const barHeads = ['Section', 'Grade', 'Length', 'Hole', 'Holes', 'Bolt', 'Edge', 'End', 'Pitch', 'Press'];
const bar = (holes: number): CellValue[] => [
  'FB 3/8x4',
  'A36',
  holes * 3 + 6,
  '13/16',
  holes,
  '3/4',
  2,
  3,
  3,
  tables.presses[0]?.[2] ?? null,
];
const bars = (holes: number) =>
  microseconds(
    own,
    barHeads,
    Array.from({ length: 50 }, () => bar(holes)),
  );
const [few = 1, many = 0] = together([bars(20), bars(400)], 15);
console.log(
  `a bar with 400 holes: ${many.toFixed(0)} µs; to one with 20 (${few.toFixed(0)} µs) ${(many / few).toFixed(1)}`,
);

const groups = Array.from({ length: 9 }, (_, at) => (at === 0 ? '' : ` ${at + 1}`));
const heapHeads = [
  'Section',
  'Grade',
  'Length',
  ...groups.flatMap((n) => ['Hole', 'Holes', 'Bolt', 'Edge', 'End', 'Pitch'].map((head) => head + n)),
];
const heap: CellValue[] = [
  'PL 3/8x12',
  'A36',
  48,
  ...groups.flatMap(() => ['13/16', 111, '3/4', 6, 6, 0.0001]),
];
const before = process.memoryUsage().heapUsed;
const [heapUs = 0] = together([microseconds(own, heapHeads, [heap])], 3);
const megabytes = (process.memoryUsage().heapUsed - before) / 1e6;
console.log(
  `999 holes on one place in 9 groups: ${(heapUs / 1000).toFixed(1)} ms, ${megabytes.toFixed(0)} MB more`,
);
