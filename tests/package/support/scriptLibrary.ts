import { existsSync, readFileSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { BrowserContext } from 'playwright-core';

export const libraryOrigin = 'https://appsforoffice.microsoft.com';
const hosted = '/lib/1/hosted/';
const folder = path.dirname(createRequire(import.meta.url).resolve('@microsoft/office-js/dist/office.js'));

/** Answers requests to the host's script library from its package; no request leaves the machine. */
export async function serveScriptLibrary(context: BrowserContext): Promise<void> {
  await context.route(`${libraryOrigin}/**`, (route) => {
    const { pathname } = new URL(route.request().url());
    const file = path.join(folder, pathname.startsWith(hosted) ? pathname.slice(hosted.length) : 'none');
    if (!existsSync(file) || !statSync(file).isFile()) return route.fulfill({ status: 404 });
    return route.fulfill({ contentType: 'text/javascript', body: readFileSync(file) });
  });
}
