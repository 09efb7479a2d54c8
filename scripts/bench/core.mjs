// npm run bench:core [-- --against COMMIT]: what a row check costs, as ratios within one run.
import { execFileSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { ensurePackages, root } from '../ensure.mjs';
import { runSource } from '../runSource.mjs';

ensurePackages();
const { values } = parseArgs({ options: { against: { type: 'string' } } });
const { build } = await import('esbuild');

/** The row check of a source tree as one module. */
async function bundle(sources, outfile) {
  await build({
    stdin: {
      contents: ['checkRow', 'readHeadings', 'readShop']
        .map((name) => `export { ${name} } from './${name === 'readShop' ? 'shop' : 'row'}/${name}.js';`)
        .join('\n'),
      resolveDir: path.join(sources, 'src/core'),
      loader: 'ts',
    },
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    outfile,
    logLevel: 'error',
  });
}

const out = path.join(root, 'out/bench');
mkdirSync(out, { recursive: true });
await bundle(root, path.join(out, 'own.mjs'));
if (values.against) {
  const old = path.join(out, 'against');
  rmSync(old, { recursive: true, force: true });
  mkdirSync(old);
  const archive = execFileSync('git', ['archive', values.against, 'src'], {
    cwd: root,
    maxBuffer: 1e9,
  });
  execFileSync('tar', ['-x', '-C', old], { input: archive });
  await bundle(old, path.join(out, 'old.mjs'));
  process.env.BENCH_AGAINST = values.against;
}
await runSource('scripts/bench/core.ts');
