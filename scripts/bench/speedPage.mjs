// The page docs/speed.md, from what one run of the bench has measured.
import os from 'node:os';
import path from 'node:path';
import { root } from '../ensure.mjs';
import { measured } from './measured.mjs';

const number = (value) => value.toLocaleString('en-US');
const seconds = (value) => `${value.toFixed(value < 10 ? 2 : 1)} s`;
const size = (mb) => (mb < 1000 ? `${mb.toFixed(0)} MB` : `${(mb / 1024).toFixed(1)} GB`);
const line = (cells) => `| ${cells.join(' | ')} |`;
const table = (heads, rows) => [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');

const met = (value, aim) =>
  aim === undefined ? '' : ` (aim ${aim}: ${value <= aim ? 'met' : '**missed**'})`;

/** What each further row costs of the processor, in µs: start-up left out. */
function perRow(results) {
  return results.slice(1).map(({ title, rows, blank }, at) => {
    const before = results[at];
    if (before.title !== title) return undefined;
    return [
      title,
      number(before.rows),
      number(rows),
      (((blank.cpu - before.blank.cpu) / (rows - before.rows)) * 1e6).toFixed(0),
    ];
  });
}

async function desktopVersion() {
  const { spawnSync } = await import('node:child_process');
  return spawnSync('soffice', ['--version'], { encoding: 'utf8' }).stdout?.trim();
}

/** Start-up: one formula, against a Node that does nothing. */
async function startUp(runs) {
  const calc = path.join(root, 'dist', 'headless.mjs');
  const program = `const { calc } = await import(${JSON.stringify(calc)}); process.exitCode = await calc(['=1+1']);`;
  const ratios = [];
  for (let run = 0; run < runs; run++) {
    const ours = await measured(process.execPath, ['--input-type=module', '-e', program]);
    const bare = await measured(process.execPath, ['-e', '0']);
    ratios.push(ours.wall / bare.wall);
  }
  return ratios.sort((a, b) => a - b)[runs >> 1];
}

/** The page's text. */
export async function measuredPage(results, runs) {
  const [cpu] = os.cpus();
  const against = results.filter(({ theirs }) => theirs);
  const lost = against.filter(({ ratios }) => ratios.wall > 1 || ratios.peakMb > 1);
  const start = await startUp(7);
  const desktop = (await desktopVersion()) ?? 'none on this machine';
  const text = `# How fast it is

Made by \`npm run bench:recalc -- --page\`, nothing in it is typed by hand. Every figure is the median of ${runs} runs of a
whole process, from start to the written file, in turns with what it is compared with. No row of a workbook is like another.

${os.cpus().length} processors (${cpu?.model.trim() ?? 'unknown'}), ${Math.round(os.totalmem() / 2 ** 30)} GB, ${os.type()} ${os.release()}, Node ${process.version}.
Desktop spreadsheet: ${desktop}.

## Against a desktop spreadsheet

The same six numbers in each row: by our functions here, by native formulas there, both without stored values. Ratios are ours
to theirs: below 1 we are faster, or take less memory.

${table(
  ['Rows', 'Ours', 'Theirs', 'Time', 'Processor', 'Memory', 'Cells compared', 'Different'],
  against.map(({ rows, blank, theirs, ratios, aim, different }) => [
    number(rows),
    `${seconds(blank.wall)}, ${size(blank.peakMb)}`,
    `${seconds(theirs.wall)}, ${size(theirs.peakMb)}`,
    ratios.wall.toFixed(2) + met(ratios.wall, aim?.time),
    ratios.cpu.toFixed(2),
    ratios.peakMb.toFixed(2) + met(ratios.peakMb, aim?.memory),
    number(different.compared),
    number(different.cells.length),
  ]),
)}

Where we lose: ${
    lost.length === 0
      ? 'in none of these.'
      : lost
          .map(({ rows, ratios }) =>
            [
              ratios.wall > 1 ? `time at ${number(rows)} rows (${ratios.wall.toFixed(2)})` : '',
              ratios.peakMb > 1 ? `memory at ${number(rows)} rows (${ratios.peakMb.toFixed(2)})` : '',
            ]
              .filter(Boolean)
              .join(', '),
          )
          .join('; ') + '.'
  }

## All workbooks

\`Nothing stored\` is a file without values; \`all stored\` is its result, recalculated once more.

${table(
  [
    'Workbook',
    'Rows',
    'Nothing stored',
    'of the processor',
    'Peak memory',
    'All stored',
    'of the processor',
    'Peak memory',
  ],
  results.map(({ title, rows, blank, full }) => [
    title,
    number(rows),
    seconds(blank.wall),
    seconds(blank.cpu),
    size(blank.peakMb),
    seconds(full.wall),
    seconds(full.cpu),
    size(full.peakMb),
  ]),
)}

## What each further row costs

Processor time without start-up, nothing stored.

${table(['Workbook', 'From row', 'to row', 'µs a row'], perRow(results).filter(Boolean))}

## Start-up

One formula without functions takes ${start.toFixed(1)} times as long as a Node that does nothing (aim 3: ${start <= 3 ? 'met' : '**missed**'}).
`;
  const { format, resolveConfig } = await import('prettier');
  const config = await resolveConfig(path.join(root, 'docs', 'speed.md'));
  return format(text, { ...config, parser: 'markdown' });
}
