import { mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { get, type IncomingMessage } from 'node:http';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { serve } from '../../scripts/serve.mjs';

const outer = path.join(root, 'out', `serve-${process.pid}`);
const folder = path.join(outer, 'page');
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, 'index.html'), '<p>page</p>');
  writeFileSync(path.join(outer, 'secret.txt'), 'secret');
  mkdirSync(path.join(outer, 'page-other'), { recursive: true });
  writeFileSync(path.join(outer, 'page-other', 'secret.txt'), 'secret');
  server = await serve(folder);
});
afterAll(async () => {
  await server.close();
  rmSync(outer, { recursive: true, force: true });
});

/** The answer to a path sent as it stands: other clients tidy it up first. */
function ask(
  asked: string,
  method = 'GET',
  host?: string,
): Promise<{ status: number; body: string; headers: IncomingMessage['headers'] }> {
  const { hostname, port } = new URL(server.address);
  return new Promise((resolve, reject) => {
    const request = get(
      { hostname, port, path: asked, method, ...(host && { headers: { host } }) },
      (response) => {
        let body = '';
        response.setEncoding('utf8');
        response.on('data', (chunk: string) => (body += chunk));
        response.on('end', () =>
          resolve({ status: response.statusCode ?? 0, body, headers: response.headers }),
        );
      },
    );
    request.on('error', reject);
  });
}

describe('the small server', () => {
  it('answers only to the names of this machine', async () => {
    const { port } = new URL(server.address);
    expect((await ask('/', 'GET', `localhost:${port}`)).status).toBe(200);
    for (const host of ['example.com', `127.0.0.1.example.com:${port}`, `example.com:${port}`])
      expect((await ask('/', 'GET', host)).status).toBe(421);
  });

  it('follows links inside its folder only', async () => {
    symlinkSync(path.join(outer, 'secret.txt'), path.join(folder, 'out.txt'));
    symlinkSync(path.join(folder, 'index.html'), path.join(folder, 'in.html'));
    expect((await ask('/out.txt')).status).toBe(404);
    expect((await ask('/in.html')).body).toBe('<p>page</p>');
  });

  it('listens on this machine only and gives the page', async () => {
    expect(new URL(server.address).hostname).toBe('127.0.0.1');
    expect(await ask('/')).toMatchObject({ status: 200, body: '<p>page</p>' });
    expect((await ask('/')).headers['content-type']).toBe('text/html; charset=utf-8');
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/../page-other/secret.txt',
    '/a%00b',
    '/%',
    '//',
  ])('gives nothing outside its folder: %s', async (asked) => {
    const { status, body } = await ask(asked);
    expect(status === 404 || body === '<p>page</p>').toBe(true);
    expect(body).not.toContain('secret');
  });

  it('lets the page load nothing from elsewhere, and nobody frame it', async () => {
    const policy = String((await ask('/')).headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/https?:|\*/);
  });

  it('answers only questions', async () => {
    expect((await ask('/', 'POST')).status).toBe(405);
    expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, body: '' });
  });
});
