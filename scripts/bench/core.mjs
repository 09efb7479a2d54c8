// npm run bench:core: bundles core.ts and runs it.
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensurePackages, root } from '../ensure.mjs';

ensurePackages();
const { build } = await import('esbuild');
const outfile = path.join(root, 'out', 'bench-core.mjs');
await build({
  entryPoints: [path.join(root, 'scripts/bench/core.ts')],
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  outfile,
  logLevel: 'error',
});
process.chdir(root);
await import(pathToFileURL(outfile).href);
