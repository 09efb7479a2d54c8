// Serves the build to the spreadsheet host of this machine.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:https';
import path from 'node:path';

const contentTypes = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.css': 'text/css; charset=utf-8',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
};

/** A server of one folder, on this machine only; files of other types, and outside the folder, are not there. */
export async function serveFolder(folder, port, certificate) {
  const server = createServer(certificate, ({ url }, response) => {
    const body = readWithin(folder, url);
    if (!body) return response.writeHead(404).end();
    return response.writeHead(200, headersOf(url)).end(body);
  });
  await new Promise((resolve, reject) => server.once('error', reject).listen(port, 'localhost', resolve));
  return server;
}

const pathOf = (url) => decodeURIComponent(new URL(url, 'https://localhost').pathname);

function headersOf(url) {
  return {
    'Content-Type': contentTypes[path.extname(pathOf(url))],
    'Cache-Control': 'no-store',
    'Access-Control-Allow-Origin': '*',
  };
}

function readWithin(folder, url) {
  try {
    const file = path.join(folder, pathOf(url));
    const inside = file.startsWith(folder + path.sep) && contentTypes[path.extname(file)] !== undefined;
    return inside ? readFileSync(file) : undefined;
  } catch (error) {
    // No such file, or an address that cannot be read.
    if (['ENOENT', 'EISDIR', 'ENOTDIR', 'ERR_INVALID_ARG_VALUE'].includes(error.code)) return undefined;
    if (error instanceof URIError) return undefined;
    throw error;
  }
}
