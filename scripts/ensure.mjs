// What every command needs before it can run: the packages, and a build no older than its sources.
import { spawnSync } from 'node:child_process';
import { existsSync, lstatSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';

export const root = path.resolve(import.meta.dirname, '..');
const inRoot = (...parts) => path.join(root, ...parts);

/** Runs a command, its output on standard error so that a command's own output stays clean. */
export function run(command, args, options = {}) {
  const result = spawnSync(command, args, { cwd: root, stdio: ['ignore', 2, 2], ...options });
  if (result.error) throw result.error;
  return result.status ?? 1;
}

function modified(file) {
  return statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

function newest(folder) {
  let latest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const file = path.join(folder, entry.name);
    latest = Math.max(latest, entry.isDirectory() ? newest(file) : modified(file));
  }
  return latest;
}

/** Only development packages: where it lies, they were installed too. */
const developmentMark = 'node_modules/vitest';

/** Whether every package of the lock file lies in node_modules in its version; what is optional may be missing. */
function isInstalled(whole) {
  const record = inRoot('node_modules/.package-lock.json');
  if (!existsSync(record)) return false;
  const packages = (file) => JSON.parse(readFileSync(file, 'utf8')).packages;
  const installed = packages(record);
  return Object.entries(packages(inRoot('package-lock.json'))).every(
    ([folder, { version, optional, dev, devOptional, peer }]) =>
      folder === '' ||
      optional ||
      (!whole && (dev || devOptional)) ||
      (peer && !installed[folder]) ||
      installed[folder]?.version === version,
  );
}

/**
 * Installs the packages where they are missing or not those of the lock file. What only tests, browsers and
 * side-loading need is left out unless `development` is set, or it was installed before.
 */
export function ensurePackages({ development = false } = {}) {
  const whole = development || existsSync(inRoot(developmentMark));
  if (isInstalled(whole)) return;
  // npm would empty the folder behind a link, which others work with.
  if (lstatSync(inRoot('node_modules'), { throwIfNoEntry: false })?.isSymbolicLink()) {
    console.error(
      'The packages of node_modules are not those of package-lock.json, and node_modules is a link: install them in the folder it points to, or remove the link.',
    );
    process.exit(1);
  }
  console.error('Installing packages (up to a minute on a first run) …');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const omit = whole ? [] : ['--omit=dev'];
  const status = run(npm, ['ci', ...omit, '--no-audit', '--no-fund', '--loglevel', 'error'], {
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    console.error(
      'The packages could not be installed: npm ci ended with an error (above). Check the network and try again.',
    );
    process.exit(1);
  }
}

/** The files of a complete build; the oldest of them dates it. */
const built = [
  'functions.js',
  'functions.json',
  'planner.js',
  'highs.wasm',
  'headless.mjs',
  'calc.mjs',
  'planner.mjs',
  'batch.mjs',
  'manifest.xml',
];

export function ensureBuild() {
  const oldest = Math.min(...built.map((file) => modified(inRoot('dist', file))));
  const sources = Math.max(
    ...['src', 'manifest', 'scripts'].map((folder) => newest(inRoot(folder))),
    ...['webpack.config.mjs', 'package-lock.json'].map((file) => modified(inRoot(file))),
  );
  if (oldest > sources) return;
  if (run(process.execPath, [inRoot('scripts/build.mjs')]) !== 0) {
    console.error('The build failed (above).');
    process.exit(1);
  }
}

export function ensure(options) {
  ensurePackages(options);
  ensureBuild();
}
