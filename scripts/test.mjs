// npm test: packages, build, lint, format, types, then every test. The last line counts the runner's result;
// a check before the tests that fails counts as one failure more.
import { existsSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { ensure, root, run } from './ensure.mjs';

ensure({ development: true });
const bin = (name) => path.join(root, 'node_modules', ...name);
const node = (script, ...args) => run(process.execPath, [bin(script), ...args], { stdio: ['ignore', 1, 2] });

const checks = [
  ['lint', ['eslint', 'bin', 'eslint.js'], '.', '--max-warnings', '0'],
  ['format', ['prettier', 'bin', 'prettier.cjs'], '--check', '--log-level', 'warn', '.'],
  ['types', ['typescript', 'bin', 'tsc'], '-p', '.', '--noEmit'],
];
const failedChecks = checks.filter(([name, script, ...args]) => {
  console.log(`Checking ${name} …`);
  return node(script, ...args) !== 0;
});

const report = path.join(root, 'out', 'test-report.json');
rmSync(report, { force: true });
const status = node(
  ['vitest', 'vitest.mjs'],
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
);
if (!existsSync(report)) {
  console.error('The test runner ended without a report.');
  process.exit(1);
}
const { numPassedTests, numFailedTests, numFailedTestSuites } = JSON.parse(readFileSync(report, 'utf8'));
for (const [name] of failedChecks) console.log(`Check failed: ${name}`);
// A file that cannot be loaded fails without a single failed test.
const filesOnly = numFailedTests === 0 && numFailedTestSuites > 0 ? numFailedTestSuites : 0;
const failed = numFailedTests + filesOnly + failedChecks.length;
console.log(`${numPassedTests} passed, ${failed} failed`);
process.exitCode = status === 0 && failed === 0 && numPassedTests > 0 ? 0 : 1;
