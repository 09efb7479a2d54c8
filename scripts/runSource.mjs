// Bundles a TypeScript script for Node and runs it, from the root of the project.
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './ensure.mjs';

export async function runSource(file) {
  const { build } = await import('esbuild');
  const outfile = path.join(root, 'out', `${path.basename(file, '.ts')}.run.mjs`);
  await build({
    entryPoints: [path.join(root, file)],
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    outfile,
    logLevel: 'error',
  });
  process.chdir(root);
  await import(pathToFileURL(outfile).href);
}
