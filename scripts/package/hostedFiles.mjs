import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fillManifest } from '../manifest/fill.mjs';
import { headersExample } from './headersExample.mjs';

/**
 * The files to host, by name, from a build. Pages refer to their scripts and styles by names that hold a hash of
 * the content, so that no cache shows an old one. What the manifest names keeps its name, and so does what scripts
 * load: the bundler gives those names their hash.
 */
export function hostedFiles(dist, template, address) {
  const built = readFolder(dist);
  const manifest = fillManifest(template, address);
  const hashed = new Map();
  for (const name of namedInPages(built)) {
    if (built.has(name) && /\.(?:js|css)$/.test(name)) hashed.set(name, hashedName(name, built.get(name)));
  }
  const files = new Map([['manifest.xml', Buffer.from(manifest)]]);
  for (const [name, bytes] of built) {
    if (name.endsWith('.html')) files.set(name, Buffer.from(withNames(bytes.toString('utf8'), hashed)));
    else {
      if (hashed.has(name)) files.set(hashed.get(name), bytes);
      if (!hashed.has(name) || manifest.includes(`${address}/${name}"`)) files.set(name, bytes);
    }
  }
  const kept = [...files.keys()].filter((name) => withHash.test(name));
  files.set('headers.example.txt', Buffer.from(headersExample(files, kept, address)));
  return files;
}

/** Names of ours and of the bundler that change with their content, so that a cache may keep them for ever. */
const withHash = /\.[0-9a-f]{12}\.\w+$/;

/** What a browser may load: everything but the commands of this machine and the manifest. */
function readFolder(folder) {
  const names = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, '/'))
    .filter((name) => !name.endsWith('.mjs') && name !== 'manifest.xml')
    .sort();
  return new Map(names.map((name) => [name, readFileSync(path.join(folder, name))]));
}

const reference = /(src|href)="([^":]+)"/g;

function namedInPages(built) {
  return [...built]
    .filter(([name]) => name.endsWith('.html'))
    .flatMap(([, bytes]) => [...bytes.toString('utf8').matchAll(reference)].map(([, , name]) => name));
}

function hashedName(name, bytes) {
  const hash = createHash('sha256').update(bytes).digest('hex').slice(0, 12);
  const { dir, name: base, ext } = path.posix.parse(name);
  return path.posix.join(dir, `${base}.${hash}${ext}`);
}

function withNames(page, hashed) {
  return page.replace(reference, (whole, attribute, name) =>
    hashed.has(name) ? `${attribute}="${hashed.get(name)}"` : whole,
  );
}
