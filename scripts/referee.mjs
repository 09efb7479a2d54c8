// npm run test:referee: what a headless desktop spreadsheet computes, against the tables in the tests.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { ensurePackages, root } from './ensure.mjs';

if (spawnSync('soffice', ['--version'], { stdio: 'ignore' }).error) {
  console.error('The referee needs LibreOffice (the command soffice), which is not installed here.');
  process.exit(1);
}
ensurePackages({ development: true });
const folder = mkdtempSync(path.join(os.tmpdir(), 'referee-'));
const results = path.join(folder, 'results.json');
const { status } = spawnSync(
  process.execPath,
  [
    path.join(root, 'node_modules/vitest/vitest.mjs'),
    'run',
    '--config',
    path.join(root, 'tests/referee/vitest.config.ts'),
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${results}`,
  ],
  { cwd: root, stdio: 'inherit' },
);
const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(results, 'utf8'));
rmSync(folder, { recursive: true, force: true });
console.log(`referee: ${numPassedTests} passed, ${numFailedTests} failed`);
process.exitCode = status ?? 1;
