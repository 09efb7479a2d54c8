// Builds the example quote workbook from the sources in examples/quote/ and calculates it through the built functions.
// node examples/build-quote.mjs [OUT]
// OUT is examples/quote.xlsx unless given.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { ensure } from '../scripts/ensure.mjs';
import { loadSource } from '../scripts/loadSource.mjs';
import { quoteWorkbook } from './build/workbook.mjs';

ensure();
const { builtFunctions, recalculateWorkbook } = await import('../dist/headless.mjs');
const { verdicts } = await loadSource('src/core/check/verdict.ts');
const out = process.argv[2] ?? path.join(import.meta.dirname, 'quote.xlsx');
const built = quoteWorkbook(path.join(import.meta.dirname, 'quote'), verdicts);
const { bytes, report } = await recalculateWorkbook(built, await builtFunctions());
for (const { cell, why } of report.stale) console.error(`${cell}: ${why}`);
writeFileSync(out, bytes);
console.log(`Wrote ${out}`);
process.exitCode = report.stale.length > 0 ? 3 : 0;
