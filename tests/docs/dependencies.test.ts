// The table of packages and their licenses, held against package.json and the lock file.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';

interface Locked {
  version?: string;
  license?: string;
  dependencies?: Record<string, string>;
  peerDependencies?: Record<string, string>;
}

const json = (file: string) => JSON.parse(readFileSync(path.join(root, file), 'utf8')) as unknown;
const { dependencies, devDependencies } = json('package.json') as Record<string, Record<string, string>>;
const { packages } = json('package-lock.json') as { packages: Record<string, Locked> };
const named = { ...dependencies, ...devDependencies };

/** Licenses that ask for no more than to be named. */
const allowed = [
  'MIT',
  'MIT-0',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  '0BSD',
  'BlueOak-1.0.0',
  'CC0-1.0',
  'Unlicense',
  'Python-2.0',
];

/** Others, which tests, the command and the page use and nobody ships; each package by name. */
const others: Record<string, readonly string[]> = {
  'LGPL-3.0-or-later': ['@odoo/o-spreadsheet'],
  'LGPL-3.0-only': ['@odoo/owl'],
  LICENSE: ['@microsoft/office-js'],
  'CC-BY-4.0': ['caniuse-lite'],
  'MIT/X11': ['chainsaw'],
  '(OFL-1.1 AND MIT)': ['font-awesome'],
  '(MIT OR GPL-3.0-or-later)': ['jszip'],
  '(BSD-3-Clause OR GPL-2.0)': ['node-forge'],
  '(MIT AND Zlib)': ['pako'],
  unstated: ['buffers'],
};

const shippedFolders = [
  'core',
  'functions',
  'planner',
  'workbook',
  'taskpane',
  'drawing',
  'print',
  'xlsx',
  'sheet',
];

/** The packages that the sources of the add-in import by name. */
function imported(): Set<string> {
  const found = new Set<string>();
  for (const folder of shippedFolders)
    for (const file of readdirSync(path.join(root, 'src', folder), { recursive: true, encoding: 'utf8' })) {
      if (!/\.tsx?$/.test(file)) continue;
      const text = readFileSync(path.join(root, 'src', folder, file), 'utf8');
      for (const [, name] of text.matchAll(/(?:from|import\(|import) ?'((?:@[\w.-]+\/)?[\w-][\w.-]*)/g))
        if (name !== undefined && name in named) found.add(name);
    }
  return found;
}

/** These packages and all that they need, as folders of the lock file. */
function closure(names: Iterable<string>): string[] {
  const open = [...names].map((name) => `node_modules/${name}`);
  const known = new Set<string>();
  for (let folder = open.pop(); folder !== undefined; folder = open.pop()) {
    if (known.has(folder)) continue;
    known.add(folder);
    const { dependencies: needs = {}, peerDependencies: peers = {} } = packages[folder] ?? {};
    for (const need of [...Object.keys(needs), ...Object.keys(peers)]) {
      const nested = `${folder}/node_modules/${need}`;
      const place = packages[nested] ? nested : `node_modules/${need}`;
      if (packages[place]) open.push(place);
    }
  }
  return [...known];
}

const rows = new Map(
  readFileSync(path.join(root, 'DEVELOPERS.md'), 'utf8')
    .split('\n')
    .map((line) => line.split('|').map((cell) => cell.trim()))
    .filter((cells) => cells.length === 8 && /^`[@a-z]/.test(cells[1] ?? ''))
    .map(([, name = '', ...rest]) => [name.replaceAll('`', ''), rest] as const),
);

describe('the packages', () => {
  it('each stand in DEVELOPERS.md with use, reason, license, size, and what leaving them would take', () => {
    expect([...rows.keys()].sort()).toEqual(Object.keys(named).sort());
    for (const [name, [use, why, license, size, leaving]] of rows) {
      for (const cell of [use, why, leaving])
        expect([name, cell]).toEqual([name, expect.stringMatching(/\w/)]);
      expect([name, size]).toEqual([name, expect.stringMatching(/^[\d.]+ [KM]B$/)]);
      const stated = packages[`node_modules/${name}`]?.license;
      if (stated !== 'LICENSE') expect([name, license]).toEqual([name, stated]);
    }
  });

  it('of the add-in ask for no more than to be named, with all that they need', () => {
    const shipped = imported();
    expect([...shipped]).toEqual(expect.arrayContaining(['react', 'fflate', 'highs', 'fastest-levenshtein']));
    for (const folder of closure(shipped))
      expect([folder, packages[folder]?.license]).toEqual([folder, expect.toBeOneOf(allowed)]);
    for (const name of shipped)
      expect([name, rows.get(name)?.[0]]).toEqual([name, expect.stringMatching(/add-in|pane/)]);
  });

  it('have licenses that are known', () => {
    for (const [folder, { license = 'unstated' }] of Object.entries(packages)) {
      if (folder === '' || allowed.includes(license) || license === 'MPL-2.0') continue;
      expect([license, others[license]]).toEqual([
        license,
        expect.arrayContaining([folder.replace(/.*node_modules\//, '')]),
      ]);
    }
  });

  it.each([
    'mathjs',
    'highs',
    'js-quantities',
    '@noble/hashes',
    '@odoo/o-spreadsheet',
    '@flatten-js/core',
    'polygon-clipping',
    'd3-polygon',
  ])('%s has one exact version: another may change numbers', (name) =>
    expect(named[name]).toBe(packages[`node_modules/${name}`]?.version),
  );

  it('are named in the lock file as in package.json', () => {
    const locked = packages[''] as { dependencies: object; devDependencies: object };
    expect(locked.dependencies).toEqual(dependencies);
    expect(locked.devDependencies).toEqual(devDependencies);
  });
});
