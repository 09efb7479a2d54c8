// Builds dist/: the functions bundle, its metadata, the headless command and the manifest.
// Everything is written beside dist/ first and moved into place whole.
import { cpSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensurePackages, root } from './ensure.mjs';

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
cpSync(path.join(root, 'manifest'), work, { recursive: true });

rmSync(target, { recursive: true, force: true });
renameSync(work, target);
console.error('Built dist/.');
