// Loads a TypeScript source into a script of Node, bundled in memory.
import path from 'node:path';
import { root } from './ensure.mjs';

export async function loadSource(file) {
  const { build } = await import('esbuild');
  const { outputFiles } = await build({
    entryPoints: [path.join(root, file)],
    bundle: true,
    platform: 'node',
    format: 'esm',
    write: false,
    logLevel: 'error',
  });
  const text = Buffer.from(outputFiles[0].contents).toString('base64');
  return await import(`data:text/javascript;base64,${text}`);
}
