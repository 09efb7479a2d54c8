// npm run bench:recalc [-- --rows 1000,10000] [-- --only functions] [-- --page]: recalculation end to end, as ratios
// within this run. `--page` also writes docs/speed.md.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { pathToFileURL } from 'node:url';
import { ensure, root } from '../ensure.mjs';
import { measured, median } from './measured.mjs';
import { differences } from './sameValues.mjs';
import { measuredPage } from './speedPage.mjs';
import * as workbooks from './workbooks.mjs';

const { values: options } = parseArgs({
  options: {
    rows: { type: 'string', default: '1000,10000,100000' },
    only: { type: 'string', default: '' },
    runs: { type: 'string', default: '3' },
    page: { type: 'boolean', default: false },
  },
});

/** What is measured. `aims` are the most that our time and memory may be of the desktop spreadsheet's. */
const kinds = [
  {
    name: 'functions',
    title: '6 functions a row, numbers',
    workbook: workbooks.oursWorkbook,
    rival: workbooks.nativeWorkbook,
    aims: { 10_000: { time: 0.6 }, 100_000: { time: 0.8, memory: 1.5 } },
  },
  { name: 'texts', title: '6 functions a row, texts', workbook: workbooks.textWorkbook },
  { name: 'rowcheck', title: 'ROWCHECK, 4 items a row', workbook: workbooks.rowCheckWorkbook },
  { name: 'listcheck', title: 'LISTCHECK, 3 items', workbook: workbooks.listCheckWorkbook },
];

ensure();
const folder = path.join(root, 'out', 'bench');
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const inFolder = (name) => path.join(folder, name);

const headless = pathToFileURL(path.join(root, 'dist', 'headless.mjs')).href;
const program = `const { recalc } = await import('${headless}'); process.exitCode = await recalc(process.argv.slice(1));`;

/** The recalculation in a process of its own, start-up included; the build is not looked at again. */
async function ours(file, out) {
  const args = ['--input-type=module', '-e', program, '--', file, out, '--json'];
  const run = await measured(process.execPath, args);
  if (run.status !== 0)
    throw new Error(`recalc of ${path.basename(file)} ended with ${run.status}: ${run.said}`);
  return run;
}

/** A headless desktop spreadsheet that opens, calculates and saves a workbook; undefined without one. */
async function desktop(file) {
  const profile = `-env:UserInstallation=file://${inFolder('profile')}`;
  const filter = ['--convert-to', 'xlsx:Calc MS Excel 2007 XML', '--outdir', inFolder('desktop')];
  const run = await measured('soffice', [profile, '--headless', ...filter, file]);
  return run?.status === 0 ? run : undefined;
}

function write(name, bytes) {
  writeFileSync(inFolder(name), bytes);
  return inFolder(name);
}

const middle = (runs) => ({
  wall: median(runs.map(({ wall }) => wall)),
  cpu: median(runs.map(({ cpu }) => cpu)),
  peakMb: median(runs.map(({ peakMb }) => peakMb)),
});

/** Runs in turns, so that a busy spell of the machine meets all of them; ratios are of runs beside each other. */
async function compared({ name, workbook, rival }, rows) {
  const file = write(`${name}-${rows}.xlsx`, workbook(rows));
  const out = inFolder(`${name}-${rows}.out.xlsx`);
  const rivalFile = rival && write(`rival-${rows}.xlsx`, rival(rows));
  const [blank, full, theirs] = [[], [], []];
  for (let run = 0; run < Number(options.runs); run++) {
    blank.push(await ours(file, out));
    full.push(await ours(out, inFolder('again.xlsx')));
    const other = rivalFile && (await desktop(rivalFile));
    if (other) theirs.push(other);
  }
  const result = { rows, blank: middle(blank), full: middle(full) };
  if (theirs.length === 0) return result;
  const ratio = (key) => median(theirs.map((other, at) => blank[at][key] / other[key]));
  const ratios = { wall: ratio('wall'), cpu: ratio('cpu'), peakMb: ratio('peakMb') };
  const different = await differences(
    readFileSync(out),
    readFileSync(inFolder(`desktop/rival-${rows}.xlsx`)),
  );
  return { ...result, theirs: middle(theirs), ratios, different };
}

const shown = ({ wall, cpu, peakMb }) =>
  `${wall.toFixed(2)} s, ${cpu.toFixed(2)} s of the processor, ${peakMb.toFixed(0)} MB`;

function tell({ blank, full, theirs, ratios, different }, aim) {
  console.log(`  nothing stored yet: ${shown(blank)}`);
  console.log(`  all values stored:  ${shown(full)}`);
  if (!theirs) return;
  console.log(`  desktop spreadsheet: ${shown(theirs)}`);
  const against = (what, least) =>
    least === undefined ? '' : ` (aim ${least}: ${what <= least ? 'met' : 'missed'})`;
  console.log(
    `  ours to it: time ${ratios.wall.toFixed(2)}${against(ratios.wall, aim?.time)}, processor ${ratios.cpu.toFixed(2)}, memory ${ratios.peakMb.toFixed(2)}${against(ratios.peakMb, aim?.memory)}`,
  );
  console.log(`  cells compared with it: ${different.compared}, different: ${different.cells.length}`);
  for (const one of different.cells.slice(0, 5)) console.log(`    ${one}`);
  if (different.cells.length > 0) process.exitCode = 1;
}

await desktop(write('warm.xlsx', workbooks.nativeWorkbook(10)));
const results = [];
for (const kind of kinds.filter(
  ({ name }) => options.only === '' || options.only.split(',').includes(name),
)) {
  for (const rows of options.rows.split(',').map(Number)) {
    console.log(`${kind.title}, ${rows} rows`);
    const result = await compared(kind, rows);
    tell(result, kind.aims?.[rows]);
    results.push({ title: kind.title, aim: kind.aims?.[rows], ...result });
  }
}
if (options.page)
  writeFileSync(path.join(root, 'docs', 'speed.md'), await measuredPage(results, Number(options.runs)));
