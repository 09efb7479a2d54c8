import { createHash } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { manifestProblems, parseManifest } from '../../scripts/manifest/check.mjs';
import { manifestAddresses } from '../../scripts/manifest/checkAddresses.mjs';
import { HttpsHost, readHeaders } from './support/httpsHost.js';
import { packagedFor } from './support/packaged.js';

let host: HttpsHost;

beforeAll(async () => {
  host = await HttpsHost.start('/tonrow');
  host.files = await packagedFor(host.address);
});

afterAll(() => host?.close());

const text = (file: string) => host.files.get(file)?.toString('utf8') ?? '';
const manifest = () => text('manifest.xml');
const pages = () => [...host.files.keys()].filter((name) => name.endsWith('.html'));
const hashed = /\.([0-9a-f]{12})\.\w+$/;

/** What the pages refer to: tag, and file or address. */
const references = () =>
  pages().flatMap((page) =>
    [...text(page).matchAll(/(?:src|href)="([^"]+)"/g)].map(([, target]) => target ?? ''),
  );

describe('the package', () => {
  it('answers over HTTPS with every file the manifest and the pages name', async () => {
    const own = references().filter((target) => !target.startsWith('https:'));
    const addresses = [
      ...(manifestAddresses(parseManifest(manifest())) as string[]),
      ...own.map((target) => `${host.address}/${target}`),
      `${host.address}/manifest.xml`,
    ];
    expect(addresses.length).toBeGreaterThan(12);
    for (const address of addresses) {
      const { status, headers, body } = await host.fetch(address);
      expect(status, address).toBe(200);
      expect(body.length, address).toBeGreaterThan(0);
      expect(headers['x-content-type-options'], address).toBe('nosniff');
    }
    expect((await host.fetch(`${host.address}/headless.mjs`)).status).toBe(404);
  });

  it('has a manifest without a problem for the address of the host', () => {
    const read = (name: string) => host.files.get(name);
    expect(manifestProblems(manifest(), { address: host.address, read })).toEqual([]);
    expect(manifest()).not.toContain('localhost:3000');
  });

  it('gives scripts and styles of the pages names that hold a hash of their content', () => {
    const named = references().filter(
      (target) => /\.(?:js|css)$/.test(target) && !target.startsWith('https:'),
    );
    expect(named.length).toBeGreaterThan(2);
    for (const name of named) {
      const hash = createHash('sha256')
        .update(host.files.get(name) ?? '')
        .digest('hex');
      expect(hashed.exec(name)?.[1], name).toBe(hash.slice(0, 12));
    }
  });

  it('keeps the plain name only of what the manifest names, and of the planner, which scripts load', () => {
    const plain = [...host.files.keys()].filter((name) => /\.(?:js|css)$/.test(name) && !hashed.test(name));
    expect(plain).toEqual(['functions.js', 'planner.js']);
    expect(manifest()).toContain(`${host.address}/functions.js"`);
  });

  it('refers to nothing outside its folder but the script library of the host', () => {
    const outside = references().filter((target) => /^(?:[a-z]+:)?\/\//i.test(target));
    expect(outside).toEqual(['https://appsforoffice.microsoft.com/lib/1/hosted/office.js']);
    for (const page of pages()) {
      const [, policy = ''] = /Content-Security-Policy"\s+content="([^"]+)"/.exec(text(page)) ?? [];
      expect(policy, page).toMatch(/^default-src 'none'; /);
      expect(policy, page).not.toMatch(/unsafe-inline|'unsafe-eval'|\*/);
      expect(text(page), page).not.toMatch(/<script(?![^>]*src=)|<style|\son\w+=|\sstyle=/);
    }
  });

  it('holds none of the commands, and the licenses of what its script contains', () => {
    const names = [...host.files.keys()];
    expect(names.filter((name) => name.endsWith('.mjs'))).toEqual([]);
    expect(names).toContain('functions.js.LICENSE.txt');
    expect(text('planner.js.LICENSE.txt')).toContain('highs');
    expect(names).toContain('pane.js.LICENSE.txt');
    const total = [...host.files.values()].reduce((sum, bytes) => sum + bytes.length, 0);
    expect(total).toBeLessThan(20_000_000);
  });

  it('holds the solver beside the planner, which names it, and nothing else does', () => {
    const magic = Buffer.from([0, 0x61, 0x73, 0x6d]);
    expect(host.files.get('highs.wasm')?.subarray(0, 4)).toEqual(magic);
    const naming = [...host.files.keys()].filter(
      (name) => name.endsWith('.js') && text(name).includes('highs.wasm'),
    );
    expect(naming).toEqual(['planner.js']);
    expect(text('planner.js')).not.toContain('file:///');
    expect(text('functions.js')).toContain('planner.js');
  });

  it.each([
    ['the functions', /^functions\.js$/, 192],
    ['the shell of the pane', /^pane\.[0-9a-f]{12}\.js$/, 160],
  ])('packs %s under the limit for loading', (_, name, limitKilobyte) => {
    const file = [...host.files.keys()].find((each) => name.test(each)) ?? '';
    const packed = gzipSync(host.files.get(file) ?? '').length / 1024;
    expect(packed).toBeGreaterThan(10);
    expect(packed).toBeLessThanOrEqual(limitKilobyte);
  });

  it('is the same for the same build', async () => {
    const again = await packagedFor(host.address);
    expect([...again.keys()]).toEqual([...host.files.keys()]);
    for (const [name, bytes] of again)
      expect(bytes.equals(host.files.get(name) ?? Buffer.alloc(0))).toBe(true);
  });
});

describe('the example of response headers', () => {
  const of = (name: string) => readHeaders(text('headers.example.txt'), `/tonrow/${name}`);

  it('gives every file the policy of the pane', () => {
    const [, policy] = /Content-Security-Policy"\s+content="([^"]+)"/.exec(text('taskpane.html')) ?? [];
    expect(policy).toContain("'wasm-unsafe-eval'");
    for (const name of host.files.keys()) expect(of(name)['Content-Security-Policy'], name).toBe(policy);
  });

  it('lets only names with a hash be kept for ever, and icons for a day: hosts replace icons they may not keep', () => {
    for (const name of host.files.keys()) {
      const icon = name.startsWith('icons/') ? 'public, max-age=86400' : 'no-cache';
      const keep = hashed.test(name) ? 'public, max-age=31536000, immutable' : icon;
      expect(of(name)['Cache-Control'], name).toBe(keep);
    }
  });

  it('lets the web host read the metadata of the functions, and no other file', () => {
    const open = [...host.files.keys()].filter((name) => of(name)['Access-Control-Allow-Origin']);
    expect(open).toEqual(['functions.json']);
  });

  it('names only paths that are there', () => {
    const paths = text('headers.example.txt').match(/^\/.*$/gm) ?? [];
    const missing = paths
      .filter((each) => !each.endsWith('*'))
      .filter((each) => !host.files.has(path.posix.relative('/tonrow', each)));
    expect(missing).toEqual([]);
  });
});
