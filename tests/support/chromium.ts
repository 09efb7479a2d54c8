import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import packed, { inflate } from '@sparticuz/chromium';
import { type Browser, chromium } from 'playwright-core';
import { root } from '../../scripts/ensure.mjs';

const packageFolder = path.resolve(createRequire(import.meta.url).resolve('@sparticuz/chromium'), '../../..');
const { version } = JSON.parse(readFileSync(path.join(packageFolder, 'package.json'), 'utf8')) as {
  version: string;
};
const packedLibraries = path.join(packageFolder, 'bin', 'al2023.tar.br');
const unpackedFolder = path.join(root, 'out', `browser-${version}`);

/** Unpacks the browser once for the whole project; test files side by side each may try, the first to end wins. */
async function unpack(): Promise<void> {
  if (existsSync(unpackedFolder)) return;
  const work = `${unpackedFolder}-${process.pid}`;
  mkdirSync(work, { recursive: true });
  const before = process.env['TMPDIR'];
  process.env['TMPDIR'] = work; // The package unpacks into the folder for temporary files.
  try {
    await Promise.all([packed.executablePath(), inflate(packedLibraries)]);
  } finally {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
  }
  try {
    renameSync(work, unpackedFolder);
  } catch (error) {
    rmSync(work, { recursive: true, force: true });
    if (!existsSync(unpackedFolder)) throw error;
  }
}

/** The package's list of fonts names folders of other machines: without any font the browser ends at once. */
function fontList(): string {
  const file = path.join(unpackedFolder, 'fonts.conf');
  const folders = path.join(unpackedFolder, 'fonts');
  const cache = path.join(unpackedFolder, 'fonts-cache');
  if (!existsSync(file))
    writeFileSync(
      file,
      `<?xml version="1.0"?>\n<fontconfig><dir>${folders}</dir><cachedir>${cache}</cachedir></fontconfig>\n`,
    );
  return file;
}

/** A headless browser that needs no system packages. Close it when done. */
export async function launchChromium(): Promise<Browser> {
  await unpack();
  const libraries = path.join(unpackedFolder, 'al2023', 'lib');
  return chromium.launch({
    executablePath: path.join(unpackedFolder, 'chromium'),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
    env: {
      ...process.env,
      LD_LIBRARY_PATH: [libraries, process.env['LD_LIBRARY_PATH']].filter(Boolean).join(':'),
      FONTCONFIG_FILE: fontList(),
    },
  });
}
