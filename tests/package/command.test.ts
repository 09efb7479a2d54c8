import { spawnSync } from 'node:child_process';
import { readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import '../contract/support/built.js';

const run = (...args: string[]) =>
  spawnSync(process.execPath, [path.join(root, 'scripts/package.mjs'), ...args], {
    cwd: root,
    encoding: 'utf8',
  });

describe('npm run package', () => {
  it('writes the folder for the address it is given', () => {
    const { status, stdout } = run('--url', 'https://apps.example.com/tonrow/');
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Wrote \d+ files into out.package for https:\/\/apps\.example\.com\/tonrow\.\n/);
    const manifest = readFileSync(path.join(root, 'out/package/manifest.xml'), 'utf8');
    expect(manifest).toContain('"https://apps.example.com/tonrow/taskpane.html"');
    expect(statSync(path.join(root, 'out/package/functions.js')).size).toBeGreaterThan(10_000);
  });

  it.each([
    [[], /^Say where the folder will be hosted, for example --url https:/],
    [['--url'], /^Write: npm run package -- --url https:/],
    [['--url', 'http://apps.example.com'], /^'http:\/\/apps\.example\.com' is not an https address/],
    [['--url', 'somewhere'], /^'somewhere' is not an address/],
    [['--to', 'https://apps.example.com'], /^Write: npm run package -- --url https:/],
    [['https://apps.example.com'], /^Write: npm run package -- --url https:/],
  ])('refuses %j in one sentence with exit code 2', (args, sentence) => {
    const { status, stdout, stderr } = run(...args);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toMatch(sentence);
    expect(stderr.trim().split('\n').length).toBe(1);
  });
});
