// The whole add-in in one folder: the build, and the pane, which needs the development packages.
import { cpSync, existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ensure, root } from '../ensure.mjs';
import { licensesOf } from '../webpack/licenses.mjs';

/** Assembles out/addin anew and returns it. Throws where the pane cannot be built. */
export async function assembleAddIn() {
  ensure({ development: true });
  const target = path.join(root, 'out', 'addin');
  const work = `${target}-${process.pid}`;
  mkdirSync(path.dirname(work), { recursive: true });
  await buildPane(work);
  cpSync(path.join(root, 'dist'), work, { recursive: true });
  if (existsSync(target)) rmSync(target, { recursive: true });
  renameSync(work, target);
  return target;
}

async function buildPane(output) {
  const { default: webpack } = await import('webpack');
  const { paneConfig } = await import('../../webpack.pane.config.mjs');
  const stats = await new Promise((resolve, reject) =>
    webpack(paneConfig({ output, chunkNames: '[name].[contenthash:12].js' }), (error, result) =>
      error ? reject(error) : resolve(result),
    ),
  );
  if (stats.hasErrors()) {
    rmSync(output, { recursive: true, force: true });
    throw new Error(stats.toString('errors-warnings'));
  }
  writeFileSync(path.join(output, 'pane.js.LICENSE.txt'), licensesOf(stats.compilation));
}
