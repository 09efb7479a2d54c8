// npm run reference: writes the pages of docs/ that are made from the code.
import { rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensure, root } from './ensure.mjs';
import { exampleResults, formatted, generatedPages } from './reference/pages.mjs';

ensure({ development: true });
const { default: webpack } = await import('webpack');
const { default: prettier } = await import('prettier');
const { default: configurations } = await import('../webpack.config.mjs');
const { calc } = await import('../dist/headless.mjs');

/** The sources as one module this program can load. */
async function bundledSources() {
  const folder = path.join(root, 'out', `reference-${process.pid}`);
  const node = configurations.find(({ name }) => name === 'headless');
  const entry = { sources: path.join(root, 'scripts/reference/sources.ts') };
  const configuration = { ...node, entry, output: { ...node.output, path: folder } };
  const stats = await new Promise((resolve, reject) =>
    webpack(configuration, (error, result) => (error ? reject(error) : resolve(result))),
  );
  if (stats.hasErrors()) throw new Error(stats.toString('errors-only'));
  try {
    return await import(pathToFileURL(path.join(folder, 'sources.mjs')).href);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const sources = await bundledSources();
const quote = path.join(root, 'examples', 'quote.xlsx');
const results = await exampleResults(calc, sources, quote);
for (const [name, text] of Object.entries(generatedPages(sources, results))) {
  writeFileSync(path.join(root, 'docs', name), await formatted(text, prettier, root));
  console.log(`Wrote docs/${name}`);
}
