// npm run bench:core: what a row check costs, as ratios within one run.
import { ensurePackages } from '../ensure.mjs';
import { runSource } from '../runSource.mjs';

ensurePackages();
await runSource('scripts/bench/core.ts');
