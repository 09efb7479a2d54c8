// A small server for one folder on this machine only: nothing leaves it, nothing comes from elsewhere.
import { createReadStream } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import path from 'node:path';

const types = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

// The grid makes functions of its formulas and templates: without unsafe-eval it does not run.
const contentPolicy = [
  "default-src 'none'",
  "script-src 'self' 'unsafe-eval' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const headers = {
  'Content-Security-Policy': contentPolicy,
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'Cache-Control': 'no-cache',
};

/** Serves a folder on the loopback address; a port of 0 takes a free one. */
export async function serve(folder, port = 0) {
  const root = await realpath(folder);
  const server = createServer((request, response) => {
    answer(root, request, response).catch((error) => {
      console.error(error);
      if (!response.headersSent) response.writeHead(500, headers);
      response.end();
    });
  });
  await new Promise((resolve, reject) => server.once('error', reject).listen(port, '127.0.0.1', resolve));
  const address = `http://127.0.0.1:${server.address().port}/`;
  return { address, close: () => new Promise((resolve) => server.close(resolve).closeAllConnections()) };
}

async function answer(root, request, response) {
  const refuse = (status) => response.writeHead(status, headers).end();
  // A page from elsewhere whose name leads here must not read what is served.
  if (!/^(?:localhost|127\.0\.0\.1)(?::\d+)?$/i.test(request.headers.host ?? '')) return refuse(421);
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(405);
  const named = fileFor(root, request.url ?? '/');
  // Links are followed inside the folder only.
  const real = named && (await realpath(named).catch(() => undefined));
  const file = real?.startsWith(root + path.sep) ? real : undefined;
  const found = file && (await stat(file).catch(() => undefined));
  if (!found?.isFile()) return refuse(404);
  response.writeHead(200, {
    ...headers,
    'Content-Type': types[path.extname(file)] ?? 'application/octet-stream',
    'Content-Length': found.size,
  });
  if (request.method === 'HEAD') return response.end();
  createReadStream(file)
    .on('error', () => response.destroy())
    .pipe(response);
}

/** The file a request names, undefined for one outside the folder. */
function fileFor(root, url) {
  let name;
  try {
    name = decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return undefined;
  }
  if (name.includes('\0')) return undefined;
  const file = path.join(root, name.endsWith('/') ? `${name}index.html` : name);
  return file.startsWith(root + path.sep) ? file : undefined;
}
