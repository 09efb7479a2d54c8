import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request, type Server } from 'node:https';
import type { AddressInfo } from 'node:net';
import os from 'node:os';
import path from 'node:path';
import certificates from 'office-addin-dev-certs';
import settings from 'office-addin-dev-settings';
import { generate } from 'selfsigned';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { serveFolder } from '../../scripts/sideload/localHost.mjs';
import { hasSpreadsheetHost, noHost } from '../../scripts/sideload/machine.mjs';

const machine = (platform: NodeJS.Platform, found: string[]) => ({
  platform,
  exists: (file: unknown) => found.includes(String(file)),
  hasRegistryKey: (key: string) => found.includes(key),
});

describe('side-loading', () => {
  it.each<[NodeJS.Platform, string[], boolean]>([
    ['linux', [], false],
    ['linux', ['/Applications/Microsoft Excel.app'], false],
    ['darwin', [], false],
    ['darwin', ['/Applications/Microsoft Excel.app'], true],
    ['darwin', [`${os.homedir()}/Applications/Microsoft Excel.app`], true],
    ['win32', [], false],
    ['win32', ['HKEY_CLASSES_ROOT\\Excel.Application'], true],
  ])('on %s with %j there is a host: %s', (platform, found, expected) => {
    expect(hasSpreadsheetHost(machine(platform, found))).toBe(expected);
  });

  it.skipIf(hasSpreadsheetHost()).each(['start', 'stop'])(
    'without a host, %s says so in one sentence',
    (action) => {
      const { status, stdout, stderr } = spawnSync(
        process.execPath,
        [path.join(root, 'scripts/sideload.mjs'), action],
        { encoding: 'utf8' },
      );
      expect([status, stdout, stderr]).toEqual([1, '', `${noHost}\n`]);
      expect(noHost).toContain('npm start');
      expect(noHost.match(/\.(?:\s|$)/g)?.length).toBe(1);
    },
  );

  it('refuses a call that is neither start nor stop', () => {
    const { status, stderr } = spawnSync(
      process.execPath,
      [path.join(root, 'scripts/sideload.mjs'), 'begin'],
      {
        encoding: 'utf8',
      },
    );
    expect([status, stderr]).toEqual([2, 'Write: npm run sideload, or npm run sideload:stop.\n']);
  });

  it('calls what the platform’s packages offer', () => {
    expect(typeof settings.sideloadAddIn).toBe('function');
    expect(typeof settings.unregisterAddIn).toBe('function');
    expect(typeof certificates.getHttpsServerOptions).toBe('function');
  });
});

describe('the server of the build', () => {
  const parent = mkdtempSync(path.join(os.tmpdir(), 'tonrow-serve-'));
  const folder = path.join(parent, 'dist');
  let server: Server;
  let ca: string;

  beforeAll(async () => {
    mkdirSync(folder);
    writeFileSync(path.join(folder, 'functions.json'), '{}');
    writeFileSync(path.join(folder, 'headless.mjs'), 'never');
    writeFileSync(path.join(parent, 'outside.json'), 'never');
    const { private: key, cert } = await generate([{ name: 'commonName', value: 'localhost' }], {
      extensions: [{ name: 'subjectAltName', altNames: [{ type: 2, value: 'localhost' }] }],
    });
    ca = cert;
    server = (await serveFolder(folder, 0, { key, cert })) as Server;
  });

  afterAll(() => {
    server?.close();
    rmSync(parent, { recursive: true, force: true });
  });

  const get = (at: string) =>
    new Promise<{ status: number; type: string | undefined; body: string }>((resolve, reject) => {
      const { port } = server.address() as AddressInfo;
      const call = request({ host: 'localhost', port, path: at, ca }, (answer) => {
        let body = '';
        answer.on('data', (chunk) => (body += chunk));
        answer.on('end', () =>
          resolve({ status: answer.statusCode ?? 0, type: answer.headers['content-type'], body }),
        );
      });
      call.on('error', reject).end();
    });

  it('gives the files a host asks for', async () => {
    expect(await get('/functions.json?a=1')).toEqual({ status: 200, type: 'application/json', body: '{}' });
  });

  it.each([
    '/none.json',
    '/',
    '/headless.mjs',
    '/../outside.json',
    '/%2e%2e/outside.json',
    '/%ff',
    '/a%00.json',
  ])('has nothing at %s', async (at) => {
    expect(await get(at)).toEqual({ status: 404, type: undefined, body: '' });
  });
});
