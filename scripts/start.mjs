// npm start: installs what is missing, builds, recalculates the example quote through the built functions,
// prints what became of each row, and serves a page where the quote is open in a grid. `--once` leaves the
// page out and never waits.
import { mkdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { ensure, ensurePackages, root } from './ensure.mjs';
import { inventedPresses, verdictCounts, verdictTable } from './verdictTable.mjs';

const widthOfFile = 160;

ensure();
const { builtFunctions, readSheetValues, recalculateWorkbook, writeFileWhole } = await import(
  '../dist/headless.mjs'
);

const source = path.join(root, 'examples', 'quote.xlsx');
const copy = path.join(root, 'out', 'quote.recalculated.xlsx');
const { bytes, report } = await recalculateWorkbook(readFileSync(source), await builtFunctions());
mkdirSync(path.dirname(copy), { recursive: true });
await writeFileWhole(copy, bytes);

const rows = readSheetValues(bytes, 'Quote');
console.log(verdictTable(rows, process.stdout.columns ?? widthOfFile));
console.log(`\nRows: ${verdictCounts(rows)}.`);
if (report.errors?.length > 0) console.log(`Cells that show an error: ${report.errors.length}.`);
console.log(`Recalculated copy: ${path.relative(process.cwd(), copy)} (the example itself is unchanged).`);
const invented = inventedPresses(readSheetValues(bytes, 'Shop'));
if (invented.length > 0) console.log(`Invented, do not quote from them: ${invented.join(', ')}.`);
console.log(
  '\nPlanning estimates. The plate on the press, its manual and the tool maker govern; codes, the job and a\n' +
    'licensed engineer govern connections.',
);

if (!process.argv.includes('--once')) {
  console.log(
    '\nNext: the quote in a grid, in your browser. A first time this installs more packages (end with Ctrl+C).',
  );
  ensurePackages({ development: true });
  const { openBench } = await import('./bench.mjs');
  await openBench();
}
