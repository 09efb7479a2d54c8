// npm run bench: builds the page where the example quote is open in a grid, and serves it on this machine.
// `--once` builds it and ends; `--port 8080` takes that port.
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensure, root } from './ensure.mjs';
import { serve } from './serve.mjs';

export const benchFolder = path.join(root, 'out', 'page');
const inRoot = (...parts) => path.join(root, ...parts);

/** The page is one script, and what it fetches: the functions as the add-in ships them, and the example. */
const copied = [
  ['src/bench/page/index.html', 'index.html'],
  ['dist/functions.js', 'functions.js'],
  ['dist/functions.json', 'functions.json'],
  ['dist/planner.js', 'planner.js'],
  ['dist/highs.wasm', 'highs.wasm'],
  ['dist/icons', 'icons'],
  ['examples/quote.xlsx', 'quote.xlsx'],
];

/** Builds the page where it is older than its sources. */
export async function buildBench() {
  // The pane and its tools are packages that only this page needs.
  ensure({ development: true });
  if (isFresh()) return;
  const work = inRoot('out', `page-${process.pid}`);
  mkdirSync(work, { recursive: true });
  process.env.TONROW_BENCH = work;
  const { default: webpack } = await import('webpack');
  const { default: config } = await import('../webpack.bench.config.mjs');
  const { emptyWorkbook } = await import('../examples/build/workbook.mjs');
  const stats = await new Promise((resolve, reject) =>
    webpack(config, (error, result) => (error ? reject(error) : resolve(result))),
  );
  if (stats.hasErrors() || stats.hasWarnings()) console.error(stats.toString('errors-warnings'));
  if (stats.hasErrors()) {
    rmSync(work, { recursive: true, force: true });
    throw new Error('The bench page was not built (above).');
  }
  for (const [from, to] of copied) cpSync(inRoot(from), path.join(work, to), { recursive: true });
  writeFileSync(path.join(work, 'empty.xlsx'), emptyWorkbook());
  rmSync(benchFolder, { recursive: true, force: true });
  renameSync(work, benchFolder);
  console.error('Built the bench page.');
}

function isFresh() {
  const script = path.join(benchFolder, 'bench.js');
  if (!existsSync(script)) return false;
  const sources = [
    'src',
    'dist/functions.js',
    'dist/planner.js',
    'examples/quote.xlsx',
    'examples/build',
    'webpack.bench.config.mjs',
    'package-lock.json',
  ];
  return statSync(script).mtimeMs > Math.max(...sources.map((source) => newest(inRoot(source))));
}

function newest(file) {
  const found = statSync(file);
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(0, ...readdirSync(file).map((name) => newest(path.join(file, name))));
}

/** Builds the page, serves it until it is stopped, and says where. */
export async function openBench(port = 0) {
  await buildBench();
  const { address } = await serve(benchFolder, port);
  console.log(`The bench is open at ${address} (end with Ctrl+C).`);
}

/** A port that cannot be had is no fault of ours. */
function sayWhy(port) {
  return (error) => {
    if (error.code !== 'EADDRINUSE' && error.code !== 'EACCES') throw error;
    const why = error.code === 'EACCES' ? 'may not be taken' : 'is in use';
    console.error(`The port ${port} ${why}: name another one with --port, or none.`);
    process.exitCode = 1;
  };
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const at = process.argv.indexOf('--port');
  const port = at < 0 ? 0 : Number(process.argv[at + 1] || Number.NaN);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    console.error(`--port takes a number from 0 to 65535, not ${process.argv[at + 1] ?? 'nothing'}.`);
    process.exitCode = 2;
  } else if (process.argv.includes('--once')) await buildBench();
  else await openBench(port).catch(sayWhy(port));
}
