// The licenses of the packages a bundle contains, as their authors ask for.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

const packageFolder = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/;

/** The folders of the packages whose modules a compilation holds, each once, in order of name. */
function packagesOf(compilation) {
  const folders = new Set();
  for (const module of compilation.modules) {
    const folder = packageFolder.exec(module.resource ?? '')?.[1];
    if (folder !== undefined) folders.add(folder);
  }
  return [...folders].sort();
}

/** One text with the name, version and license of every package of a compilation. Throws where one has none. */
export function licensesOf(compilation) {
  return packagesOf(compilation)
    .map((folder) => {
      const { name, version, license } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
      const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
      if (file === undefined && typeof license !== 'string') throw new Error(`${name} states no license`);
      const text = file === undefined ? license : readFileSync(path.join(folder, file), 'utf8').trim();
      return `${name} ${version}\n\n${text}\n`;
    })
    .join('\n---\n\n');
}
