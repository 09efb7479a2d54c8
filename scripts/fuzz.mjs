// npm run fuzz [-- --seed N --calls N --only functions|rows|packages|formulas|copies --at N]: tries what nobody would write.
// Prints each find and how to repeat it. Exit code 0: no find, 1: finds.
import { ensure } from './ensure.mjs';
import { runSource } from './runSource.mjs';

ensure();
await runSource('scripts/fuzz/fuzz.ts');
