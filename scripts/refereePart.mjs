// npm run referee:part [-- PARTS [SEED]]: random parts against the referees of the part, 20,000 unless said otherwise.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { ensurePackages, root } from './ensure.mjs';

const [parts = '20000', seed = '2'] = process.argv.slice(2);
if (!/^[1-9]\d*$/.test(parts) || !/^\d+$/.test(seed)) {
  console.error('Usage: npm run referee:part -- PARTS SEED, both whole numbers, for example 20000 2.');
  process.exit(1);
}
ensurePackages({ development: true });
const { status } = spawnSync(
  process.execPath,
  [path.join(root, 'node_modules/vitest/vitest.mjs'), 'run', 'tests/checks/part'],
  { cwd: root, stdio: 'inherit', env: { ...process.env, REFEREE_PARTS: parts, REFEREE_SEED: seed } },
);
process.exitCode = status ?? 1;
