// npm run bench:recalc [-- --rows 10000,100000]: recalculation end to end, as ratios within this run.
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensure, root } from '../ensure.mjs';
import { nativeWorkbook, oursWorkbook } from './workbooks.mjs';

ensure();
const { readSheetValues, recalculateWorkbook, builtFunctions } = await import('../../dist/headless.mjs');
const folder = path.join(root, 'out', 'bench');
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });

const repeats = 3;
const best = (times) => Math.min(...times);
const seconds = (milliseconds) => `${(milliseconds / 1000).toFixed(2)} s`;

const headless = pathToFileURL(path.join(root, 'dist', 'headless.mjs')).href;

/** The recalculation in a process of its own, start-up included; the build is not looked at again. */
function command(file) {
  const started = performance.now();
  const program = `const { recalc } = await import('${headless}'); process.exitCode = await recalc(process.argv.slice(1));`;
  const args = ['--input-type=module', '-e', program, '--', file, path.join(folder, 'out.xlsx'), '--json'];
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8', maxBuffer: 1 << 28 });
  if (status !== 0) throw new Error(`recalc ended with ${status}: ${stderr}`);
  return performance.now() - started;
}

/** A headless desktop spreadsheet that opens, calculates and saves the native workbook; undefined without one. */
function desktop(file) {
  const profile = `-env:UserInstallation=file://${path.join(folder, 'profile')}`;
  const args = [
    profile,
    '--headless',
    '--convert-to',
    'xlsx:Calc MS Excel 2007 XML',
    '--outdir',
    path.join(folder, 'desktop'),
    file,
  ];
  const started = performance.now();
  const { error, status } = spawnSync('soffice', args, { stdio: 'ignore' });
  return error || status !== 0 ? undefined : performance.now() - started;
}

function write(name, bytes) {
  const file = path.join(folder, name);
  writeFileSync(file, bytes);
  return file;
}

/** The six numbers of a few rows must be the same both ways, or the two workbooks are not comparable. */
async function compare() {
  const functions = await builtFunctions(path.join(root, 'dist'));
  const [a, b] = await Promise.all(
    [oursWorkbook(40), nativeWorkbook(40)].map(async (bytes) =>
      readSheetValues((await recalculateWorkbook(bytes, functions)).bytes, 'Parts'),
    ),
  );
  a.forEach((row, at) =>
    row.forEach((value, column) => {
      const other = b[at][column];
      if (Math.abs(value - other) > 1e-4 * Math.abs(other)) {
        throw new Error(
          `row ${at + 1}, column ${column + 1}: ${value} by our functions, ${other} by native formulas`,
        );
      }
    }),
  );
}

await compare();
desktop(write('warm.xlsx', nativeWorkbook(10)));
const option = process.argv.indexOf('--rows');
const sizes = option > 0 ? process.argv[option + 1].split(',').map(Number) : [1000, 10_000, 100_000];
const perRow = [];
for (const rows of sizes) {
  const oursFile = write(`ours-${rows}.xlsx`, oursWorkbook(rows));
  const nativeFile = write(`native-${rows}.xlsx`, nativeWorkbook(rows));
  const runs = rows > 50_000 ? 1 : repeats;
  const ours = [];
  const native = [];
  const office = [];
  // Taken in turns, so that a busy spell of the machine meets all of them.
  for (let run = 0; run < runs; run++) {
    ours.push(command(oursFile));
    native.push(command(nativeFile));
    office.push(desktop(nativeFile));
  }
  const desktopTime = office.includes(undefined) ? undefined : best(office);
  perRow.push({ rows, calculate: best(ours) });
  console.log(`${rows} rows × 6 functions, start to end: ${seconds(best(ours))}`);
  console.log(`  to the same numbers by native formulas here: ${(best(ours) / best(native)).toFixed(2)}`);
  console.log(
    desktopTime === undefined
      ? '  no headless desktop spreadsheet on this machine to compare with'
      : `  to a headless desktop spreadsheet on the native workbook (${seconds(desktopTime)}): ${(best(ours) / desktopTime).toFixed(2)}`,
  );
}

// What each further row costs, which leaves start-up out.
const growth = perRow.slice(1).map(({ rows, calculate }, at) => {
  const before = perRow[at];
  return { from: before.rows, to: rows, each: (calculate - before.calculate) / (rows - before.rows) };
});
for (const { from, to, each } of growth)
  console.log(`each row from ${from} to ${to}: ${(each * 1000).toFixed(0)} µs`);
if (growth.length > 1)
  console.log(`ratio of the last to the first: ${(growth.at(-1).each / growth[0].each).toFixed(2)}`);
