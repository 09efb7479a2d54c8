// What a row check costs over the bare checks of rows already read, and over reading alone: ratios within one run.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { checkOnPress } from '../../src/core/row/checkOnPress.js';
import { checkRow } from '../../src/core/row/checkRow.js';
import { prepareRow } from '../../src/core/row/prepareRow.js';
import { readHeadings } from '../../src/core/row/readHeadings.js';
import { readRow } from '../../src/core/row/readRow.js';
import type { CellValue } from '../../src/core/quantity/cellValue.js';
import { readShop } from '../../src/core/shop/readShop.js';

const sources = path.resolve('examples/quote');
const rounds = 200;

function table(name: string): CellValue[][] {
  const lines = readFileSync(path.join(sources, `${name}.tsv`), 'utf8')
    .trimEnd()
    .split('\n');
  const cell = (text: string): CellValue =>
    text === '' ? null : /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text;
  return lines.map((line) => line.split('\t').map(cell));
}

const shop = readShop({
  presses: table('presses'),
  tools: table('tools'),
  grades: table('grades'),
  settings: table('settings'),
});
const [titles = [], ...rows] = table('parts');
const headings = readHeadings(titles);
const [press] = shop.presses;
if (!press) throw new Error('the example has no press');

const prepared = rows.flatMap((cells) => {
  const { section, grade, ...job } = readRow(cells, headings, shop);
  return section && grade ? [prepareRow({ ...job, section, grade }, shop, false).row] : [];
});

/** Microseconds a row, the best of five; the machine is noisy. */
function microsecondsPerRow(count: number, run: () => void): number {
  const times = Array.from({ length: 5 }, () => {
    const started = performance.now();
    for (let round = 0; round < rounds; round++) run();
    return ((performance.now() - started) * 1000) / (rounds * count);
  });
  return Math.min(...times);
}

const whole = microsecondsPerRow(rows.length, () => rows.forEach((cells) => checkRow(cells, headings, shop)));
const reading = microsecondsPerRow(rows.length, () =>
  rows.forEach((cells) => readRow(cells, headings, shop)),
);
const bare = microsecondsPerRow(prepared.length, () =>
  prepared.forEach((row) => checkOnPress(press, row, shop, false)),
);

console.log(`a row check from its cells: ${whole.toFixed(1)} µs`);
console.log(
  `  to the checks of one press on rows already read (${bare.toFixed(1)} µs): ${(whole / bare).toFixed(2)}`,
);
console.log(`  to reading the cells alone (${reading.toFixed(1)} µs): ${(whole / reading).toFixed(2)}`);
