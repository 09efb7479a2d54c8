// Runs a module while the bundle is built and leaves only its exported numbers. The unit library is 60 KB packed and
// is read for a handful of factors that never change.
import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

export default function constantsLoader() {
  const done = this.async();
  constants(this.resourcePath).then((source) => done(null, source), done);
}

async function constants(file) {
  // Inside the project, so that its packages are found from there.
  const folder = path.join(import.meta.dirname, '..', '..', 'out', `constants-${process.pid}`);
  mkdirSync(folder, { recursive: true });
  const outfile = path.join(folder, `${path.basename(file, '.ts')}.mjs`);
  try {
    await build({
      entryPoints: [file],
      outfile,
      bundle: true,
      format: 'esm',
      packages: 'external',
      logLevel: 'error',
    });
    const values = await import(pathToFileURL(outfile).href);
    return Object.entries(values)
      .map(([name, value]) => {
        if (typeof value !== 'number' || !Number.isFinite(value))
          throw new Error(`${file}: ${name} is no finite number`);
        return `export const ${name} = ${value};`;
      })
      .join('\n');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
