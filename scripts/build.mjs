// Builds dist/: the functions bundle, its metadata, the planner, the headless command and the manifest.
// Everything is written beside dist/ first and moved into place whole.
import { cpSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { ensurePackages, root } from './ensure.mjs';
import { localAddress } from './manifest/address.mjs';
import { fillManifest } from './manifest/fill.mjs';
import { licensesOf } from './webpack/licenses.mjs';

ensurePackages();
const target = path.join(root, 'dist');
const work = path.join(root, 'out', `build-${process.pid}`);
mkdirSync(work, { recursive: true });
process.env.TONROW_DIST = work;

const { default: webpack } = await import('webpack');
const { default: config } = await import('../webpack.config.mjs');

const stats = await new Promise((resolve, reject) =>
  webpack(config, (error, result) => (error ? reject(error) : resolve(result))),
);
if (stats.hasErrors() || stats.hasWarnings()) console.error(stats.toString('errors-warnings'));
if (stats.hasErrors()) {
  rmSync(work, { recursive: true, force: true });
  process.exit(1);
}

const metadataFile = path.join(work, 'metadata.mjs');
const { functionsMetadata } = await import(pathToFileURL(metadataFile).href);
writeFileSync(path.join(work, 'functions.json'), JSON.stringify(functionsMetadata(), null, 2) + '\n');
rmSync(metadataFile);
copyManifest();
copySolver();
for (const name of ['functions', 'planner']) {
  const { compilation } = stats.stats.find((bundle) => bundle.compilation.name === name);
  writeFileSync(path.join(work, `${name}.js.LICENSE.txt`), licensesOf(compilation));
}

rmSync(target, { recursive: true, force: true });
renameSync(work, target);
console.error('Built dist/.');

/** The planner's script fetches the solver from beside it, when there is something to plan. */
function copySolver() {
  cpSync(fileURLToPath(import.meta.resolve('highs/runtime')), path.join(work, 'highs.wasm'));
}

/** Pages and icons as they are, and the manifest with the address of this machine. */
function copyManifest() {
  const source = path.join(root, 'manifest');
  for (const name of ['icons', 'pages.css', 'support.html', 'taskpane.html'])
    cpSync(path.join(source, name), path.join(work, name), { recursive: true });
  const template = readFileSync(path.join(source, 'manifest.xml'), 'utf8');
  writeFileSync(path.join(work, 'manifest.xml'), fillManifest(template, localAddress));
}
